package hotday.vehicle.sheet;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.vehicle.spec.FanSchedule;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * A fan schedule as the block {@code schedule} of a build sheet. Digits suffice for the controller's whole numbers to come out the same
 * when it is read again, in any units.
 */
public final class ScheduleText {
    private final Display display;
    private final StringBuilder out = new StringBuilder("schedule:\n");

    private ScheduleText(Display display) {
        this.display = display;
    }

    /** All of a schedule, line by line, ready to be put into a sheet or a file of its own. */
    public static String of(FanSchedule s, Display display) {
        ScheduleText text = new ScheduleText(display);
        text.curves(s);
        text.details(s.details());
        return text.out.toString();
    }

    private void curves(FanSchedule s) {
        line("  coolant", curve(Quantity.TEMPERATURE, 1, s.coolantTemperature(), s.coolantDemand()));
        line("  on", temperature(s.on()));
        line("  off", temperature(s.off()));
        if (!s.gearboxTemperature().isEmpty()) {
            line("  gearbox", curve(Quantity.TEMPERATURE, 1, s.gearboxTemperature(), s.gearboxDemand()));
            line(
                    "  gearbox_hysteresis",
                    number(Quantity.TEMPERATURE_DIFFERENCE, s.details().gearboxHysteresis(), 1));
        }
        s.chargeAir().ifPresent(c -> {
            line("  charge_air", curve(Quantity.TEMPERATURE, 1, c.temperature(), c.demand()));
            line("  charge_air_hysteresis", number(Quantity.TEMPERATURE_DIFFERENCE, c.hysteresis(), 1));
        });
        if (!s.headPressure().isEmpty()) {
            line("  head_pressure", curve(Quantity.PRESSURE_ABSOLUTE, 2, s.headPressure(), s.headDemand()));
            line("  head_hysteresis", shown("kPa", s.details().headHysteresis() / 1000, 0));
        } else if (s.airConditioningDemand() > 0) {
            line("  air_conditioning", share(s.airConditioningDemand()));
        }
        line("  allowance", curve(Quantity.SPEED, 1, s.allowanceSpeed(), s.allowance()));
        line("  allowance_ends", temperature(s.details().allowanceEnds()));
    }

    private void details(FanSchedule.Details d) {
        FanSchedule.Floor f = d.floor();
        line(
                "  floor",
                map(
                        "demand", share(f.demand()),
                        "from", temperature(f.from()),
                        "below", speed(f.below()),
                        "above", speed(f.above())));
        FanSchedule.Switching w = d.switching();
        line(
                "  switching",
                map(
                        "start_delay", time(w.startDelay()),
                        "on", share(w.on()),
                        "off", share(w.off()),
                        "least", share(w.least()),
                        "least_on", time(w.leastOn()),
                        "least_off", time(w.leastOff())));
        FanSchedule.Slew v = d.slew();
        line(
                "  slew",
                map(
                        "up",
                        rate(v.up()),
                        "at_rest",
                        rate(v.upAtRest()),
                        "down",
                        rate(v.down()),
                        "drop_out",
                        share(v.dropOut())));
        FanSchedule.AfterRun a = d.afterRun();
        line(
                "  after_run",
                map(
                        "curve", curve(Quantity.TEMPERATURE, 1, a.temperature(), a.demand()),
                        "from", temperature(a.from()),
                        "until", temperature(a.until()),
                        "longest", time(a.longest()),
                        "battery", shown("V", a.battery(), 3)));
    }

    private void line(String key, String value) {
        out.append(key).append(": ").append(value).append('\n');
    }

    private static String map(String... keysAndValues) {
        StringBuilder all = new StringBuilder("{");
        for (int i = 0; i < keysAndValues.length; i += 2) {
            all.append(i == 0 ? "" : ", ").append(keysAndValues[i]).append(": ").append(keysAndValues[i + 1]);
        }
        return all.append('}').toString();
    }

    private String curve(Quantity quantity, int digits, List<Double> x, List<Double> demand) {
        StringBuilder all = new StringBuilder("[");
        for (int i = 0; i < x.size(); i++) {
            all.append(i == 0 ? "[" : ", [")
                    .append(number(quantity, x.get(i), digits))
                    .append(", ")
                    .append(share(demand.get(i)))
                    .append(']');
        }
        return all.append(']').toString();
    }

    private String temperature(double kelvin) {
        return number(Quantity.TEMPERATURE, kelvin, 1);
    }

    private String speed(double metresPerSecond) {
        return number(Quantity.SPEED, metresPerSecond, 1);
    }

    private static String share(double share) {
        return shown("%", 100 * share, 2);
    }

    private static String rate(double perSecond) {
        return shown("%/s", 100 * perSecond, 1);
    }

    private static String time(double seconds) {
        return shown("s", seconds, 1);
    }

    /**
     * @param digits after the point where the unit is the controller's own or smaller; others get one more
     */
    private String number(Quantity quantity, double si, int digits) {
        Unit unit = display.unitFor(quantity);
        boolean metric = List.of("degC", "K", "km/h", "bar abs").contains(unit.symbol());
        return shown(unit.symbol(), unit.fromSi(si), metric ? digits : digits + 1);
    }

    private static String shown(String unit, double value, int digits) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : rounded).toPlainString() + " "
                + unit;
    }
}
