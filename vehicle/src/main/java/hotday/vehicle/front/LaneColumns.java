package hotday.vehicle.front;

import hotday.vehicle.front.LikeTiles.Kind;
import java.util.Arrays;
import java.util.List;

/** Where everything stands in a row of the table: front as a whole, flows of the lanes, conductances core by core, one column of zero. */
final class LaneColumns {
    private final int lanes;
    private final int cores;
    private final int[] conductance; // lane x cores + core
    private final int[] firstOfCore;
    private final int[] laneOfColumn;

    LaneColumns(int lanes, int cores, int[] laneOfKind, List<Kind> kinds) {
        this.lanes = lanes;
        this.cores = cores;
        this.conductance = new int[lanes * cores];
        this.firstOfCore = new int[cores + 1];
        Arrays.fill(conductance, -1);
        int next = Lanes.FIRST_FLOW + lanes;
        for (int core = 0; core < cores; core++) {
            firstOfCore[core] = next;
            for (int kind = 0; kind < laneOfKind.length; kind++) {
                int place = laneOfKind[kind] * cores + core;
                if (kinds.get(kind).covers(core) && conductance[place] < 0) {
                    conductance[place] = next++;
                }
            }
        }
        firstOfCore[cores] = next;
        this.laneOfColumn = new int[next + 1];
        for (int i = 0; i < conductance.length; i++) {
            conductance[i] = conductance[i] < 0 ? next : conductance[i];
            laneOfColumn[conductance[i]] = i / cores;
        }
    }

    int lanes() {
        return lanes;
    }

    int cores() {
        return cores;
    }

    int flow(int lane) {
        return Lanes.FIRST_FLOW + lane;
    }

    int conductance(int lane, int core) {
        return conductance[lane * cores + core];
    }

    /** First conductance of a core; of the core after the last one: the column of zero. */
    int first(int core) {
        return firstOfCore[core];
    }

    /** Lane of a conductance's column. */
    int lane(int column) {
        return laneOfColumn[column];
    }

    int size() {
        return firstOfCore[cores] + 1;
    }
}
