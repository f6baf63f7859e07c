package hotday.study.property;

import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.Refrigerant;
import java.util.List;

/** Names and values of the columns of a property file, and of the keys of its JSON: every name ends in its unit. */
public final class Columns {
    /** Of one state, {@code region} between the third and the fourth left out: it is a word. */
    static final List<String> STATE = List.of(
            "p_Pa",
            "T_K",
            "T_degC",
            "in_eos_T_range",
            "rho_kg_m3",
            "h_J_kg",
            "s_J_kgK",
            "cp_J_kgK",
            "cv_J_kgK",
            "w_m_s",
            "mu_Pa_s",
            "k_W_mK",
            "x");

    /** Of liquid (L) and vapour (V) in equilibrium. */
    static final List<String> BOTH_PHASES = List.of(
            "T_K",
            "T_degC",
            "p_Pa",
            "rhoL_kg_m3",
            "rhoV_kg_m3",
            "hL_J_kg",
            "hV_J_kg",
            "sL_J_kgK",
            "sV_J_kgK",
            "cpL_J_kgK",
            "cpV_J_kgK",
            "cvL_J_kgK",
            "cvV_J_kgK",
            "wL_m_s",
            "wV_m_s",
            "muL_Pa_s",
            "muV_Pa_s",
            "kL_W_mK",
            "kV_W_mK",
            "sigma_N_m");

    /** Where the word for the region stands among the columns of a state. */
    static final int REGION = 3;

    /** The first of the columns that both phases have, too. */
    private static final int DENSITY = 4;

    private static final double ICE_POINT = 273.15; // K

    private Columns() {}

    /** Names of the values of one state. */
    public static List<String> ofState() {
        return STATE;
    }

    /** Names of the values of both phases. */
    public static List<String> ofBothPhases() {
        return BOTH_PHASES;
    }

    /** In the order of {@link #ofState()}; NaN where the state has no such value; 1 within the authors' temperatures, else 0. */
    public static double[] values(Refrigerant fluid, FluidState s) {
        return new double[] {
            s.pressure(),
            s.temperature(),
            s.temperature() - ICE_POINT,
            s.temperature() <= fluid.publishedTemperatureLimit() ? 1.0 : 0.0,
            s.density(),
            s.enthalpy(),
            s.entropy(),
            s.cp(),
            s.cv(),
            s.speedOfSound(),
            s.viscosity(),
            s.conductivity(),
            s.quality()
        };
    }

    /** In the order of {@link #ofBothPhases()}; NaN where there is no such value. */
    public static double[] values(Refrigerant fluid, BothPhases both) {
        double[] liquid = values(fluid, both.liquid());
        double[] vapour = values(fluid, both.vapour());
        double[] out = new double[BOTH_PHASES.size()];
        out[0] = both.temperature();
        out[1] = both.temperature() - ICE_POINT;
        out[2] = both.pressure();
        int at = 3;
        for (int i = DENSITY; i < STATE.size() - 1; i++) {
            out[at++] = liquid[i];
            out[at++] = vapour[i];
        }
        out[at] = both.surfaceTension();
        return out;
    }
}
