package hotday.physics.component;

import hotday.physics.exchanger.TileLaw;
import hotday.physics.transfer.Arrangement;

/**
 * Radiator or cooler as a whole, quasi-steady: two conductances that grow with a power of their flow, in series, and an effectiveness.
 * 1/UA = 1/(Ga (ma/ma0)^na) + 1/(Gc (mc/mc0)^nc).
 *
 * <p>Powers: air 0.4..0.6 for louvered fins, coolant 0.6..0.8 while turbulent. Mind that flat tubes with half glycol are
 * laminar at small flow and then do not follow a power, see {@link hotday.physics.transfer.TubeFlow}.
 *
 * @param airConductance Ga at the reference flow, W/K
 * @param airFlow ma0, kg/s
 * @param airPower na
 * @param coolantConductance Gc at the reference flow, W/K
 * @param coolantFlow mc0, kg/s
 * @param coolantPower nc
 */
public record Core(
        double airConductance,
        double airFlow,
        double airPower,
        double coolantConductance,
        double coolantFlow,
        double coolantPower) {

    /**
     * A stream that enters.
     *
     * @param massFlow kg/s
     * @param specificHeat J/(kg K)
     * @param temperature K
     */
    public record Inlet(double massFlow, double specificHeat, double temperature) {
        double capacityRate() {
            return massFlow * specificHeat;
        }
    }

    /**
     * What leaves.
     *
     * @param heat from coolant to air, W
     * @param air temperature, K
     * @param coolant temperature, K
     * @param effectiveness 0..1
     */
    public record Outlet(double heat, double air, double coolant, double effectiveness) {}

    public Core {
        if (!(airConductance > 0 && airFlow > 0 && coolantConductance > 0 && coolantFlow > 0)) {
            throw new IllegalArgumentException("core conductances " + airConductance + " and " + coolantConductance
                    + " W/K and flows " + airFlow + " and " + coolantFlow + " kg/s must be above 0");
        }
    }

    /** Overall conductance, W/K; 0 where one side stands still. */
    public double conductance(double airMassFlow, double coolantMassFlow) {
        if (!(airMassFlow > 0 && coolantMassFlow > 0)) {
            return 0.0;
        }
        double air = airConductance * Math.pow(airMassFlow / airFlow, airPower);
        double coolant = coolantConductance * Math.pow(coolantMassFlow / coolantFlow, coolantPower);
        return air * coolant / (air + coolant);
    }

    /** Heat per kelvin of inlet difference, W/K; 0 where one side stands still. Both sides' flows 0 or more. */
    public double heatPerKelvin(
            Arrangement arrangement, double airMassFlow, double airHeat, double coolantMassFlow, double coolantHeat) {
        double ua = conductance(airMassFlow, coolantMassFlow);
        if (ua == 0.0) {
            return 0.0;
        }
        double air = airMassFlow * airHeat;
        double coolant = coolantMassFlow * coolantHeat;
        double smaller = Math.min(air, coolant);
        return smaller * arrangement.effectiveness(ua / smaller, smaller / Math.max(air, coolant));
    }

    /**
     * The same where the coolant has one temperature across the depth and is followed along its way, as in the cores cut into tiles
     * ({@link TileLaw#TUBE_MIXED}). Cheaper, and one formula whichever side carries more.
     */
    public double tubeHeatPerKelvin(double airMassFlow, double airHeat, double coolantMassFlow, double coolantHeat) {
        double ua = conductance(airMassFlow, coolantMassFlow);
        return ua == 0.0
                ? 0.0
                : TileLaw.TUBE_MIXED.heatPerKelvin(airMassFlow * airHeat, coolantMassFlow * coolantHeat, ua);
    }

    /** Heat and outlet temperatures; a side that stands still leaves as it came. Balanced to rounding. */
    public Outlet outlet(Arrangement arrangement, Inlet air, Inlet coolant) {
        double perKelvin = heatPerKelvin(
                arrangement, air.massFlow(), air.specificHeat(), coolant.massFlow(), coolant.specificHeat());
        if (perKelvin == 0.0) {
            return new Outlet(0.0, air.temperature(), coolant.temperature(), 0.0);
        }
        double heat = perKelvin * (coolant.temperature() - air.temperature());
        double effectiveness = perKelvin / Math.min(air.capacityRate(), coolant.capacityRate());
        return new Outlet(
                heat,
                air.temperature() + heat / air.capacityRate(),
                coolant.temperature() - heat / coolant.capacityRate(),
                effectiveness);
    }
}
