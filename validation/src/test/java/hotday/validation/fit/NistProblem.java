package hotday.validation.fit;

import static java.lang.Double.parseDouble;
import static java.lang.Math.exp;
import static java.lang.Math.pow;

import hotday.core.solve.Residuals;
import hotday.validation.SharedData;
import java.util.List;
import java.util.Map;

/**
 * A nonlinear regression problem with certified answers (NIST/ITL Statistical Reference Datasets): model, data, the two
 * published starts (the first far away, the second near) and the certified parameters, standard deviations and residual
 * sum of squares.
 */
@SuppressWarnings("ArrayRecordComponent") // read once, never compared
record NistProblem(
        String name,
        String level,
        Model model,
        double[] start1,
        double[] start2,
        double[] certified,
        double[] certifiedSd,
        double certifiedSum,
        double certifiedResidualSd,
        double[] x,
        double[] y) {

    static final String SOURCE = "NIST/ITL StRD, nonlinear regression";
    private static final String CERTIFIED = "reference/trade/nist-strd-nonlinear-certified.csv";
    private static final String DATA = "reference/trade/nist-strd-nonlinear-data.csv";

    /** The model function of the problem. */
    interface Model {
        double y(double[] b, double x);
    }

    /** All thirteen, in the order of the file. */
    static List<NistProblem> all() {
        List<Map<String, String>> certified = SharedData.rows(CERTIFIED);
        List<Map<String, String>> data = SharedData.rows(DATA);
        return certified.stream()
                .map(r -> r.get("dataset"))
                .distinct()
                .map(name -> of(name, rowsOf(certified, name), rowsOf(data, name)))
                .toList();
    }

    private static List<Map<String, String>> rowsOf(List<Map<String, String>> rows, String name) {
        return rows.stream().filter(r -> r.get("dataset").equals(name)).toList();
    }

    private static NistProblem of(String name, List<Map<String, String>> b, List<Map<String, String>> data) {
        return new NistProblem(
                name,
                b.get(0).get("difficulty"),
                model(name),
                column(b, "start1"),
                column(b, "start2"),
                column(b, "certified"),
                column(b, "certified_sd"),
                parseDouble(b.get(0).get("rss")),
                parseDouble(b.get(0).get("resid_sd")),
                column(data, "x"),
                column(data, "y"));
    }

    private static double[] column(List<Map<String, String>> rows, String name) {
        return rows.stream().mapToDouble(r -> parseDouble(r.get(name))).toArray();
    }

    private static Model model(String name) {
        return switch (name) {
            case "Misra1a" -> (b, x) -> b[0] * (1 - exp(-b[1] * x));
            case "DanielWood" -> (b, x) -> b[0] * pow(x, b[1]);
            case "Chwirut2" -> (b, x) -> exp(-b[0] * x) / (b[1] + b[2] * x);
            case "Kirby2" -> (b, x) -> (b[0] + x * (b[1] + x * b[2])) / (1 + x * (b[3] + x * b[4]));
            case "Hahn1", "Thurber" ->
                (b, x) -> (b[0] + x * (b[1] + x * (b[2] + x * b[3]))) / (1 + x * (b[4] + x * (b[5] + x * b[6])));
            case "MGH17" -> (b, x) -> b[0] + b[1] * exp(-x * b[3]) + b[2] * exp(-x * b[4]);
            case "Roszman1" -> (b, x) -> b[0] - b[1] * x - Math.atan(b[2] / (x - b[3])) / Math.PI;
            case "MGH09" -> (b, x) -> b[0] * (x * x + x * b[1]) / (x * x + x * b[2] + b[3]);
            case "MGH10" -> (b, x) -> b[0] * exp(b[1] / (x + b[2]));
            case "Eckerle4" -> (b, x) -> b[0] / b[1] * exp(-0.5 * pow((x - b[2]) / b[1], 2));
            case "Ratkowsky3" -> (b, x) -> b[0] / pow(1 + exp(b[1] - b[2] * x), 1 / b[3]);
            case "Bennett5" -> (b, x) -> b[0] * pow(b[1] + x, -1 / b[2]);
            default -> throw new IllegalArgumentException("no model for " + name);
        };
    }

    /** Residuals with standard deviation one. */
    Residuals residuals() {
        return new Residuals() {
            @Override
            public int size() {
                return x.length;
            }

            @Override
            public void residuals(double[] b, double[] out) {
                for (int i = 0; i < x.length; i++) {
                    out[i] = model.y(b, x[i]) - y[i];
                }
            }
        };
    }
}
