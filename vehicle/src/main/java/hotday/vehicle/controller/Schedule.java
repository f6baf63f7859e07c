package hotday.vehicle.controller;

import hotday.vehicle.spec.FanSchedule;
import java.util.List;
import java.util.Objects;

/**
 * Everything that is calibrated, in the controller's whole numbers: temperatures in 0.1 degC, head pressure in kPa
 * absolute, road speed in 0.1 km/h, battery in mV, demand and output in 0.01 % (0..10000), times in ticks of 0.1 s.
 * docs/controller.md says what each does and when.
 *
 * @param coolant demand against coolant temperature
 * @param gearbox demand against gearbox fluid temperature
 * @param airConditioning demand against head pressure
 * @param chargeAir demand against the charge air behind its cooler, {@link Curve#NONE} without
 * @param allowance what moving air spares the fan, against road speed
 */
public record Schedule(
        Curve coolant,
        Curve gearbox,
        Curve airConditioning,
        Curve chargeAir,
        Allowance allowance,
        Floor floor,
        Sensor sensor,
        Switching switching,
        Slew slew,
        AfterRun afterRun) {

    private static final int HOTTEST = 2_000;
    private static final int COLDEST = -1_000;
    private static final int HOUR = 36_000;
    private static final double ZERO_CELSIUS = 273.15;

    /**
     * A demand curve that counts only while latched.
     *
     * @param on latches at or above this input
     * @param off unlatches at or below this input, below {@code on}
     */
    public record Curve(DemandCurve demand, int on, int off) {
        /** Never asks for anything. */
        public static final Curve NONE = new Curve(DemandCurve.constant(0), HOTTEST, HOTTEST - 1);

        public Curve {
            Objects.requireNonNull(demand, "demand");
            if (off >= on) {
                throw new IllegalArgumentException("off at " + off + " must lie below on at " + on);
            }
        }
    }

    /**
     * What moving air spares the fan.
     *
     * @param demand taken off the largest curve, against road speed
     * @param hottest coolant temperature from which nothing is taken off any more
     */
    public record Allowance(DemandCurve demand, int hottest) {
        public Allowance {
            Objects.requireNonNull(demand, "demand");
            Bounds.inside("hottest coolant with allowance", hottest, COLDEST, HOTTEST);
        }
    }

    /**
     * Least demand at rest with a warm engine.
     *
     * @param demand 0 switches the rule off
     * @param coolant from this temperature
     * @param below road speed below which the vehicle counts as at rest
     * @param above road speed above which it counts as moving again, not below {@code below}
     */
    public record Floor(int demand, int coolant, int below, int above) {
        public Floor {
            Bounds.inside("floor demand", demand, 0, DemandCurve.FULL);
            Bounds.inside("floor coolant temperature", coolant, COLDEST, HOTTEST);
            Bounds.inside("floor lower speed", below, 0, above);
        }
    }

    /**
     * Coolant sensor.
     *
     * @param bad invalid ticks in a row that set the fault
     * @param good valid ticks in a row that clear it
     * @param demand of the coolant curve while the fault stands
     * @param first temperature assumed until the first valid reading
     */
    public record Sensor(int bad, int good, int demand, int first) {
        public Sensor {
            Bounds.inside("ticks to a sensor fault", bad, 1, HOUR);
            Bounds.inside("ticks to clear a sensor fault", good, 1, HOUR);
            Bounds.inside("substitute demand", demand, 0, DemandCurve.FULL);
            Bounds.inside("first temperature", first, COLDEST, HOTTEST);
        }
    }

    /**
     * On and off, with least times.
     *
     * @param startDelay ticks without fan after the engine starts
     * @param on demand from which the fan may start
     * @param off demand below which it may stop, not above {@code on}
     * @param least output target while it runs
     * @param leastOn ticks it runs at least
     * @param leastOff ticks it rests at least
     */
    public record Switching(int startDelay, int on, int off, int least, int leastOn, int leastOff) {
        public Switching {
            Bounds.inside("start delay", startDelay, 0, HOUR);
            Bounds.inside("demand that starts the fan", on, 1, DemandCurve.FULL);
            Bounds.inside("demand that stops the fan", off, 0, on);
            Bounds.inside("least output", least, 0, DemandCurve.FULL);
            Bounds.inside("least time on", leastOn, 0, HOUR);
            Bounds.inside("least time off", leastOff, 0, HOUR);
        }
    }

    /**
     * Change of the output in one tick.
     *
     * @param up moving, or engine off
     * @param upAtRest engine running below {@code restSpeed}: quieter
     * @param restSpeed road speed
     * @param down always
     * @param stop a fan switched off drops to 0 below this output
     */
    public record Slew(int up, int upAtRest, int restSpeed, int down, int stop) {
        public Slew {
            Bounds.inside("slew up", up, 1, DemandCurve.FULL);
            Bounds.inside("slew up at rest", upAtRest, 1, DemandCurve.FULL);
            Bounds.inside("rest speed", restSpeed, 0, DemandCurve.FULL);
            Bounds.inside("slew down", down, 1, DemandCurve.FULL);
            Bounds.inside("stop output", stop, 0, DemandCurve.FULL);
        }
    }

    /**
     * Fan after the engine stops.
     *
     * @param demand against coolant temperature
     * @param begin coolant temperature at key-off from which it runs on
     * @param end coolant temperature at which it ends, below {@code begin}
     * @param longest ticks
     * @param battery voltage below which a tick counts as low
     * @param lowTicks low ticks in a row that end it
     */
    public record AfterRun(DemandCurve demand, int begin, int end, int longest, int battery, int lowTicks) {
        public AfterRun {
            Objects.requireNonNull(demand, "demand");
            Bounds.inside("after-run begin", begin, COLDEST, HOTTEST);
            Bounds.inside("after-run end", end, COLDEST, begin - 1);
            Bounds.inside("after-run longest", longest, 0, HOUR);
            Bounds.inside("after-run battery", battery, 0, 60_000);
            Bounds.inside("after-run low ticks", lowTicks, 1, HOUR);
        }
    }

    public Schedule {
        Objects.requireNonNull(coolant, "coolant");
        Objects.requireNonNull(gearbox, "gearbox");
        Objects.requireNonNull(airConditioning, "airConditioning");
        Objects.requireNonNull(chargeAir, "chargeAir");
        Objects.requireNonNull(allowance, "allowance");
        Objects.requireNonNull(floor, "floor");
        Objects.requireNonNull(sensor, "sensor");
        Objects.requireNonNull(switching, "switching");
        Objects.requireNonNull(slew, "slew");
        Objects.requireNonNull(afterRun, "afterRun");
    }

    /** Whether charge air asks for the fan at all. */
    public boolean hasChargeAir() {
        return !chargeAir.equals(Curve.NONE);
    }

    /** What a build sheet that says nothing gets; the numbers are our choice, explained in docs/controller.md. */
    public static Schedule standard() {
        return new Schedule(
                new Curve(curve(930, 2500, 960, 3000, 1000, 6000, 1060, 10_000), 960, 930),
                new Curve(curve(900, 2500, 950, 3000, 1100, 8000, 1150, 10_000), 950, 900),
                new Curve(curve(1050, 2500, 1300, 3500, 1700, 7000, 2000, 10_000), 1300, 1050),
                Curve.NONE,
                new Allowance(curve(300, 0, 800, 4000, 1100, 8000), 1080),
                new Floor(2000, 900, 50, 100),
                new Sensor(20, 50, 8000, 200),
                new Switching(30, 2000, 1500, 2500, 200, 50),
                new Slew(100, 50, 50, 50, 1500),
                new AfterRun(curve(970, 3000, 1050, 7000), 1000, 970, 1800, 11_800, 30));
    }

    private static DemandCurve curve(int... xy) {
        int[][] points = new int[xy.length / 2][];
        for (int i = 0; i < points.length; i++) {
            points[i] = new int[] {xy[2 * i], xy[2 * i + 1]};
        }
        return DemandCurve.of(points);
    }

    /**
     * The schedule of a build sheet, rounded to the controller's whole numbers. Gearbox and head-pressure curve count from
     * their first point until their hysteresis below it. A sheet without head-pressure curve asks for its air-conditioning
     * demand whenever the compressor is asked for; one without gearbox or charge-air curve asks for nothing of that. Sensor faults are handled as in
     * {@link #standard()}.
     */
    public static Schedule of(FanSchedule sheet) {
        Schedule standard = standard();
        FanSchedule.Details details = sheet.details();
        return new Schedule(
                new Curve(
                        sampled(sheet.coolantTemperature(), Schedule::tenths, sheet.coolantDemand()),
                        tenths(sheet.on()),
                        tenths(sheet.off())),
                gearbox(sheet),
                airConditioning(sheet),
                chargeAir(sheet),
                new Allowance(
                        sheet.allowanceSpeed().isEmpty()
                                ? DemandCurve.constant(0)
                                : sampled(sheet.allowanceSpeed(), Schedule::speed, sheet.allowance()),
                        tenths(details.allowanceEnds())),
                floor(details.floor()),
                standard.sensor(),
                switching(details.switching()),
                slew(details.slew(), speed(details.floor().below())),
                afterRun(details.afterRun()));
    }

    private static Floor floor(FanSchedule.Floor floor) {
        return new Floor(share(floor.demand()), tenths(floor.from()), speed(floor.below()), speed(floor.above()));
    }

    private static Switching switching(FanSchedule.Switching s) {
        return new Switching(
                ticks(s.startDelay()),
                share(s.on()),
                share(s.off()),
                share(s.least()),
                ticks(s.leastOn()),
                ticks(s.leastOff()));
    }

    private static Slew slew(FanSchedule.Slew slew, int restSpeed) {
        return new Slew(aTick(slew.up()), aTick(slew.upAtRest()), restSpeed, aTick(slew.down()), share(slew.dropOut()));
    }

    private static AfterRun afterRun(FanSchedule.AfterRun run) {
        return new AfterRun(
                sampled(run.temperature(), Schedule::tenths, run.demand()),
                tenths(run.from()),
                tenths(run.until()),
                ticks(run.longest()),
                round(1000 * run.battery()),
                standard().afterRun().lowTicks());
    }

    private static Curve gearbox(FanSchedule sheet) {
        return sheet.gearboxTemperature().isEmpty()
                ? Curve.NONE
                : fromFirstPoint(
                        sampled(sheet.gearboxTemperature(), Schedule::tenths, sheet.gearboxDemand()),
                        round(10 * sheet.details().gearboxHysteresis()));
    }

    private static Curve airConditioning(FanSchedule sheet) {
        return sheet.headPressure().isEmpty()
                ? new Curve(DemandCurve.constant(share(sheet.airConditioningDemand())), 0, -1)
                : fromFirstPoint(
                        sampled(sheet.headPressure(), pascal -> round(pascal / 1000), sheet.headDemand()),
                        round(sheet.details().headHysteresis() / 1000));
    }

    private static Curve chargeAir(FanSchedule sheet) {
        return sheet.chargeAir()
                .map(c -> fromFirstPoint(
                        sampled(c.temperature(), Schedule::tenths, c.demand()), round(10 * c.hysteresis())))
                .orElse(Curve.NONE);
    }

    private static Curve fromFirstPoint(DemandCurve demand, int hysteresis) {
        return new Curve(demand, demand.x(0), demand.x(0) - hysteresis);
    }

    private interface ToWhole {
        int of(double si);
    }

    private static DemandCurve sampled(List<Double> x, ToWhole whole, List<Double> demand) {
        if (x.size() != demand.size()) {
            throw new IllegalArgumentException(
                    "a curve needs as many x as demands; there are " + x.size() + " and " + demand.size());
        }
        int[][] points = new int[x.size()][];
        for (int i = 0; i < points.length; i++) {
            points[i] = new int[] {whole.of(x.get(i)), share(demand.get(i))};
        }
        return DemandCurve.of(points);
    }

    private static int tenths(double kelvin) {
        return round(10 * (kelvin - ZERO_CELSIUS));
    }

    private static int speed(double metresPerSecond) {
        return round(36 * metresPerSecond);
    }

    private static int ticks(double seconds) {
        return round(Controller.RATE * seconds);
    }

    private static int aTick(double sharePerSecond) {
        return share(sharePerSecond / Controller.RATE);
    }

    private static int share(double demand) {
        return round(DemandCurve.FULL * demand);
    }

    private static int round(double value) {
        return Math.toIntExact(Math.round(value));
    }
}
