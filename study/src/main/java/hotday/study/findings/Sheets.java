package hotday.study.findings;

import hotday.physics.cycle.Charge;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.AirConditioning;
import hotday.vehicle.spec.VehicleSpec.Electrical;
import hotday.vehicle.spec.VehicleSpec.Evaporator;
import hotday.vehicle.spec.VehicleSpec.Fan;
import hotday.vehicle.spec.VehicleSpec.GearboxFluid;
import hotday.vehicle.spec.VehicleSpec.RefrigerantCircuit;
import java.util.List;
import java.util.Optional;

/** A sheet with something in it changed. */
final class Sheets {
    private Sheets() {}

    private static VehicleSpec with(
            VehicleSpec s,
            GearboxFluid fluid,
            Fan fan,
            Optional<AirConditioning> a,
            Electrical e,
            FanSchedule schedule) {
        return new VehicleSpec(
                s.name(),
                s.designAmbient(),
                s.altitude(),
                s.roadLoad(),
                s.engine(),
                s.chargeAir(),
                s.gearbox(),
                fluid,
                s.coolant(),
                s.thermostat(),
                s.radiator(),
                s.heater(),
                fan,
                a,
                e,
                s.frontEnd(),
                s.stack(),
                schedule,
                s.limits());
    }

    static VehicleSpec schedule(VehicleSpec s, FanSchedule schedule) {
        return with(s, s.gearboxFluid(), s.fan(), s.airConditioning(), s.electrical(), schedule);
    }

    /** @param power multiplier on what the fan's motor takes */
    static VehicleSpec fanPower(VehicleSpec s, double power) {
        Fan f = s.fan();
        Fan other = new Fan(
                f.control(),
                f.stallPressure(),
                f.linear(),
                f.square(),
                f.windmill(),
                power * f.shaftPower(),
                f.motorEfficiency(),
                f.diameter(),
                f.slewUp(),
                f.slewDown());
        return with(s, s.gearboxFluid(), other, s.airConditioning(), s.electrical(), s.schedule());
    }

    /**
     * @param flow multiplier on the fluid through the coolers
     * @param opens added to the temperatures of the bypass, K
     * @param front, spin, loss multipliers on the core in the stack, the drag and the loss of the case
     */
    static VehicleSpec gearbox(VehicleSpec s, double flow, double opens, double front, double spin, double loss) {
        GearboxFluid g = s.gearboxFluid();
        GearboxFluid other = new GearboxFluid(
                g.meshLoss(),
                spin * g.spinLoss(),
                g.spinSpeed(),
                g.capacity(),
                g.viscosityAt40(),
                g.viscosityAt100(),
                flow * g.flow(),
                g.flowSpeed(),
                g.coolers(),
                front * g.frontConductance(),
                g.tankConductance(),
                g.bypassOpens() + opens,
                g.bypassFull() + opens,
                loss * g.caseLoss(),
                loss * g.caseLossPerSpeed());
        return with(s, other, s.fan(), s.airConditioning(), s.electrical(), s.schedule());
    }

    /**
     * @param capacity multiplier on the alternator's current
     * @param regulated added to the regulated voltage, V
     * @param base multiplier on the base load
     * @param resistance multiplier on the resistance of battery and fan cable
     */
    static VehicleSpec electrical(VehicleSpec s, double capacity, double regulated, double base, double resistance) {
        Electrical e = s.electrical();
        List<Double> current = e.current().stream().map(c -> capacity * c).toList();
        Electrical other = new Electrical(
                e.rotorSpeed(),
                current,
                e.temperatureCoefficient(),
                e.alternatorRatio(),
                e.alternatorEfficiency(),
                e.regulated() + regulated,
                e.batteryVoltage(),
                resistance * e.batteryResistance(),
                e.batteryCapacity(),
                base * e.baseCurrent(),
                resistance * e.fanCableResistance(),
                e.fanElectronics(),
                e.fanCurrentLimit(),
                e.fanDerated(),
                e.fanFull());
        return with(s, s.gearboxFluid(), s.fan(), s.airConditioning(), other, s.schedule());
    }

    /**
     * @param superheat added, K
     * @param freezeLimit added, K
     * @param evaporator multiplier on both sides of the coil
     */
    static VehicleSpec circuit(VehicleSpec s, Charge charge, double superheat, double freezeLimit, double evaporator) {
        return with(
                s,
                s.gearboxFluid(),
                s.fan(),
                s.airConditioning().map(a -> circuit(a, charge, superheat, freezeLimit, evaporator)),
                s.electrical(),
                s.schedule());
    }

    private static AirConditioning circuit(
            AirConditioning a, Charge charge, double superheat, double freezeLimit, double evaporator) {
        RefrigerantCircuit c = a.circuit();
        RefrigerantCircuit other = new RefrigerantCircuit(
                c.refrigerant(),
                c.displacement(),
                c.variable(),
                c.pulleyRatio(),
                c.electricSpeed(),
                c.clutchCurrent(),
                c.expansion(),
                c.superheat() + superheat,
                c.orificeDiameter(),
                charge,
                c.freezeLimit() + freezeLimit,
                c.highCapacity(),
                c.lowCapacity(),
                c.cutOut(),
                c.cutIn(),
                c.lowCutOut());
        Evaporator coil = a.evaporator();
        return new AirConditioning(
                a.condenserHeat(),
                a.compressorPower(),
                other,
                a.holds(),
                new Evaporator(
                        evaporator * coil.airConductance(), evaporator * coil.refrigerantConductance(), coil.airFlow()),
                a.cabin());
    }
}
