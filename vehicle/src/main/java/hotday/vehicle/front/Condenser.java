package hotday.vehicle.front;

import hotday.physics.exchanger.Passes;
import hotday.physics.exchanger.RefrigerantMarch;
import hotday.physics.exchanger.RefrigerantStream;
import hotday.physics.refrigerant.PropertyTable;
import hotday.physics.refrigerant.Refrigerant;
import hotday.physics.refrigerant.SaturationTable;
import hotday.physics.transfer.Condensation;
import hotday.physics.transfer.TubeFlow;

/**
 * A condenser that is asked for a heat: superheated gas in, slightly subcooled liquid out, and the pressure follows from
 * what the air takes. Multi-port flat tubes of a common kind (1 mm ports, tubes 9 mm apart; from memory).
 */
final class Condenser {
    private static final int QUALITIES = 17;
    private static final double PORT = 1.0e-3; // hydraulic diameter, m
    private static final double TUBE_PITCH = 9e-3;
    private static final double PORTS_PER_DEPTH = 750.0; // ports side by side, 1/m
    private static final double SUPERHEAT = 25.0; // K of the gas coming in; from memory
    private static final double SUBCOOLING = 5.0; // K wanted at the end
    private static final double COLDEST = 255.0; // K, of the search
    private static final double NEAR_CRITICAL = 0.985; // of the critical temperature

    private final Refrigerant refrigerant;
    private final PropertyTable table;
    private final RefrigerantMarch march;
    private final double portsArea;
    private final double surfaceRatio;
    private final double[] s = new double[SaturationTable.COLUMNS];
    private double condensing;
    private double pressure;

    /** @param height, depth of the core, m */
    Condenser(Refrigerant refrigerant, Passes passes, double height, double depth) {
        this.refrigerant = refrigerant;
        this.table = PropertyTable.of(refrigerant);
        this.march = new RefrigerantMarch(passes, new RefrigerantStream(QUALITIES));
        double ports = Math.max(1.0, PORTS_PER_DEPTH * depth);
        double tubesInPass = Math.max(1.0, height / TUBE_PITCH / passes.passes());
        this.portsArea = tubesInPass * ports * PORT * PORT;
        this.surfaceRatio = ports * 4.0 * PORT / TUBE_PITCH;
    }

    RefrigerantMarch march() {
        return march;
    }

    /** K. */
    double condensing() {
        return condensing;
    }

    /** Pa. */
    double pressure() {
        return pressure;
    }

    /** Sets saturation temperature and the flow that carries a heat there; false at the end of the range. */
    boolean set(double saturation, double heat) {
        double highest = NEAR_CRITICAL * refrigerant.criticalTemperature();
        condensing = Math.max(COLDEST, Math.min(highest, saturation));
        pressure = refrigerant.saturationPressure(condensing);
        table.saturation().look(pressure, s);
        RefrigerantStream stream = march.stream();
        stream.saturationTemperature = condensing;
        stream.liquidEnthalpy = s[SaturationTable.LIQUID_ENTHALPY];
        stream.vapourEnthalpy = s[SaturationTable.VAPOUR_ENTHALPY];
        stream.liquidHeat = s[SaturationTable.LIQUID_HEAT];
        stream.vapourHeat = s[SaturationTable.VAPOUR_HEAT];
        stream.enthalpy = stream.vapourEnthalpy + SUPERHEAT * stream.vapourHeat;
        double drop = stream.enthalpy - stream.liquidEnthalpy + SUBCOOLING * stream.liquidHeat;
        stream.massFlow = heat / drop;
        conductances(stream);
        return condensing > COLDEST && condensing < highest;
    }

    private void conductances(RefrigerantStream stream) {
        double flux = Math.max(1.0, stream.massFlow / portsArea);
        stream.vapourConductance = surfaceRatio
                * single(
                        flux,
                        s[SaturationTable.VAPOUR_VISCOSITY],
                        s[SaturationTable.VAPOUR_HEAT],
                        s[SaturationTable.VAPOUR_CONDUCTIVITY]);
        stream.liquidConductance = surfaceRatio
                * single(
                        flux,
                        s[SaturationTable.LIQUID_VISCOSITY],
                        s[SaturationTable.LIQUID_HEAT],
                        s[SaturationTable.LIQUID_CONDUCTIVITY]);
        Condensation.Saturated state = new Condensation.Saturated(
                pressure / refrigerant.criticalPressure(),
                1.0 / s[SaturationTable.LIQUID_VOLUME],
                1.0 / s[SaturationTable.VAPOUR_VOLUME],
                s[SaturationTable.LIQUID_VISCOSITY],
                s[SaturationTable.VAPOUR_VISCOSITY],
                s[SaturationTable.LIQUID_CONDUCTIVITY],
                s[SaturationTable.LIQUID_HEAT]);
        for (int i = 0; i < QUALITIES; i++) {
            double x = Math.max(0.02, Math.min(0.98, stream.quality(i)));
            stream.twoPhaseConductance[i] = surfaceRatio * Condensation.horizontal(state, x, flux, PORT);
        }
    }

    private static double single(double flux, double viscosity, double heat, double conductivity) {
        double nusselt = TubeFlow.nusselt(flux * PORT / viscosity, viscosity * heat / conductivity, 1.0);
        return nusselt * conductivity / PORT;
    }
}
