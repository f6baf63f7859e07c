package hotday.vehicle.front;

import hotday.vehicle.front.LikeTiles.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Which kinds of tiles make a lane: each its own, the small ones with the most alike of those that the radiator covers likewise. */
final class LaneMap {
    static final int MOST = 10;
    private static final double SMALLEST = 0.02; // of the face

    private static final int LACKING = 4;

    private LaneMap() {}

    /** Lane of each kind, 0 to number of lanes - 1, larger lanes first. */
    static int[] laneOfKind(LikeTiles tiles, int radiator) {
        List<Group> groups = new ArrayList<>();
        double face = 0.0;
        for (int kind = 0; kind < tiles.kinds().size(); kind++) {
            groups.add(new Group(kind, tiles.kinds().get(kind), tiles.area(kind)));
            face += tiles.area(kind);
        }
        while (join(groups, SMALLEST * face, radiator)) {}
        int[] lanes = new int[tiles.kinds().size()];
        for (int lane = 0; lane < groups.size(); lane++) {
            for (int kind : groups.get(lane).members) {
                lanes[kind] = lane;
            }
        }
        return lanes;
    }

    private static final class Group {
        final List<Integer> members = new ArrayList<>();
        final Kind kind; // of the largest member
        double area;

        Group(int index, Kind kind, double area) {
            this.members.add(index);
            this.kind = kind;
            this.area = area;
        }

        /** A core that the other lane lacks weighs most: it would be offered all the air there. */
        int unlike(Group other) {
            return LACKING * Long.bitCount(kind.cores() & ~other.kind.cores())
                    + Long.bitCount(other.kind.cores() & ~kind.cores())
                    + (kind.inlet().equals(other.kind.inlet()) ? 0 : 1)
                    + (kind.shrouded() == other.kind.shrouded() ? 0 : 1);
        }
    }

    /** Joins the smallest lane that must not stay to another; false when all may stay. */
    private static boolean join(List<Group> groups, double smallest, int radiator) {
        groups.sort(Comparator.comparingDouble((Group g) -> -g.area));
        boolean many = groups.size() > MOST;
        for (int i = groups.size() - 1; i > 0; i--) {
            Group small = groups.get(i);
            Group to = many || small.area < smallest ? nearest(groups, small, radiator) : null;
            if (to != null) {
                to.area += small.area;
                to.members.addAll(small.members);
                groups.remove(i);
                return true;
            }
        }
        return false;
    }

    private static Group nearest(List<Group> groups, Group small, int radiator) {
        return groups.stream()
                .filter(g -> g != small)
                .filter(g -> g.kind.covers(radiator) == small.kind.covers(radiator))
                .min(Comparator.comparingInt(small::unlike))
                .orElse(null);
    }
}
