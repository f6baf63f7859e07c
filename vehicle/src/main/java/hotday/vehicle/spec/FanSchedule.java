package hotday.vehicle.spec;

import java.util.List;
import java.util.Optional;

/**
 * Fan demand against coolant temperature with on/off points and a road-speed allowance; see docs/controller.md.
 *
 * @param coolantTemperature rising, K
 * @param coolantDemand 0..1, same length
 * @param on, off coolant temperatures at which the curve starts and stops to count, K
 * @param allowanceSpeed rising, m/s; @param allowance demand taken off, 0..1
 * @param airConditioningDemand least demand while the compressor runs, 0..1; used when no head curve is given
 * @param headPressure rising, Pa absolute; empty without a curve
 * @param headDemand 0..1, same length
 * @param gearboxTemperature rising, K; empty without a curve
 * @param gearboxDemand 0..1, same length
 * @param chargeAir demand against charge air, for a car with a charge-air cooler
 * @param details everything else
 */
public record FanSchedule(
        List<Double> coolantTemperature,
        List<Double> coolantDemand,
        double on,
        double off,
        List<Double> allowanceSpeed,
        List<Double> allowance,
        double airConditioningDemand,
        List<Double> headPressure,
        List<Double> headDemand,
        List<Double> gearboxTemperature,
        List<Double> gearboxDemand,
        Optional<ChargeAirCurve> chargeAir,
        Details details) {
    public FanSchedule {
        headPressure = List.copyOf(headPressure);
        headDemand = List.copyOf(headDemand);
        gearboxTemperature = List.copyOf(gearboxTemperature);
        gearboxDemand = List.copyOf(gearboxDemand);
        coolantTemperature = List.copyOf(coolantTemperature);
        coolantDemand = List.copyOf(coolantDemand);
        allowanceSpeed = List.copyOf(allowanceSpeed);
        allowance = List.copyOf(allowance);
    }

    /** Without a charge-air curve. */
    public FanSchedule(
            List<Double> coolantTemperature,
            List<Double> coolantDemand,
            double on,
            double off,
            List<Double> allowanceSpeed,
            List<Double> allowance,
            double airConditioningDemand,
            List<Double> headPressure,
            List<Double> headDemand,
            List<Double> gearboxTemperature,
            List<Double> gearboxDemand,
            Details details) {
        this(
                coolantTemperature,
                coolantDemand,
                on,
                off,
                allowanceSpeed,
                allowance,
                airConditioningDemand,
                headPressure,
                headDemand,
                gearboxTemperature,
                gearboxDemand,
                Optional.empty(),
                details);
    }

    /** The same curves with everything else as it is where nobody says anything. */
    public FanSchedule(
            List<Double> coolantTemperature,
            List<Double> coolantDemand,
            double on,
            double off,
            List<Double> allowanceSpeed,
            List<Double> allowance,
            double airConditioningDemand,
            List<Double> headPressure,
            List<Double> headDemand,
            List<Double> gearboxTemperature,
            List<Double> gearboxDemand) {
        this(
                coolantTemperature,
                coolantDemand,
                on,
                off,
                allowanceSpeed,
                allowance,
                airConditioningDemand,
                headPressure,
                headDemand,
                gearboxTemperature,
                gearboxDemand,
                Details.standard(on));
    }

    /** The same with another charge-air curve, or none. */
    public FanSchedule with(Optional<ChargeAirCurve> other) {
        return with(other, details);
    }

    /** The same with other details. */
    public FanSchedule with(Details other) {
        return with(chargeAir, other);
    }

    private FanSchedule with(Optional<ChargeAirCurve> charge, Details other) {
        return new FanSchedule(
                coolantTemperature,
                coolantDemand,
                on,
                off,
                allowanceSpeed,
                allowance,
                airConditioningDemand,
                headPressure,
                headDemand,
                gearboxTemperature,
                gearboxDemand,
                charge,
                other);
    }

    /**
     * Demand against the temperature of the charge air behind its cooler.
     *
     * @param temperature rising, K; @param demand 0..1, same length
     * @param hysteresis the curve counts until so far below its first point, K
     */
    public record ChargeAirCurve(List<Double> temperature, List<Double> demand, double hysteresis) {
        /** Where nobody says anything, K. */
        public static final double HYSTERESIS = 3.0;

        public ChargeAirCurve {
            temperature = List.copyOf(temperature);
            demand = List.copyOf(demand);
        }
    }

    /**
     * What a fan schedule says beside its curves; see docs/controller.md.
     *
     * @param gearboxHysteresis the gearbox curve counts until so far below its first point, K
     * @param headHysteresis the same for head pressure, Pa
     * @param allowanceEnds coolant from which nothing is taken off any more, K
     */
    public record Details(
            double gearboxHysteresis,
            double headHysteresis,
            double allowanceEnds,
            Floor floor,
            Switching switching,
            Slew slew,
            AfterRun afterRun) {

        /** The same with another after-run. */
        public Details with(AfterRun other) {
            return new Details(gearboxHysteresis, headHysteresis, allowanceEnds, floor, switching, slew, other);
        }

        /** The same with another hysteresis of the head-pressure curve, Pa. */
        public Details withHeadHysteresis(double other) {
            return new Details(gearboxHysteresis, other, allowanceEnds, floor, switching, slew, afterRun);
        }

        /** The same with other switching. */
        public Details with(Switching other) {
            return new Details(gearboxHysteresis, headHysteresis, allowanceEnds, floor, other, slew, afterRun);
        }

        /**
         * Those of the standard schedule.
         *
         * @param on coolant temperature at which the coolant curve starts to count, K: the floor is not below it
         */
        public static Details standard(double on) {
            return new Details(
                    3.0,
                    25e3,
                    273.15 + 108.0,
                    new Floor(0.2, Math.max(273.15 + 90.0, on), 5.0 / 3.6, 10.0 / 3.6),
                    new Switching(3.0, 0.2, 0.15, 0.25, 20.0, 5.0),
                    new Slew(0.1, 0.05, 0.05, 0.15),
                    new AfterRun(
                            List.of(273.15 + 97.0, 273.15 + 105.0),
                            List.of(0.3, 0.7),
                            273.15 + 100.0,
                            273.15 + 97.0,
                            180.0,
                            11.8));
        }
    }

    /**
     * @param demand least one at rest with a warm engine, 0..1; 0 for none
     * @param from coolant temperature, K
     * @param below road speed below which the vehicle counts as at rest, m/s
     * @param above road speed above which it counts as moving again, m/s
     */
    public record Floor(double demand, double from, double below, double above) {}

    /**
     * @param startDelay without fan after the engine starts, s
     * @param on demand from which the fan may start, 0..1
     * @param off demand below which it may stop, 0..1
     * @param least output while it runs, 0..1
     * @param leastOn, leastOff least times running and resting, s
     */
    public record Switching(double startDelay, double on, double off, double least, double leastOn, double leastOff) {
        /** The same with another least time resting, s. */
        public Switching resting(double other) {
            return new Switching(startDelay, on, off, least, leastOn, other);
        }
    }

    /**
     * @param up change of the output while moving, 1/s
     * @param upAtRest at rest, 1/s
     * @param down always, 1/s
     * @param dropOut a fan switched off drops to 0 below this output, 0..1
     */
    public record Slew(double up, double upAtRest, double down, double dropOut) {}

    /**
     * @param temperature coolant, rising, K; @param demand 0..1, same length
     * @param from coolant temperature at key-off from which the fan runs on, K
     * @param until coolant temperature at which it ends, K
     * @param longest s
     * @param battery voltage below which it ends, V
     */
    public record AfterRun(
            List<Double> temperature, List<Double> demand, double from, double until, double longest, double battery) {
        public AfterRun {
            temperature = List.copyOf(temperature);
            demand = List.copyOf(demand);
        }
    }
}
