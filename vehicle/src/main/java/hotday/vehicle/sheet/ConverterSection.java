package hotday.vehicle.sheet;

import hotday.core.unit.Quantity;
import hotday.physics.component.Converter;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The torque converter inside the gearbox block. Left out, a usual shape is scaled to the drag at idle. */
final class ConverterSection {
    private static final List<Double> SPEED_RATIO = List.of(0.0, 0.2, 0.4, 0.6, 0.7, 0.8, 0.86, 0.9, 0.95);
    /** Over its value at stall; invented table of a worked problem. */
    private static final List<Double> CAPACITY = List.of(118.0, 117.0, 118.5, 124.0, 130.0, 141.0, 152.0, 172.0, 230.0);

    private static final List<Double> TORQUE_RATIO = List.of(2.05, 1.78, 1.53, 1.29, 1.18, 1.08, 1.0, 0.99, 0.985);
    private static final String SHAPE = "usual shape, coupling from speed ratio 0.86; common practice, no source";
    private static final double LEAST_DRAG = 100.0; // W, so that a converter without drag stays finite
    private static final double DRAG_TOLERANCE = 0.1;
    private static final int USUAL_LOCK_GEAR = 3;

    private final Section gearbox;

    ConverterSection(Section gearbox) {
        this.gearbox = gearbox;
    }

    /** @param gears of the gearbox */
    VehicleSpec.Converter converter(VehicleSpec.Engine engine, int gears) {
        List<Assumption> own = new ArrayList<>();
        Section c =
                gearbox.part("converter", own, "speed_ratio", "capacity", "torque_ratio", "lock_gear", "lock_speed");
        double drag = c.has("capacity") && !gearbox.has("idle_drag") ? 0.0 : idleDrag();
        List<Double> speed = curve(c, "speed_ratio", Quantity.NUMBER, "0", "1", SPEED_RATIO, SHAPE);
        List<Double> capacity = curve(
                c,
                "capacity",
                Quantity.CONVERTER_CAPACITY,
                "20 rpm/sqrt(N m)",
                "2000 rpm/sqrt(N m)",
                scaled(engine, drag),
                "usual shape, scaled so that it takes 'gearbox.idle_drag' at idle; common practice, no source");
        List<Double> torque = curve(c, "torque_ratio", Quantity.NUMBER, "0.3", "4", TORQUE_RATIO, SHAPE);
        int gear = c.integer(
                "lock_gear", 1, 12, Math.max(1, Math.min(USUAL_LOCK_GEAR, gears)), "common practice, no source");
        double lock = c.value(
                "lock_speed",
                Quantity.ANGULAR_SPEED,
                "300 rpm",
                "6000 rpm",
                "1300 rpm",
                "turbine speed; common practice, no source");
        gearbox.settle(c, own, "a usual converter, scaled to 'gearbox.idle_drag' at idle; common practice, no source");
        check(c, speed, capacity, torque);
        VehicleSpec.Converter converter = new VehicleSpec.Converter(speed, capacity, torque, gear, lock);
        if (c.has("capacity") && gearbox.has("idle_drag") && !capacity.isEmpty()) {
            compare(drag, converter.stallPower(engine.idleSpeed()));
        }
        return converter;
    }

    private double idleDrag() {
        return gearbox.value(
                "idle_drag", Quantity.POWER, "0 kW", "20 kW", "0.9 kW", "converter in gear at rest; from memory");
    }

    private void compare(double typed, double stall) {
        if (Math.abs(typed - stall) > DRAG_TOLERANCE * stall) {
            gearbox.fault(
                    "idle_drag",
                    String.format(
                            Locale.ROOT,
                            "'gearbox.idle_drag' is %.2f kW, but the converter's capacity takes %.2f kW at stall and idle speed; leave one of them out",
                            1e-3 * typed,
                            1e-3 * stall));
        }
    }

    private static List<Double> curve(
            Section c, String key, Quantity q, String low, String high, List<Double> usual, String reason) {
        if (c.has(key)) {
            return c.list(key, q, low, high);
        }
        c.assume(key, Section.text(usual, q), reason);
        return usual;
    }

    /** Capacity factors, rad/s per sqrt(N m), whose stall power at idle speed is the drag. */
    private static List<Double> scaled(VehicleSpec.Engine engine, double idleDrag) {
        double torque = Math.max(LEAST_DRAG, idleDrag) / engine.idleSpeed();
        double stall = engine.idleSpeed() / Math.sqrt(torque);
        return CAPACITY.stream().map(k -> stall * k / CAPACITY.get(0)).toList();
    }

    private static void check(Section c, List<Double> speed, List<Double> capacity, List<Double> torque) {
        if (!c.present() || speed.isEmpty() || capacity.isEmpty() || torque.isEmpty()) {
            return;
        }
        String typed = c.has("speed_ratio") ? "speed_ratio" : c.has("torque_ratio") ? "torque_ratio" : "capacity";
        if (speed.size() < 2 || speed.size() != capacity.size() || speed.size() != torque.size()) {
            c.fault(
                    typed,
                    String.format(
                            Locale.ROOT,
                            "'gearbox.converter' needs speed_ratio, capacity and torque_ratio of one length, two or more; there are %d, %d and %d",
                            speed.size(),
                            capacity.size(),
                            torque.size()));
            return;
        }
        boolean sound = true;
        if (speed.get(0) != 0.0) {
            c.fault("speed_ratio", "'gearbox.converter.speed_ratio' must begin with 0 (stall)");
            sound = false;
        }
        for (int i = 0; i < speed.size(); i++) {
            if (i > 0 && speed.get(i) <= speed.get(i - 1)) {
                c.fault("speed_ratio", "'gearbox.converter.speed_ratio' must rise; value " + (i + 1) + " does not");
                sound = false;
            }
            if (speed.get(i) * torque.get(i) > 1.0) {
                c.fault(
                        c.has("torque_ratio") ? "torque_ratio" : typed,
                        String.format(
                                Locale.ROOT,
                                "at speed ratio %s a torque ratio of %s gives out %.3f of the power put in; a converter gives out 1 at most",
                                speed.get(i),
                                torque.get(i),
                                speed.get(i) * torque.get(i)));
                sound = false;
            }
        }
        if (sound) {
            shape(c, typed, speed, capacity, torque);
        }
    }

    /** What can only be said of the rows together. */
    private static void shape(Section c, String key, List<Double> speed, List<Double> capacity, List<Double> torque) {
        try {
            Converter.of(speed, capacity, torque);
        } catch (IllegalArgumentException e) {
            c.fault(key, "'gearbox.converter': " + e.getMessage());
        }
    }
}
