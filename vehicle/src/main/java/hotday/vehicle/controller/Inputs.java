package hotday.vehicle.controller;

/**
 * What the controller sees at one tick, in its whole numbers. One instance is filled again and again; fields not fed by
 * anything keep values that ask for nothing. The methods take SI and round to the nearest whole number.
 */
public final class Inputs {
    /** Stands for a coolant temperature that cannot be right: open or shorted sensor, no message. */
    public static final int INVALID = -9999;

    private static final double ZERO_CELSIUS = 273.15;
    private static final int COLDEST = -1_000;
    static final int LARGEST = 32_000;

    /** Engine running. */
    boolean running;
    /** Coolant temperature, 0.1 degC, or {@link #INVALID}. */
    int coolant = 200;
    /** Gearbox fluid temperature, 0.1 degC. */
    int gearbox = 200;
    /** Head pressure, kPa absolute. */
    int headPressure;
    /** Compressor requested and allowed. */
    boolean airConditioning;
    /** Road speed, 0.1 km/h. */
    int speed;
    /** Battery, mV. */
    int battery = 12_600;
    /** Charge air, 0.1 degC. */
    int chargeAir = COLDEST;

    /** All at once, in the controller's whole numbers, for a car without charge-air curve. */
    public void set(
            boolean running,
            int coolant,
            int gearbox,
            int headPressure,
            boolean airConditioning,
            int speed,
            int battery) {
        set(running, coolant, gearbox, headPressure, airConditioning, speed, battery, COLDEST);
    }

    /** All eight at once, in the controller's whole numbers. */
    public void set(
            boolean running,
            int coolant,
            int gearbox,
            int headPressure,
            boolean airConditioning,
            int speed,
            int battery,
            int chargeAir) {
        this.running = running;
        this.coolant = coolant;
        this.gearbox = gearbox;
        this.headPressure = headPressure;
        this.airConditioning = airConditioning;
        this.speed = speed;
        this.battery = battery;
        this.chargeAir = chargeAir;
    }

    public void running(boolean value) {
        running = value;
    }

    public void airConditioning(boolean value) {
        airConditioning = value;
    }

    /** K; NaN is an invalid sensor. */
    public void coolantTemperature(double kelvin) {
        coolant = tenths(kelvin);
    }

    /** K; NaN asks for nothing (coldest). */
    public void gearboxTemperature(double kelvin) {
        gearbox = coldOrTenths(kelvin);
    }

    /** Behind the charge-air cooler, K; NaN asks for nothing (coldest). */
    public void chargeAirTemperature(double kelvin) {
        chargeAir = coldOrTenths(kelvin);
    }

    private static int coldOrTenths(double kelvin) {
        return Double.isNaN(kelvin) ? COLDEST : whole(10 * (kelvin - ZERO_CELSIUS));
    }

    /** Pa absolute; NaN asks for nothing (0). */
    public void headPressure(double pascal) {
        headPressure = Double.isNaN(pascal) ? 0 : whole(pascal / 1000);
    }

    /** m/s, the sign does not matter; NaN counts as standing. */
    public void roadSpeed(double metresPerSecond) {
        speed = Math.abs(whole(36 * metresPerSecond));
    }

    /** V; NaN counts as empty. */
    public void batteryVoltage(double volt) {
        battery = whole(1000 * volt);
    }

    /** 0.1 degC; NaN is {@link #INVALID}. */
    static int tenths(double kelvin) {
        return Double.isNaN(kelvin) ? INVALID : whole(10 * (kelvin - ZERO_CELSIUS));
    }

    static int whole(double value) {
        return (int) Math.floor(Math.max(COLDEST, Math.min(LARGEST, value)) + 0.5);
    }
}
