package hotday.physics.exchanger;

import java.util.Arrays;
import java.util.List;

/**
 * Cores behind one another on one face. Air passes them from the front to the rear; a tile with negative air flow blows
 * backward: its air enters at the rear and passes the cores in reverse order. Air of different tiles does not mix. Without such tiles one
 * sweep through the cores is exact; with them sweeps are repeated until no temperature moves any more, because each core
 * then needs what a core behind it leaves. Not for several threads.
 */
public final class Stack {
    /** K. */
    private static final double SETTLED = 1e-10;

    private static final int MOST_SWEEPS = 200;

    private final List<TiledCore> cores;
    private final int tiles;
    private final double[] air;
    /** Between the cores: plane 0 in front of all, plane n behind all; plane x tiles + tile. */
    private final double[] planes;

    private int sweeps;

    /** @param cores from the front to the rear, all on {@code face} */
    public Stack(FaceGrid face, List<? extends TiledCore> cores) {
        this.cores = List.copyOf(cores);
        tiles = face.tiles();
        air = new double[tiles];
        planes = new double[(cores.size() + 1) * tiles];
    }

    /**
     * Lets air through. The flows inside the cores have been set before.
     *
     * @param airRate capacity rate per tile, W/K, negative where it blows backward
     * @param front temperature of the air in front, per tile, K
     * @param rear temperature of the air behind, K; enters where it blows backward
     * @return false when temperatures still moved by more than 1e-10 K after 200 sweeps
     */
    public boolean pass(double[] airRate, double[] front, double rear) {
        boolean reversed = start(airRate, front, rear);
        double change;
        sweeps = 0;
        do {
            change = sweep(airRate);
            sweeps++;
        } while (reversed && change > SETTLED && sweeps < MOST_SWEEPS);
        return !reversed || change <= SETTLED;
    }

    private boolean start(double[] airRate, double[] front, double rear) {
        boolean reversed = false;
        Arrays.fill(planes, rear);
        for (int t = 0; t < tiles; t++) {
            if (airRate[t] >= 0) {
                planes[t] = front[t];
            } else {
                reversed = true;
            }
        }
        return reversed;
    }

    /** Through all cores once; the largest change of a temperature, K. */
    private double sweep(double[] airRate) {
        double change = 0;
        for (int core = 0; core < cores.size(); core++) {
            int before = core * tiles;
            int behind = before + tiles;
            for (int t = 0; t < tiles; t++) {
                air[t] = planes[(airRate[t] >= 0 ? before : behind) + t];
            }
            cores.get(core).march(airRate, air);
            for (int t = 0; t < tiles; t++) {
                int leaving = (airRate[t] >= 0 ? behind : before) + t;
                change = Math.max(change, Math.abs(air[t] - planes[leaving]));
                planes[leaving] = air[t];
            }
        }
        return change;
    }

    /**
     * Air between two cores after the last pass, K.
     *
     * @param plane 0 in front of all cores, 1 behind the first, .. their number behind all
     */
    public double air(int plane, int tile) {
        return planes[plane * tiles + tile];
    }

    /** Sweeps of the last pass; 1 unless a tile blew backward. */
    public int sweeps() {
        return sweeps;
    }
}
