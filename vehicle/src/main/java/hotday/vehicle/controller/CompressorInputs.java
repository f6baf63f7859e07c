package hotday.vehicle.controller;

/**
 * What the compressor's rules see at one tick, in their whole numbers. One instance is filled again and again; fields
 * not fed by anything keep values under which the compressor stays off. The methods take SI and round to the nearest
 * whole number; a NaN reads as the value that keeps the compressor off, where there is one.
 */
public final class CompressorInputs {
    /** Age of a request message that never came. */
    public static final int NEVER = 1_000_000;

    /** Compressor requested by the last message. */
    boolean request;
    /** Ticks since that message came, 0 in the tick it comes. */
    int requestAge = NEVER;
    /** Engine running. */
    boolean running;
    /** Engine speed, rpm. */
    int engineSpeed;
    /** Evaporator fin or air-off temperature, 0.1 degC. */
    int evaporator = Inputs.INVALID;
    /** Head pressure, kPa absolute. */
    int headPressure;
    /** Suction pressure, kPa absolute. */
    int suctionPressure;
    /** Load or pedal, 0.01 %. */
    int load;
    /** Coolant temperature, 0.1 degC, or {@link Inputs#INVALID}. */
    int coolant = Inputs.INVALID;

    /** All nine at once, in the rules' whole numbers. */
    public void set(
            boolean request,
            int requestAge,
            boolean running,
            int engineSpeed,
            int evaporator,
            int headPressure,
            int suctionPressure,
            int load,
            int coolant) {
        this.request = request;
        this.requestAge = requestAge;
        this.running = running;
        this.engineSpeed = engineSpeed;
        this.evaporator = evaporator;
        this.headPressure = headPressure;
        this.suctionPressure = suctionPressure;
        this.load = load;
        this.coolant = coolant;
    }

    /** What the last message said and how many ticks ago it came; 0 for a request that does not travel. */
    public void request(boolean asked, int age) {
        request = asked;
        requestAge = age;
    }

    public void running(boolean value) {
        running = value;
    }

    /** rad/s; NaN counts as standing. */
    public void engineSpeed(double radPerSecond) {
        engineSpeed = Inputs.whole(radPerSecond * (30 / Math.PI));
    }

    /** K; NaN counts as frozen. */
    public void evaporatorTemperature(double kelvin) {
        evaporator = Inputs.tenths(kelvin);
    }

    /** Pa absolute; NaN counts as too high. */
    public void headPressure(double pascal) {
        headPressure = Double.isNaN(pascal) ? Inputs.LARGEST : Inputs.whole(pascal / 1000);
    }

    /** Pa absolute; NaN counts as lost charge. */
    public void suctionPressure(double pascal) {
        suctionPressure = Inputs.whole(pascal / 1000);
    }

    /** 0..1; NaN counts as none. */
    public void load(double share) {
        load = Inputs.whole(DemandCurve.FULL * share);
    }

    /** K; NaN is an invalid sensor. */
    public void coolantTemperature(double kelvin) {
        coolant = Inputs.tenths(kelvin);
    }
}
