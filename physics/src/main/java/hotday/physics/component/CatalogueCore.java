package hotday.physics.component;

import hotday.physics.fluid.Air;
import hotday.physics.fluid.Coolant;
import hotday.physics.transfer.Fin;
import hotday.physics.transfer.LouveredFin;
import hotday.physics.transfer.TubeFlow;
import java.util.List;

/**
 * A radiator core from what a catalogue page gives: width, height, depth, fins per length, tube rows. What it does not
 * give (louvers, tube section, thicknesses) is filled in with the proportions of common brazed aluminium cores; from
 * memory, see docs/physics/radiator.md. SI.
 *
 * @param width along the tubes, m
 * @param height across the tubes, m
 * @param depth of the core, m
 * @param finsPerLength 1/m
 * @param tubeRows behind one another
 * @param tubePitch from tube to tube, m
 */
public record CatalogueCore(
        double width, double height, double depth, double finsPerLength, int tubeRows, double tubePitch) {
    private static final double TUBE_SIZE = 2.0e-3; // m, along the pitch
    private static final double TUBE_WALL = 0.3e-3;
    private static final double FIN_THICKNESS = 0.08e-3;
    private static final double LOUVER_PITCH = 1.4e-3;
    private static final double LOUVER_ANGLE = 28.0; // degrees
    private static final double LOUVER_SHARE = 0.85; // louver length over fin length
    private static final double FIN_CONDUCTIVITY = 180.0; // W/(m K)
    private static final double CONTRACTION_LOSS = 0.4;
    private static final double EXPANSION_LOSS = 0.2;
    private static final double ALUMINIUM_DENSITY = 2700.0;
    private static final double ALUMINIUM_HEAT = 900.0;
    /** Coolant in both tanks per metre of core height, m3/m. */
    private static final double TANK_VOLUME = 2.0e-3;

    private static final double AIR_TEMPERATURE = 313.15;
    private static final double COOLANT_TEMPERATURE = 368.15;
    private static final double REFERENCE_DENSITY = 1.2;

    public CatalogueCore {
        require(width > 0 && height > 0, "width and height must be positive");
        require(tubeRows >= 1 && depth / tubeRows > 5.0 * TUBE_WALL, "depth must leave more than 1.5 mm a tube row");
        require(tubePitch > TUBE_SIZE + FIN_THICKNESS, "tube pitch must exceed the tubes, 2 mm");
        require(finsPerLength > 0 && 1.0 / finsPerLength > 2.0 * FIN_THICKNESS, "fins must leave gaps");
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new IllegalArgumentException("radiator core: " + what);
        }
    }

    private double finLength() {
        return tubePitch - TUBE_SIZE;
    }

    private int tubes() {
        return (int) Math.max(1, Math.round(height / tubePitch));
    }

    private double passages() {
        return tubes() * width * finsPerLength;
    }

    private LouveredFin.Geometry geometry() {
        return new LouveredFin.Geometry(
                LOUVER_PITCH,
                1.0 / finsPerLength,
                finLength(),
                LOUVER_SHARE * finLength(),
                depth,
                tubePitch,
                FIN_THICKNESS,
                TUBE_SIZE,
                depth,
                LOUVER_ANGLE);
    }

    private double flowArea() {
        return passages() * (1.0 / finsPerLength - FIN_THICKNESS) * (finLength() - FIN_THICKNESS);
    }

    private double finArea() {
        return passages() * 2.0 * (finLength() - FIN_THICKNESS) * depth;
    }

    private double airArea() {
        return finArea() + passages() * 2.0 * (1.0 / finsPerLength - FIN_THICKNESS) * depth;
    }

    private double channelSpeed(double faceSpeed) {
        return faceSpeed * width * height / flowArea();
    }

    private static double reynolds(double channelSpeed) {
        return REFERENCE_DENSITY * channelSpeed * LOUVER_PITCH / Air.viscosity(AIR_TEMPERATURE);
    }

    /** Reynolds number on louver pitch at a face speed (m/s). */
    public double louverReynolds(double faceSpeed) {
        return reynolds(channelSpeed(faceSpeed));
    }

    /** What of this core lies outside the data behind the louvered-fin relations at a face speed (m/s); see {@link LouveredFin#outside}. */
    public List<LouveredFin.Excess> outsideThePublishedData(double faceSpeed) {
        return LouveredFin.outside(geometry(), 1.0, louverReynolds(faceSpeed));
    }

    /** Air-side conductance with fin efficiency at a face speed and 1.2 kg/m3, W/K. */
    public double airConductance(double faceSpeed) {
        double v = channelSpeed(faceSpeed);
        double h = LouveredFin.j(geometry(), reynolds(v))
                * REFERENCE_DENSITY
                * v
                * Air.specificHeat(AIR_TEMPERATURE)
                * Math.pow(Air.prandtl(AIR_TEMPERATURE), -2.0 / 3.0);
        double fin = Fin.straight(h, FIN_CONDUCTIVITY, FIN_THICKNESS, 0.5 * finLength());
        return Fin.surface(finArea() / airArea(), fin) * h * airArea();
    }

    /** How the air side grows with face speed between 1.5 and 6 m/s. */
    public double airExponent() {
        return Math.log(airConductance(6.0) / airConductance(1.5)) / Math.log(4.0);
    }

    /** Coolant-side conductance at a mass flow, W/K. */
    public double coolantConductance(double massFlow, double glycolShare) {
        double inner = TUBE_SIZE - 2.0 * TUBE_WALL;
        double across = depth / tubeRows - 4.0 * TUBE_WALL;
        double dh = 2.0 * inner * across / (inner + across);
        double viscosity = Coolant.viscosity(COOLANT_TEMPERATURE, glycolShare);
        double k = Coolant.conductivity(COOLANT_TEMPERATURE, glycolShare);
        double re = massFlow / (tubes() * tubeRows * inner * across) * dh / viscosity;
        double pr = viscosity * Coolant.specificHeat(COOLANT_TEMPERATURE, glycolShare) / k;
        double aspect = Math.min(inner, across) / Math.max(inner, across);
        double h = TubeFlow.nusselt(re, pr, aspect) * k / dh;
        return h * tubes() * tubeRows * 2.0 * (inner + across) * width;
    }

    /** Pressure drop at a face speed and 1.2 kg/m3 of unheated air, Pa (Kays and London, constant density). */
    public double pressureDrop(double faceSpeed) {
        double v = channelSpeed(faceSpeed);
        double friction = LouveredFin.f(geometry(), reynolds(v)) * airArea() / flowArea();
        return 0.5 * REFERENCE_DENSITY * v * v * (friction + CONTRACTION_LOSS + EXPANSION_LOSS);
    }

    /**
     * {a, b} of a v + b v^2 fitted to the pressure drop over 0.5 to 8 m/s face speed, relative errors least, neither below
     * zero. For common cores (14 to 22 fins per inch, 26 to 42 mm) within 9 % below 2 m/s and 5 % above; coarse deep cores
     * are fitted worse, because the friction law jumps at Re 150.
     */
    public double[] resistance() {
        double s11 = 0;
        double s12 = 0;
        double s22 = 0;
        double r1 = 0;
        double r2 = 0;
        for (double v = 0.5; v <= 8.0; v += 0.25) {
            double p = pressureDrop(v);
            double x = v / p;
            double y = v * v / p;
            s11 += x * x;
            s12 += x * y;
            s22 += y * y;
            r1 += x;
            r2 += y;
        }
        double det = s11 * s22 - s12 * s12;
        double a = (r1 * s22 - r2 * s12) / det;
        return a < 0 ? new double[] {0.0, r2 / s22} : new double[] {a, (s11 * r2 - s12 * r1) / det};
    }

    /** Metal and coolant inside, J/K. */
    public double heatCapacity(double glycolShare) {
        double inner = TUBE_SIZE - 2.0 * TUBE_WALL;
        double across = depth / tubeRows - 4.0 * TUBE_WALL;
        double fins = passages() * finLength() * depth * FIN_THICKNESS;
        double walls = tubes() * tubeRows * 2.0 * (inner + across) * TUBE_WALL * width;
        double inside = tubes() * tubeRows * inner * across * width + TANK_VOLUME * height;
        return (fins + walls) * ALUMINIUM_DENSITY * ALUMINIUM_HEAT
                + inside
                        * Coolant.density(COOLANT_TEMPERATURE, glycolShare)
                        * Coolant.specificHeat(COOLANT_TEMPERATURE, glycolShare);
    }
}
