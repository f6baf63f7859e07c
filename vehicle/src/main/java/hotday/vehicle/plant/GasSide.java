package hotday.vehicle.plant;

import hotday.physics.transfer.EngineHeat;
import hotday.vehicle.spec.VehicleSpec;

/**
 * Heat from gas and friction into the engine. Gas side: Nu = 10.4 Re^0.75 on fuel plus air flow per piston area (Taylor
 * and Toong 1957, as in Taylor, The Internal-Combustion Engine in Theory and Practice, vol. 1), driven by a mean
 * effective gas temperature that rises with the fuel/air ratio. Two further exponents, zero by default, let a fit bend
 * the relation. Friction: mean effective pressure f0 + f1 n + f2 n^2, more with cold oil, never less than what the fuel line pays for.
 */
final class GasSide {
    private static final double GAS_CONDUCTIVITY = 0.06; // W/(m K), mean cycle gas
    private static final double GAS_VISCOSITY = 4.3e-5; // Pa s
    private static final double AIR_GAS_CONSTANT = 287.055;
    private static final double INTAKE_TEMPERATURE = 310.0; // K
    private static final double BREATHING = 0.9; // volumetric efficiency
    /** Friction rises as exp of this per kelvin below warm oil (363 K); from memory, thin-film viscosity slope. */
    private static final double OIL_FRICTION_SLOPE = 1.0 / 50.0;

    private static final double WARM_OIL = 363.15;
    private static final double REFERENCE_SPEED = 157.08; // rad/s, 1500 rpm

    private final boolean petrol;
    private final double stoichiometricRatio;
    private final double heatingValue;
    private final double bore;
    private final int cylinders;
    private final double gasTemperature;
    private final double displacement;
    private final double boost;
    private final double ratedFuelPower;
    private final double referenceFuelPower;
    private final double chargeEffectiveness;
    private final double compressorEfficiency;
    private final double f0;
    private final double f1;
    private final double f2;

    GasSide(VehicleSpec spec) {
        VehicleSpec.Engine e = spec.engine();
        petrol = e.fuel() == VehicleSpec.Fuel.PETROL;
        stoichiometricRatio = e.stoichiometricRatio();
        heatingValue = e.heatingValue();
        bore = e.bore();
        cylinders = e.cylinders();
        gasTemperature = petrol ? EngineHeat.PETROL_GAS_TEMPERATURE : EngineHeat.DIESEL_GAS_TEMPERATURE;
        displacement = e.displacement();
        boost = spec.chargeAir().map(VehicleSpec.ChargeAir::boostAtRated).orElse(1.0);
        chargeEffectiveness =
                spec.chargeAir().map(VehicleSpec.ChargeAir::effectiveness).orElse(0.0);
        compressorEfficiency = spec.chargeAir()
                .map(VehicleSpec.ChargeAir::compressorEfficiency)
                .orElse(0.7);
        ratedFuelPower = e.ratedPower() / 0.33;
        referenceFuelPower = 0.1 * ratedFuelPower;
        f0 = e.frictionConstant();
        f1 = e.frictionLinear();
        f2 = e.frictionSquare();
    }

    /** Gas to metal, W/K. */
    double conductance(double[] k, double[] u, double fuelPower) {
        double speed = u[Input.ENGINE_SPEED.ordinal()];
        if (speed <= 0.0) {
            return 0.0;
        }
        double flow = fuelPower / heatingValue + airFlow(u, fuelPower);
        double conductance = k[Coefficient.GAS_HEAT_LEVEL.ordinal()]
                * EngineHeat.conductance(flow, bore, cylinders, GAS_CONDUCTIVITY, GAS_VISCOSITY);
        double fuelExponent = k[Coefficient.GAS_HEAT_FUEL_EXPONENT.ordinal()];
        double speedExponent = k[Coefficient.GAS_HEAT_SPEED_EXPONENT.ordinal()];
        if (fuelExponent != 0.0) {
            double floor = 0.1 * referenceFuelPower;
            conductance *= Math.pow((fuelPower + floor) / (referenceFuelPower + floor), fuelExponent);
        }
        if (speedExponent != 0.0) {
            conductance *= Math.pow(speed / REFERENCE_SPEED, speedExponent);
        }
        return conductance;
    }

