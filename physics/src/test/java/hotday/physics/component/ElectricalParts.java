package hotday.physics.component;

import hotday.physics.WorkedProblem;
import tools.jackson.databind.JsonNode;

/** Parts of the worked electrical problem. */
final class ElectricalParts {
    private ElectricalParts() {}

    static Alternator alternator(WorkedProblem p) {
        double[] speed = numbers(p.input("n_r"));
        for (int i = 0; i < speed.length; i++) {
            speed[i] *= Math.PI / 30;
        }
        return new Alternator(speed, numbers(p.input("I25")), p.in("c_T"), p.in("i_a"), p.in("eta_a"));
    }

    static Cable cable(WorkedProblem p) {
        return new Cable(p.in("r20"), p.in("cable loop length"));
    }

    static FanDrive fan(WorkedProblem p) {
        return new FanDrive(
                p.in("P_max"),
                p.in("P_0"),
                p.in("I_lim"),
                p.in("V_lo"),
                p.in("V_hi"),
                cable(p).resistance(p.in("T_c") + 273.15));
    }

    private static double[] numbers(JsonNode list) {
        double[] out = new double[list.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = list.get(i).asDouble();
        }
        return out;
    }
}
