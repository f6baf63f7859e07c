package hotday.vehicle.cases;

import java.util.Locale;
import java.util.SplittableRandom;

/** A build sheet as somebody could have typed it, drawn from plausible ranges; invented, no real vehicle. */
final class RandomSheet {
    private final SplittableRandom random;
    private final StringBuilder text = new StringBuilder();
    private double freeFlow;
    private double cap;

    private RandomSheet(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** The same sheet for the same seed; now and then one that the reader refuses. */
    static RandomSheet of(long seed) {
        RandomSheet sheet = new RandomSheet(seed);
        sheet.write(seed);
        return sheet;
    }

    String text() {
        return text.toString();
    }

    /** Of the fan, m3/s. */
    double freeFlow() {
        return freeFlow;
    }

    /** Gauge pressure, bar. */
    double cap() {
        return cap;
    }

    private void write(long seed) {
        block("build");
        line("name", "random " + seed);
        boolean diesel = chance(0.45);
        boolean turbo = chance(diesel ? 0.85 : 0.5);
        boolean conditioned = chance(0.85);
        double litres = between(0.9, 5.5);
        double power = litres
                * (diesel ? turbo ? between(40, 75) : between(22, 33) : turbo ? between(60, 100) : between(42, 70));
        road(power);
        engine(diesel, turbo, litres, power);
        gearbox();
        coolant(power);
        double width = between(0.45, 0.85);
        double height = width * between(0.5, 0.8);
        front(width, height);
        fan(width, height);
        if (conditioned) {
            conditioning(between(3.5, 11.0));
        }
        electrical();
    }

    private void road(double power) {
        block("design_day");
        line("ambient", between(30, 52), "degC");
        line("altitude", chance(0.4) ? 0.0 : between(0, 3000), "m");
        block("vehicle");
        line("mass", Math.max(800.0, power * between(9, 22)), "kg");
        maybe("trailer_mass", 0.2, between(200, 2500), "kg");
        maybe("drag_area", 0.7, between(0.55, 1.5), "m2");
        maybe("rolling", 0.7, between(0.009, 0.018), "");
        maybe("tyre_radius", 0.7, between(280, 410), "mm");
    }

    private void engine(boolean diesel, boolean turbo, double litres, double power) {
        block("engine");
        line("fuel", diesel ? "diesel" : "petrol");
        line("displacement", litres, "l");
        line("rated_power", power, "kW");
        maybe("rated_speed", 0.6, diesel ? between(3000, 4500) : between(4500, 7000), "rpm");
        maybe("idle_speed", 0.6, between(600, 950), "rpm");
        maybe("indicated_efficiency", 0.5, diesel ? between(39, 46) : between(35, 42), "%");
        maybe("metal_mass", 0.3, litres * between(35, 70), "kg");
        if (turbo) {
            line("charging", "turbo");
            block("charge_air_cooler");
            line("effectiveness", between(50, 90), "%");
            maybe("boost", 0.6, between(1.2, diesel ? 3.0 : 2.3), "");
            maybe("compressor_efficiency", 0.4, between(55, 78), "%");
        }
    }

    private void gearbox() {
        String cooler = one("none", "front", "tank", "[tank, front]", "[front, tank]");
        block("gearbox");
        line("cooler", cooler);
        maybe("final_drive", 0.6, between(2.6, 4.3), "");
        maybe("efficiency", 0.5, between(82, 94), "%");
        maybe("idle_drag", 0.6, between(0.2, 2.5), "kW");
        maybe("low_range", 0.3, between(1.5, 4.0), "");
        block("gearbox_fluid");
        line("mesh_loss", between(1, 5), "%");
        maybe("spin_loss", 0.6, between(0.2, 1.8), "kW");
        maybe("flow", 0.6, between(3, 15), "l/min");
        maybe("case_loss", 0.6, between(3, 20), "W/K");
        maybe("case_loss_per_speed", 0.4, between(0.2, 1.5), "W/K/(m/s)");
        if (cooler.contains("tank")) {
            maybe("tank_conductance", 0.6, between(100, 500), "W/K");
        }
        if (cooler.contains("front")) {
            maybe("front_conductance", 0.4, between(120, 600), "W/K");
        }
        if (chance(0.3)) {
            double opens = between(40, 85);
            line("bypass_opens", opens, "degC");
            line("bypass_full", opens + between(2, 15), "degC");
        }
    }

    private void coolant(double power) {
        block("coolant");
        line("glycol", between(0, 60), "%");
        cap = between(0.4, 1.8);
        line("cap", cap, "bar");
        maybe("pump_flow", 0.6, 1.26 * power * between(0.6, 1.5), "l/min");
        maybe("volume", 0.3, between(4, 16), "l");
        if (chance(0.7)) {
            block("thermostat");
            double opens = between(72, 97);
            line("opens", opens, "degC");
            maybe("full", 0.6, opens + between(4, 18), "degC");
            maybe("hysteresis", 0.5, between(0, 8), "K");
            maybe("lag", 0.3, between(2, 30), "s");
            maybe("leak", 0.3, between(0, 5), "%");
        }
        if (chance(0.4)) {
            block("heater");
            line("conductance", between(40, 160), "W/K");
            maybe("flow_share", 0.5, between(5, 25), "%");
        }
        if (chance(0.3)) {
            block("limits");
            line("coolant", between(104, 122), "degC");
            maybe("boil_margin", 0.6, between(0, 8), "K");
            maybe("gearbox", 0.6, between(105, 140), "degC");
        }
    }

    private void front(double width, double height) {
        block("radiator");
        line("width", 1e3 * width, "mm");
        line("height", 1e3 * height, "mm");
        maybe("depth", 0.7, between(16, 60), "mm");
        maybe("fins", 0.6, between(10, 20), "/in");
        block("front_end");
        line("sealing", one("good", "fair", "poor"));
        line("opening_area", width * height * between(0.25, 0.9), "m2");
        maybe("ram_recovery", 0.6, between(25, 85), "%");
        maybe("base_pressure", 0.4, between(-0.4, 0.0), "");
        maybe("exit_loss", 0.6, between(4, 25), "");
        maybe("draught_height", 0.3, between(0, 0.8), "m");
    }

    private void fan(double width, double height) {
        block("fan");
        double diameter = between(0.75, 0.98) * Math.min(width, height);
        freeFlow = 0.25 * Math.PI * diameter * diameter * between(4, 13);
        double stall = between(120, 500);
        line("free_flow", freeFlow, "m3/s");
        line("stall_pressure", stall, "Pa");
        line("shaft_power", 0.5 * freeFlow * stall / between(0.25, 0.55), "W");
        maybe("diameter", 0.6, 1e3 * diameter, "mm");
        maybe("motor_efficiency", 0.5, between(60, 88), "%");
        maybe("windmill", 0.4, between(5, 60), "%");
        boolean two = chance(0.25);
        if (two || chance(0.3)) {
            block("stack");
            line("fans", two ? "2" : "1");
            maybe("flap_area", 0.4, between(0.0, 0.1), "m2");
        }
    }

    private void conditioning(double heat) {
        block("air_conditioning");
        line("condenser_heat", heat, "kW");
        line("refrigerant", one("r134a", "r1234yf"));
        line("compressor", one("fixed", "variable"));
        line("expansion", one("valve", "orifice"));
        line("charge", one("low", "right", "right", "high"));
        maybe("displacement", 0.4, 165.0 * heat / 6.5 * between(0.7, 1.3), "cm3");
        if (chance(0.15)) {
            line("electric_speed", between(2000, 7000), "rpm");
        } else {
            maybe("pulley_ratio", 0.5, between(1.0, 1.7), "");
        }
        maybe("superheat", 0.3, between(2, 12), "K");
        maybe("orifice", 0.4, between(1.2, 2.2), "mm");
        maybe("freeze_limit", 0.4, between(-2, 6), "degC");
        maybe("cut_out", 0.3, between(2750, 3300), "kPa abs");
        if (chance(0.4)) {
            block("cabin");
            line("volume", between(2.0, 7.0), "m3");
            maybe("glass", 0.6, between(0.8, 3.0), "m2");
            maybe("shell", 0.6, between(20, 80), "W/K");
            maybe("blower", 0.6, between(0.06, 0.2), "kg/s");
            maybe("blower_power", 0.4, between(100, 400), "W");
        }
    }

    private void electrical() {
        block("electrical");
        text.append("  alternator: {rating: ").append(number(between(70, 260))).append(" A, ratio: ");
        text.append(number(between(2.2, 3.3))).append("}\n");
        maybe("base_load", 0.7, between(10, 60), "A");
        maybe("fan_current_limit", 0.2, between(15, 90), "A");
    }

    private void block(String name) {
        text.append(name).append(":\n");
    }

    private void line(String key, String value) {
        text.append("  ").append(key).append(": ").append(value).append('\n');
    }

    private void line(String key, double value, String unit) {
        line(key, (number(value) + " " + unit).trim());
    }

    private void maybe(String key, double share, double value, String unit) {
        if (chance(share)) {
            line(key, value, unit);
        }
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.5g", value);
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private double between(double low, double high) {
        return random.nextDouble(low, high);
    }

    private String one(String... words) {
        return words[random.nextInt(words.length)];
    }
}
