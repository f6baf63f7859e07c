package hotday.validation.fit;

import hotday.core.solve.Fit;
import hotday.core.solve.FitOptions;
import hotday.core.solve.LeastSquares;
import hotday.core.solve.Parameter;
import hotday.validation.Check;
import hotday.validation.Topic;
import java.util.ArrayList;
import java.util.List;

/**
 * The certified problems, from both published starts, with derivatives by central differences as the product uses them.
 * The row shows the parameter that agrees worst. Six digits are the usual pass mark from the near start (common practice,
 * no source); the far start is only expected to work for the easy ones, here all must.
 */
public final class NistChecks implements Topic {
    private static final double SIX_DIGITS = 1e-6;
    /** The standard deviations rest on the derivatives themselves, known to ten digits less the problem's condition. */
    private static final double FIVE_DIGITS = 1e-5;

    private static final FitOptions OPTIONS =
            FitOptions.standard().withTolerance(1e-14).withMaxIterations(2000);

    @Override
    public String title() {
        return "Nonlinear least squares: certified problems";
    }

    @Override
    public List<Check> checks() {
        List<Check> out = new ArrayList<>();
        for (NistProblem problem : NistProblem.all()) {
            Fit near = fit(problem, problem.start2());
            out.add(worst(problem, "near start", near.parameters(), problem.certified(), SIX_DIGITS));
            out.add(worst(problem, "sd, near start", sd(problem, near), problem.certifiedSd(), FIVE_DIGITS));
            out.add(Check.relative(
                    problem.name() + " residual sum of squares",
                    near.dataCost(),
                    problem.certifiedSum(),
                    1e-9,
                    "-",
                    NistProblem.SOURCE));
            Fit far = fit(problem, problem.start1());
            out.add(worst(problem, "far start", far.parameters(), problem.certified(), SIX_DIGITS));
        }
        return out;
    }

    static Fit fit(NistProblem problem, double[] start) {
        List<Parameter> parameters = new ArrayList<>();
        for (int i = 0; i < start.length; i++) {
            parameters.add(Parameter.free("b" + (i + 1), start[i]));
        }
        return LeastSquares.fit(problem::residuals, parameters, OPTIONS);
    }

    /** The certified standard deviations are those for the residual variance found, ours for variance one. */
    private static double[] sd(NistProblem problem, Fit fit) {
        double residualSd = Math.sqrt(fit.dataCost() / (problem.x().length - fit.parameters().length));
        double[] out = fit.posteriorSd();
        for (int i = 0; i < out.length; i++) {
            out[i] *= residualSd;
        }
        return out;
    }

    private static Check worst(NistProblem problem, String label, double[] ours, double[] certified, double tolerance) {
        int worst = 0;
        for (int i = 1; i < ours.length; i++) {
            if (digits(ours[i], certified[i]) < digits(ours[worst], certified[worst])) {
                worst = i;
            }
        }
        String what = String.format(
                "%s (%s) b%d of %d, %s: %.1f digits",
                problem.name(), problem.level(), worst + 1, ours.length, label, digits(ours[worst], certified[worst]));
        return Check.relative(what, ours[worst], certified[worst], tolerance, "-", NistProblem.SOURCE);
    }

    /** Number of digits that agree: -log10 of the relative difference, 0 to 11 (as many as are certified). */
    static double digits(double ours, double certified) {
        double off = Math.abs(ours - certified) / Math.abs(certified);
        return Math.max(0, Math.min(11, -Math.log10(off)));
    }
}
