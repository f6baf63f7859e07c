package hotday.vehicle.plant;

import hotday.physics.fluid.Coolant;
import hotday.vehicle.spec.VehicleSpec;

/** Coefficients that follow from a sheet; sources and reasons of every number in docs/physics/plant.md. */
final class NominalCoefficients {
    private static final double METAL_SPECIFIC_HEAT = 600.0; // J/(kg K), between iron 460 and aluminium 900
    private static final double OIL_SPECIFIC_HEAT = 2100.0; // J/(kg K) at 90 degC, from memory

    static final double WARM = 363.15; // K

    private NominalCoefficients() {}

    static double coolantHeatCapacity(VehicleSpec spec) {
        return Coolant.specificHeat(WARM, spec.coolant().glycolVolumeShare());
    }

    private static double coolantDensity(VehicleSpec spec) {
        return Coolant.density(WARM, spec.coolant().glycolVolumeShare());
    }

    static double[] of(VehicleSpec spec) {
        double[] k = new double[Coefficient.COUNT];
        double coolantMass = spec.coolant().volume() * coolantDensity(spec);
        double coolant = coolantMass * coolantHeatCapacity(spec);
        double litres = spec.engine().displacement() * 1e3;
        double size = litres / 2.0;
        k[Coefficient.METAL_CAPACITY.ordinal()] = spec.engine().metalMass() * METAL_SPECIFIC_HEAT;
        k[Coefficient.JACKET_CAPACITY.ordinal()] = 0.6 * coolant;
        k[Coefficient.OIL_CAPACITY.ordinal()] = spec.engine().oilMass() * OIL_SPECIFIC_HEAT * 2.0;
        k[Coefficient.RADIATOR_CAPACITY.ordinal()] = spec.radiator().heatCapacity();
        k[Coefficient.HEATER_CAPACITY.ordinal()] = spec.heater().heatCapacity();
        k[Coefficient.GAS_HEAT_LEVEL.ordinal()] = 1.0;
        k[Coefficient.FRICTION_LEVEL.ordinal()] = 1.0;
        k[Coefficient.FRICTION_TO_OIL.ordinal()] = 0.5;
        k[Coefficient.METAL_COOLANT_CONDUCTANCE.ordinal()] = 1500.0 * size;
        k[Coefficient.METAL_OIL_CONDUCTANCE.ordinal()] = 250.0 * size;
        k[Coefficient.PUMP_FLOW.ordinal()] = spec.coolant().pumpFlow() * coolantDensity(spec);
        k[Coefficient.THERMOSTAT_OPENS.ordinal()] = spec.thermostat().opens();
        k[Coefficient.THERMOSTAT_RANGE.ordinal()] =
                spec.thermostat().full() - spec.thermostat().opens();
        k[Coefficient.THERMOSTAT_HYSTERESIS.ordinal()] = spec.thermostat().hysteresis();
        k[Coefficient.WAX_LAG.ordinal()] = spec.thermostat().lag();
        k[Coefficient.THERMOSTAT_INLET_SHARE.ordinal()] = 0.5;
        k[Coefficient.DRIVE_FUEL_LEVEL.ordinal()] = 1.0;
        k[Coefficient.THERMOSTAT_LEAK.ordinal()] = spec.thermostat().leak();
        k[Coefficient.RADIATOR_AIR_CONDUCTANCE.ordinal()] = spec.radiator().airConductance();
        k[Coefficient.RADIATOR_COOLANT_CONDUCTANCE.ordinal()] = spec.radiator().coolantConductance();
        k[Coefficient.RAM_LEVEL.ordinal()] = 1.0;
        k[Coefficient.STILL_AIR_SPEED.ordinal()] = 0.15;
        k[Coefficient.FAN_LEVEL.ordinal()] = 1.0;
        k[Coefficient.HEATER_CONDUCTANCE.ordinal()] = spec.heater().conductance();
        k[Coefficient.HEATER_FLOW_SHARE.ordinal()] = spec.heater().flowShare();
        k[Coefficient.METAL_LOSS.ordinal()] = 12.0 * size;
        k[Coefficient.METAL_LOSS_PER_SPEED.ordinal()] = 0.5 * size;
        k[Coefficient.OIL_LOSS.ordinal()] = 6.0 * size;
        k[Coefficient.OIL_LOSS_PER_SPEED.ordinal()] = 0.4 * size;
        k[Coefficient.CONDENSER_HEAT.ordinal()] = 1.0;
        k[Coefficient.CONDENSER_LEVEL.ordinal()] = 1.0;
        k[Coefficient.GEARBOX_HEAT_LEVEL.ordinal()] = 1.0;
        k[Coefficient.BAY_CAPACITY.ordinal()] = 8e3;
        k[Coefficient.BAY_LOSS.ordinal()] = 10.0;
        k[Coefficient.BAY_LOSS_PER_SPEED.ordinal()] = 2.0;
        k[Coefficient.RECIRCULATION.ordinal()] = spec.frontEnd().sealing().atRest();
        return k;
    }
}
