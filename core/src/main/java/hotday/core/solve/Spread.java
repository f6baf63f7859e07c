package hotday.core.solve;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * How well the parameters are known: (J'J)^-1 of data and priors together, through QR and singular values of J with its
 * columns brought to length one, so that the condition of the problem is not squared.
 *
 * @param information J'J of the data alone
 * @param covariance of the parameters
 * @param sd roots of its diagonal
 */
@SuppressWarnings("ArrayRecordComponent") // passed on once inside the package
record Spread(double[][] information, double[][] covariance, double[] sd) {
    /** A combination of parameters whose column is shorter than this is not determined. */
    private static final double UNDETERMINED = 1e-13;
    /** A parameter with at least this share in an undetermined combination is itself open. */
    private static final double SHARE = 1e-6;

    /** Nothing known but the priors. */
    static Spread priors(List<Parameter> parameters) {
        int n = parameters.size();
        double[][] covariance = new double[n][n];
        double[] sd = new double[n];
        for (int i = 0; i < n; i++) {
            sd[i] = parameters.get(i).priorSd();
            covariance[i][i] = sd[i] * sd[i];
        }
        return new Spread(new double[n][n], covariance, sd);
    }

    /**
     * @param jacobian rows of data, then rows of priors, by parameters in their scale
     * @param dataRows how many rows are data
     */
    static Spread of(double[][] jacobian, int dataRows, List<Parameter> parameters) {
        double[] scale = parameters.stream().mapToDouble(Parameter::scale).toArray();
        double[][] information = information(jacobian, dataRows, scale);
        double[] length = lengths(jacobian, scale.length);
        SingularValueDecomposition svd = new SingularValueDecomposition(factor(jacobian, length));
        double[][] covariance = covariance(svd, length, scale);
        double[] sd = new double[scale.length];
        for (int i = 0; i < sd.length; i++) {
            sd[i] = Math.sqrt(covariance[i][i]);
        }
        return new Spread(information, covariance, sd);
    }

    private static double[][] information(double[][] jacobian, int dataRows, double[] scale) {
        int n = scale.length;
        double[][] out = new double[n][n];
        for (int row = 0; row < dataRows; row++) {
            double[] r = jacobian[row];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j <= i; j++) {
                    out[i][j] += r[i] * r[j];
                }
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                out[i][j] /= scale[i] * scale[j];
                out[j][i] = out[i][j];
            }
        }
        return out;
    }

    /** Lengths of the columns; 1 for a column of zeros. */
    private static double[] lengths(double[][] jacobian, int n) {
        double[] out = new double[n];
        for (int j = 0; j < n; j++) {
            double sum = 0;
            for (double[] row : jacobian) {
                sum += row[j] * row[j];
            }
            out[j] = sum > 0 ? Math.sqrt(sum) : 1;
        }
        return out;
    }

    /** The square factor R of the Jacobian with columns of length one; rows of zeros where there are too few rows. */
    private static RealMatrix factor(double[][] jacobian, double[] length) {
        int n = length.length;
        double[][] scaled = new double[Math.max(n, jacobian.length)][n];
        for (int i = 0; i < jacobian.length; i++) {
            for (int j = 0; j < n; j++) {
                scaled[i][j] = jacobian[i][j] / length[j];
            }
        }
        return new QRDecomposition(new Array2DRowRealMatrix(scaled, false))
                .getR()
                .getSubMatrix(0, n - 1, 0, n - 1);
    }

    private static double[][] covariance(SingularValueDecomposition svd, double[] length, double[] scale) {
        int n = length.length;
        double[] s = svd.getSingularValues();
        RealMatrix v = svd.getV();
        boolean[] open = new boolean[n];
        double[][] out = new double[n][n];
        for (int k = 0; k < n; k++) {
            boolean determined = s[k] > UNDETERMINED * s[0];
            for (int i = 0; i < n; i++) {
                open[i] |= !determined && Math.abs(v.getEntry(i, k)) > SHARE;
                for (int j = 0; determined && j < n; j++) {
                    out[i][j] += v.getEntry(i, k) * v.getEntry(j, k) / (s[k] * s[k]);
                }
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                out[i][j] *= scale[i] / length[i] * (scale[j] / length[j]);
                if (open[i] || open[j]) {
                    out[i][j] = i == j ? Double.POSITIVE_INFINITY : 0;
                }
            }
        }
        return out;
    }
}
