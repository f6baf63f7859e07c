package hotday.vehicle.airpath;

import hotday.vehicle.airpath.Face.Flaps;
import java.util.List;

/**
 * The ways out of the plenum side by side: pulling fans, relief flaps, gaps of the shroud. Gives the pressure rise from plenum to
 * underhood that a mass flow needs, and shares the flow out. Solved in flow rather than in pressure, because a fan at rest, a door
 * about to open and a gap all have a vertical tangent against pressure.
 */
final class PlenumOutlet {
    private static final double TOLERANCE = 1e-14; // of the flows that meet
    private static final double ROUNDING = 1e-12;
    private static final int MOST = 400; // two ends of doubles are closer than that many halvings, twice

    private final TurningFan[] fans;
    private final Flaps flaps;
    private final double gap;
    private final FallingRoot root = new FallingRoot();
    private final double[] flow; // kg/s: fans, flaps, gap
    private final double[] above; // the same at the upper end of a bracket
    private double density;
    private double rise;
    private double slope;
    private double sum;
    private double gross;

    PlenumOutlet(List<TurningFan> pulling, Flaps flaps, double gap) {
        this.fans = pulling.toArray(TurningFan[]::new);
        this.flaps = flaps;
        this.gap = gap;
        this.flow = new double[fans.length + 2];
        this.above = new double[fans.length + 2];
    }

    boolean open() {
        return fans.length > 0;
    }

    TurningFan fan(int place) {
        return fans[place];
    }

    void density(double rear) {
        density = rear;
    }

    /** Pa, underhood less plenum. */
    double rise() {
        return rise;
    }

    /** Change of the rise with mass flow, Pa s/kg, 0 or less. */
    double slope() {
        return slope;
    }

    /** m3/s. */
    double fanFlow(int fan) {
        return flow[fan] / density;
    }

    /** kg/s, 0 or more. */
    double flapFlow() {
        return flow[fans.length];
    }

    /** kg/s, positive out of the plenum. */
    double gapFlow() {
        return flow[fans.length + 1];
    }

    /** Finds rise, slope and shares for a mass flow out of the plenum, kg/s. */
    void pass(double mass) {
        double each = mass / (density * fans.length);
        double low = fans[0].pressure(each);
        double high = low;
        for (int i = 1; i < fans.length; i++) {
            double pressure = fans[i].pressure(each);
            low = Math.min(low, pressure);
            high = Math.max(high, pressure);
        }
        boolean shut = flaps.area() <= 0.0 || high >= -flaps.cracking();
        if (shut && gap <= 0.0 && low == high) {
            alone(mass, low, each);
        } else {
            double least = gap > 0.0 ? Math.min(low, 0.0) : low;
            double most = gap > 0.0 ? Math.max(high, 0.0) : shut ? high : -flaps.cracking();
            share(mass, least, most);
        }
    }

    private void alone(double mass, double pressure, double each) {
        rise = pressure;
        double sides = 0.0;
        for (int i = 0; i < fans.length; i++) {
            flow[i] = mass / fans.length;
            sides += 1.0 / fans[i].slope(each);
        }
        flow[fans.length] = 0.0;
        flow[fans.length + 1] = 0.0;
        slope = 1.0 / (density * sides);
    }

    private void share(double mass, double low, double high) {
        double rounding =
                ROUNDING * (1.0 + Math.abs(low) + Math.abs(high)); // at the peak of a curve an end may miss the root
        root.begin(low - rounding, high + rounding);
        double at = Math.min(high, Math.max(low, rise));
        for (int i = 0; i < MOST; i++) {
            double tangent = at(at);
            if (Math.abs(sum - mass) <= TOLERANCE * gross) {
                break;
            }
            double next = root.next(at, sum - mass, tangent);
            if (next == at) {
                interpolate(mass);
                break;
            }
            at = next;
        }
        rise = at;
    }

    /** Flows at a rise; what comes back is the slope of their sum, kg/(s Pa). */
    private double at(double pressure) {
        sum = 0.0;
        gross = Double.MIN_NORMAL;
        double tangent = 0.0;
        for (int i = 0; i < fans.length; i++) {
            double q = fans[i].flow(pressure);
            put(i, density * q);
            tangent += density / fans[i].slope(q);
        }
        tangent -= orifice(fans.length, flaps.area() * flaps.discharge(), Math.max(0.0, -pressure - flaps.cracking()));
        tangent -= orifice(fans.length + 1, gap, -pressure);
        slope = 1.0 / tangent;
        return tangent;
    }

    private double orifice(int element, double area, double drop) {
        double mass = area * Math.sqrt(2.0 * density * Math.abs(drop));
        put(element, Math.copySign(mass, drop));
        return drop == 0.0 ? 0.0 : 0.5 * mass / Math.abs(drop);
    }

    private void put(int element, double mass) {
        flow[element] = mass;
        sum += mass;
        gross += Math.abs(mass);
    }

    /** The bracket is two neighbouring numbers: what flows between its ends belongs to the element that changes there. */
    private void interpolate(double mass) {
        at(root.high());
        double atHigh = sum;
        System.arraycopy(flow, 0, above, 0, flow.length);
        at(root.low());
        double part = sum > atHigh ? (mass - atHigh) / (sum - atHigh) : 0.0;
        for (int i = 0; i < flow.length; i++) {
            flow[i] = above[i] + part * (flow[i] - above[i]);
        }
    }
}
