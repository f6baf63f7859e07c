package hotday.vehicle.spec;

import hotday.physics.component.Alternator;
import hotday.physics.component.Battery;
import hotday.physics.component.FanDrive;
import hotday.physics.component.Supply;
import hotday.physics.component.WillansLine;
import hotday.physics.cycle.Charge;
import hotday.physics.refrigerant.Refrigerant;
import hotday.vehicle.airpath.Rectangle;
import hotday.vehicle.airpath.Sealing;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A vehicle as the model sees it: SI throughout, every default already filled in. Made from a build sheet by
 * {@code hotday.vehicle.sheet}; compiled into a {@code Plant}.
 *
 * @param name what the shop calls the build
 * @param designAmbient outside temperature the build must stand, K
 * @param altitude of the design day, m above sea level (-400..5000)
 */
public record VehicleSpec(
        String name,
        double designAmbient,
        double altitude,
        RoadLoad roadLoad,
        Engine engine,
        Optional<ChargeAir> chargeAir,
        Gearbox gearbox,
        GearboxFluid gearboxFluid,
        CoolantLoop coolant,
        Thermostat thermostat,
        Radiator radiator,
        Heater heater,
        Fan fan,
        Optional<AirConditioning> airConditioning,
        Electrical electrical,
        FrontEnd frontEnd,
        Stack stack,
        FanSchedule schedule,
        Limits limits) {

    /** The same vehicle with another fan schedule. */
    public VehicleSpec with(FanSchedule other) {
        return new VehicleSpec(
                name,
                designAmbient,
                altitude,
                roadLoad,
                engine,
                chargeAir,
                gearbox,
                gearboxFluid,
                coolant,
                thermostat,
                radiator,
                heater,
                fan,
                airConditioning,
                electrical,
                frontEnd,
                stack,
                other,
                limits);
    }

    /** Which fuel; decides mixture control, gas temperature and the friction level. */
    public enum Fuel {
        PETROL,
        DIESEL
    }

    /** What drives the fan during a run of this vehicle when no channel records it. */
    public enum FanControl {
        /** The sheet's schedule is what the car runs. */
        SCHEDULE,
        /** Somebody else's controller, rules not known: recordings are bracketed. */
        UNKNOWN
    }

    /**
     * Force on a level road is {@code constant + linear v + square v^2}; either measured coefficients or made from mass,
     * rolling coefficient and drag area.
     *
     * @param mass with load and trailer, kg (used on grades and for acceleration)
     * @param constant N
     * @param linear N/(m/s)
     * @param square N/(m/s)^2 at air density 1.2 kg/m3
     * @param tyreRadius rolling radius, m
     */
    public record RoadLoad(double mass, double constant, double linear, double square, double tyreRadius) {}

    /**
     * @param displacement m3
     * @param bore m
     * @param ratedPower W at {@code ratedSpeed}
     * @param ratedSpeed rad/s
     * @param idleSpeed warm, in gear, rad/s
     * @param heatingValue lower, J/kg of fuel
     * @param fuelDensity kg/m3
     * @param stoichiometricRatio kg air per kg fuel
     * @param turbocharged true when the intake is compressed
     * @param metalMass of block and heads that warm with the coolant, kg
     * @param oilMass kg
     * @param frictionConstant, frictionLinear, frictionSquare friction mean effective pressure f0 + f1 n + f2 n^2, Pa with
     *     n in 1000 rpm, warm oil
     * @param indicatedEfficiency slope of the Willans line, 0..1
     * @param pumpingLoss mean effective pressure of a closed throttle, Pa (0 for diesel)
     */
    public record Engine(
            Fuel fuel,
            double displacement,
            int cylinders,
            double bore,
            double ratedPower,
            double ratedSpeed,
            double idleSpeed,
            double heatingValue,
            double fuelDensity,
            double stoichiometricRatio,
            boolean turbocharged,
            double metalMass,
            double oilMass,
            double frictionConstant,
            double frictionLinear,
            double frictionSquare,
            double indicatedEfficiency,
            double pumpingLoss) {
        /** Fuel power against brake power. */
        public WillansLine fuelLine() {
            return new WillansLine(
                    displacement, frictionConstant, frictionLinear, frictionSquare, pumpingLoss, indicatedEfficiency);
        }
    }

    /**
     * Charge-air cooler in front of the radiator.
     *
     * @param effectiveness heat taken out over the largest possible, 0..1
     * @param boostAtRated manifold over ambient pressure at rated power, 1..4
     * @param compressorEfficiency isentropic, 0..1
     */
    public record ChargeAir(double effectiveness, double boostAtRated, double compressorEfficiency) {}

    /**
     * @param ratios first gear first
     * @param finalDrive axle ratio
     * @param efficiency gearbox and axle together, 0..1
     * @param shiftUpSpeed engine speed above which the next gear is taken, rad/s
     * @param lowestSpeed engine speed kept when a gear is chosen, rad/s
     * @param idleDragPower taken from the engine at rest in gear, W
     * @param heatToAir share of the gearbox loss given to the air in front of the radiator (cooler in the stack), 0..1
     * @param lowRange further ratio of a transfer box, 1 without
     * @param converter torque converter
     */
    public record Gearbox(
            List<Double> ratios,
            double finalDrive,
            double efficiency,
            double shiftUpSpeed,
            double lowestSpeed,
            double idleDragPower,
            double heatToAir,
            double lowRange,
            Converter converter) {
        public Gearbox {
            ratios = List.copyOf(ratios);
        }
    }

    /**
     * Torque converter with lock-up.
     *
     * @param speedRatio turbine over pump, rising from 0
     * @param capacity pump speed over the square root of pump torque, rad/s per sqrt(N m), same length
     * @param torqueRatio turbine over pump torque, same length
     * @param lockGear first gear (1 is the lowest) in which it locks
     * @param lockSpeed turbine speed from which it locks, rad/s
     */
    public record Converter(
            List<Double> speedRatio, List<Double> capacity, List<Double> torqueRatio, int lockGear, double lockSpeed) {
        public Converter {
            speedRatio = List.copyOf(speedRatio);
            capacity = List.copyOf(capacity);
            torqueRatio = List.copyOf(torqueRatio);
        }

        /** Taken from an engine at this speed with the vehicle at rest in gear, W; 0 without a curve. */
        public double stallPower(double engineSpeed) {
            if (capacity.isEmpty()) {
                return 0.0;
            }
            double root = engineSpeed / capacity.get(0);
            return root * root * engineSpeed;
        }
    }

    /** Where gearbox fluid is cooled. */
    public enum FluidCooler {
        /** A core in the stack. */
        FRONT,
        /** In the radiator's outlet tank, by coolant. */
        TANK
    }

    /**
     * The gearbox's fluid and what cools it.
     *
     * @param meshLoss share of the power through the gears that heats the fluid, 0..0.1
     * @param spinLoss drag of pump, clutches and gears with fluid at 80 degC, W at {@code spinSpeed} of the input shaft
     * @param spinSpeed rad/s
     * @param capacity of fluid and gearbox case, J/K
     * @param viscosityAt40 kinematic, m2/s
     * @param viscosityAt100 kinematic, m2/s
     * @param flow through the coolers, thermostat open, kg/s at {@code flowSpeed} of the engine
     * @param flowSpeed rad/s
     * @param coolers in flow order, empty for none
     * @param frontConductance fluid side of the core in the stack at {@code flow}, W/K
     * @param tankConductance of the cooler in the radiator tank at {@code flow}, W/K
     * @param bypassOpens fluid temperature at which the coolers start to be fed, K
     * @param bypassFull fully fed, K
     * @param caseLoss gearbox case to the air around it at rest, W/K
     * @param caseLossPerSpeed further, W/K/(m/s)
     */
    public record GearboxFluid(
            double meshLoss,
            double spinLoss,
            double spinSpeed,
            double capacity,
            double viscosityAt40,
            double viscosityAt100,
            double flow,
            double flowSpeed,
            List<FluidCooler> coolers,
            double frontConductance,
            double tankConductance,
            double bypassOpens,
            double bypassFull,
            double caseLoss,
            double caseLossPerSpeed) {
        public GearboxFluid {
            coolers = List.copyOf(coolers);
        }
    }

    /**
     * @param glycolVolumeShare ethylene glycol by volume, 0..0.6
     * @param volume of the whole loop, m3
     * @param capPressure relief of the cap over ambient, Pa
     * @param pumpFlow m3/s at {@code pumpSpeed} of the engine, thermostat open
     * @param pumpSpeed engine speed of the quoted flow, rad/s
     */
    public record CoolantLoop(
            double glycolVolumeShare, double volume, double capPressure, double pumpFlow, double pumpSpeed) {}

    /**
     * @param opens temperature at which it starts to open, K
     * @param full temperature of full opening, K
     * @param hysteresis closing lies below opening by this, K
     * @param lag of the wax, s
     * @param leak share of the full radiator flow that passes when shut, 0..0.1
     */
    public record Thermostat(double opens, double full, double hysteresis, double lag, double leak) {}

    /**
     * Core in catalogue dimensions, with the fin and tube detail behind the two conductances filled in by default.
     *
     * @param width, height, depth of the core, m
     * @param airConductance air-side h A with fins at 3 m/s face speed and 1.2 kg/m3, W/K
     * @param airExponent how the air side grows with face speed
     * @param coolantConductance coolant-side h A at {@code coolantFlow}, W/K
     * @param coolantFlow reference flow, kg/s
     * @param flowShare, conductanceShare how the coolant side changes with flow, both over their reference values, flow
     *     rising from zero; flat while the tubes are laminar
     * @param resistanceLinear, resistanceSquare core pressure drop a v + b v|v|, Pa with v in m/s at 1.2 kg/m3
     * @param heatCapacity metal and coolant inside, J/K
     */
    public record Radiator(
            double width,
            double height,
            double depth,
            double airConductance,
            double airExponent,
            double coolantConductance,
            double coolantFlow,
            List<Double> flowShare,
            List<Double> conductanceShare,
            double resistanceLinear,
            double resistanceSquare,
            double heatCapacity) {
        public Radiator {
            flowShare = List.copyOf(flowShare);
            conductanceShare = List.copyOf(conductanceShare);
        }

        public double faceArea() {
            return width * height;
        }
    }

    /**
     * @param conductance coolant to cabin air with the blower full, W/K
     * @param flowShare of the pump flow through the heater core, 0..0.5
     * @param heatCapacity J/K
     */
    public record Heater(double conductance, double flowShare, double heatCapacity) {}

    /**
     * Electric fan at full speed and 1.2 kg/m3: pressure rise {@code stall + linear q + square q^2}.
     *
     * @param stallPressure Pa, positive
     * @param linear Pa/(m3/s)
     * @param square Pa/(m3/s)^2, negative or zero
     * @param windmill pressure drop of the free rotor, Pa/(m3/s)^2
     * @param shaftPower at the free-flow point, W
     * @param motorEfficiency 0..1
     * @param diameter m
     * @param slewUp, slewDown of the speed ratio, 1/s
     */
    public record Fan(
            FanControl control,
            double stallPressure,
            double linear,
            double square,
            double windmill,
            double shaftPower,
            double motorEfficiency,
            double diameter,
            double slewUp,
            double slewDown) {}

    /**
     * @param condenserHeat given to the air in front of the radiator at 35 degC, full load, W
     * @param compressorPower shaft power at the same point, W
     */
    public record AirConditioning(
            double condenserHeat,
            double compressorPower,
            RefrigerantCircuit circuit,
            CompressorHolds holds,
            Evaporator evaporator,
            Cabin cabin) {}

    /** What meters the refrigerant into the evaporator. */
    public enum Expansion {
        /** Holds the superheat. */
        THERMOSTATIC_VALVE,
        /** Fixed orifice with accumulator. */
        ORIFICE
    }

    /**
     * @param displacement of the compressor, m3 a turn
     * @param variable true for a compressor that shortens its stroke
     * @param pulleyRatio compressor over engine speed
     * @param electricSpeed of a compressor with its own motor, rad/s; 0 for one on the belt
     * @param clutchCurrent A
     * @param superheat held by a thermostatic valve, K
     * @param orificeDiameter m
     * @param freezeLimit saturation temperature the evaporator is kept above, K
     * @param highCapacity, lowCapacity metal and refrigerant of the two sides, J/K
     * @param cutOut high-side pressure that stops the compressor, Pa absolute
     * @param cutIn high-side pressure at which it may start again, Pa absolute
     * @param lowCutOut low-side pressure that stops it, Pa absolute
     */
    public record RefrigerantCircuit(
            Refrigerant refrigerant,
            double displacement,
            boolean variable,
            double pulleyRatio,
            double electricSpeed,
            double clutchCurrent,
            Expansion expansion,
            double superheat,
            double orificeDiameter,
            Charge charge,
            double freezeLimit,
            double highCapacity,
            double lowCapacity,
            double cutOut,
            double cutIn,
            double lowCutOut) {}

    /**
     * @param airConductance air side at {@code airFlow}, dry, W/K
     * @param refrigerantConductance W/K
     * @param airFlow reference, kg/s
     */
    public record Evaporator(double airConductance, double refrigerantConductance, double airFlow) {}

    /**
     * @param volume of air, m3
     * @param interiorCapacity seats, trim and glass, J/K
     * @param interiorConductance air to interior, W/K
     * @param shellConductance cabin to outside at rest, W/K
     * @param shellPerSpeed further, W/K/(m/s)
     * @param glass area times transmittance, m2
     * @param leakage air through gaps at rest, kg/s
     * @param leakagePerSpeed further, kg/s/(m/s)
     * @param people in the cabin
     * @param blowerFlow at full blower, kg/s
     * @param blowerPower at full blower, W electrical
     */
    public record Cabin(
            double volume,
            double interiorCapacity,
            double interiorConductance,
            double shellConductance,
            double shellPerSpeed,
            double glass,
            double leakage,
            double leakagePerSpeed,
            int people,
            double blowerFlow,
            double blowerPower) {}

    /**
     * Supply and its loads.
     *
     * @param rotorSpeed of the alternator, rad/s, rising; @param current it gives there at 25 degC, A
     * @param temperatureCoefficient loss of current per kelvin above 25 degC, 1/K
     * @param alternatorRatio alternator over engine speed
     * @param alternatorEfficiency 0..1
     * @param regulated voltage, V
     * @param batteryVoltage open circuit, V
     * @param batteryResistance ohm
     * @param batteryCapacity A s
     * @param baseCurrent ignition, fuel pump, lights and the rest, A
     * @param fanCableResistance both ways, ohm
     * @param fanElectronics power of a running fan beside its motor, W
     * @param fanCurrentLimit A
     * @param fanDerated, fanFull terminal voltages between which the fan gives up power, V
     */
    public record Electrical(
            List<Double> rotorSpeed,
            List<Double> current,
            double temperatureCoefficient,
            double alternatorRatio,
            double alternatorEfficiency,
            double regulated,
            double batteryVoltage,
            double batteryResistance,
            double batteryCapacity,
            double baseCurrent,
            double fanCableResistance,
            double fanElectronics,
            double fanCurrentLimit,
            double fanDerated,
            double fanFull) {
        /** What a loaded alternator is warmer than the air in the bay, K; from memory. */
        public static final double ALTERNATOR_RISE = 20.0;

        public Electrical {
            rotorSpeed = List.copyOf(rotorSpeed);
            current = List.copyOf(current);
        }

        /** The machine by its curve. */
        public Alternator alternator() {
            return new Alternator(
                    rotorSpeed.stream().mapToDouble(Double::doubleValue).toArray(),
                    current.stream().mapToDouble(Double::doubleValue).toArray(),
                    temperatureCoefficient,
                    alternatorRatio,
                    alternatorEfficiency);
        }

        /** Regulator and battery. */
        public Supply supply() {
            return new Supply(regulated, new Battery(batteryVoltage, batteryResistance, batteryCapacity));
        }

        /** The fan's drive at the end of a cable, ohm both ways. */
        public FanDrive drive(Fan fan, double cable) {
            return new FanDrive(
                    fan.shaftPower() / fan.motorEfficiency(),
                    fanElectronics,
                    fanCurrentLimit,
                    fanDerated,
                    fanFull,
                    cable);
        }
    }

    /**
     * @param ramRecovery share of 0.5 rho V^2 that reaches the face
     * @param basePressure coefficient behind, usually negative
     * @param openingArea free area of the openings, m2
     * @param exitLoss of grille, bay and exit together, referred to the dynamic pressure at the core face
     * @param draughtHeight of the natural draught behind the core, m
     * @param sealing decides how much hot air comes back at rest
     */
    public record FrontEnd(
            double ramRecovery,
            double basePressure,
            double openingArea,
            double exitLoss,
            double draughtHeight,
            Sealing sealing) {}

    /** What a core in the stack cools. */
    public enum CoreKind {
        GEARBOX_COOLER("gearbox cooler"),
        CONDENSER("condenser"),
        CHARGE_AIR_COOLER("charge-air cooler"),
        RADIATOR("radiator");

        private final String title;

        CoreKind(String title) {
            this.title = title;
        }

        /** For people. */
        public String title() {
            return title;
        }
    }

    /**
     * A core at its place on the face.
     *
     * @param layer from the front, 1 or more; cores of one layer stand beside each other
     * @param place on the face
     * @param depth m
     * @param airConductance air-side h A with fins at 3 m/s face speed and 1.2 kg/m3, W/K
     * @param airExponent how it grows with face speed
     * @param resistanceLinear, resistanceSquare a v + b v|v|, Pa with v in m/s at 1.2 kg/m3
     */
    public record PlacedCore(
            CoreKind kind,
            int layer,
            Rectangle place,
            double depth,
            double airConductance,
            double airExponent,
            double resistanceLinear,
            double resistanceSquare) {}

    /**
     * The stack drawn to scale, seen from the front.
     *
     * @param width, height of the face, m
     * @param cores in depth order from the front, the radiator last
     * @param openings of the body in front of the face
     * @param shroud what collects the air for the fan
     * @param shroudGap effective area of gaps in the shroud, m2
     * @param fans 1 or 2, side by side, of equal size
     * @param fanDiameter m
     * @param flapArea of the relief flaps, m2; 0 for none
     * @param flapCracking pressure that opens them, Pa
     */
    public record Stack(
            double width,
            double height,
            List<PlacedCore> cores,
            List<Rectangle> openings,
            Rectangle shroud,
            double shroudGap,
            int fans,
            double fanDiameter,
            double flapArea,
            double flapCracking) {
        public Stack {
            cores = List.copyOf(cores);
            openings = List.copyOf(openings);
        }
    }

    /**
     * @param coolant highest engine-out temperature, K
     * @param boilMargin least distance to boiling at the cap, K
     * @param gearbox highest sump temperature, K
     * @param headPressure highest, Pa absolute
     * @param evaporating highest saturation temperature of an evaporator that still cools the cabin, K
     * @param supply lowest voltage, V
     * @param chargeAir highest behind the charge-air cooler, K; empty where the sheet states none
     * @param afterRunShare of the battery's capacity that the fan may take after key-off, 0..1
     */
    public record Limits(
            double coolant,
            double boilMargin,
            double gearbox,
            double headPressure,
            double evaporating,
            double supply,
            OptionalDouble chargeAir,
            double afterRunShare) {
        /** Where nobody says anything: the engine starts again; common practice, no source. */
        public static final double AFTER_RUN_SHARE = 0.1;
    }
}