    /** Mean effective gas temperature, K. */
    double temperature(double[] u, double fuelPower) {
        double air = airFlow(u, fuelPower);
        if (air <= 0.0) {
            return EngineHeat.gasTemperature(0.0, gasTemperature);
        }
        double ratio = fuelPower / heatingValue * stoichiometricRatio / air;
        return EngineHeat.gasTemperature(petrol ? ratio * freshShare(u, air) : ratio, gasTemperature);
    }

    private double freshShare(double[] u, double air) {
        double swept = displacement * u[Input.ENGINE_SPEED.ordinal()] / (4.0 * Math.PI);
        return 1.0 - EngineHeat.burntGas(air / swept, u[Input.PRESSURE.ordinal()]);
    }

    /** Air drawn by the engine, kg/s: recorded, or from fuel (petrol) or from displacement and boost (diesel). */
    private double airFlow(double[] u, double fuelPower) {
        double recorded = u[Input.AIR_FLOW.ordinal()];
        if (recorded > 0.0) {
            return recorded;
        }
        double speed = u[Input.ENGINE_SPEED.ordinal()];
        if (petrol) {
            double motored =
                    0.1 * u[Input.PRESSURE.ordinal()] * displacement * speed / (4.0 * Math.PI * 287.055 * 310.0);
            return Math.max(motored, fuelPower / heatingValue * stoichiometricRatio);
        }
        double density =
                u[Input.PRESSURE.ordinal()] * pressureRatio(fuelPower) / (AIR_GAS_CONSTANT * INTAKE_TEMPERATURE);
        return BREATHING * density * displacement * speed / (4.0 * Math.PI);
    }

    private double pressureRatio(double fuelPower) {
        return 1.0 + (boost - 1.0) * Math.min(fuelPower / ratedFuelPower, 1.0);
    }

    /** Heat the charge-air cooler gives to the air that reaches it at {@code airIn}, W; {@code compressed} as {@link #compressed}. */
    double chargeHeat(double[] u, double fuelPower, double compressed, double airIn) {
        if (chargeEffectiveness <= 0.0 || u[Input.ENGINE_SPEED.ordinal()] <= 0.0) {
            return 0.0;
        }
        double drive = Math.max(0.0, compressed - airIn);
        return chargeEffectiveness * airFlow(u, fuelPower) * 1007.0 * drive;
    }

    /** Charge air behind its cooler, K. */
    double chargeTemperature(double compressed, double airIn) {
        return compressed - chargeEffectiveness * Math.max(0.0, compressed - airIn);
    }

    /** Charge air behind the compressor, K: ideal gas, ratio of specific heats 1.4, isentropic efficiency. */
    double compressed(double[] u, double fuelPower) {
        double rise =
                u[Input.AMBIENT.ordinal()] * (Math.pow(pressureRatio(fuelPower), 0.2857) - 1.0) / compressorEfficiency;
        return u[Input.AMBIENT.ordinal()] + rise;
    }

    /** Friction power that ends as heat in metal and oil, W. */
    double frictionHeat(double[] k, double[] u, double oil) {
        double speed = u[Input.ENGINE_SPEED.ordinal()];
        if (speed <= 0.0) {
            return 0.0;
        }
        double n = speed * 60.0 / (2.0 * Math.PI) / 1000.0;
        double meanPressure = f0 + f1 * n + f2 * n * n;
        double cold = Math.exp(Math.max(0.0, WARM_OIL - oil) * OIL_FRICTION_SLOPE);
        return k[Coefficient.FRICTION_LEVEL.ordinal()]
                * meanPressure
                * Math.min(cold, 4.0)
                * displacement
                * speed
                / (4.0 * Math.PI);
    }
}
