package hotday.vehicle.airpath;

import hotday.physics.component.FanCurve;
import java.util.List;

/**
 * A vehicle front as built: what stands in the way of the air, on a grid of tiles. SI.
 *
 * <pre>
 *   openings   cores in depth order        shroud    fan
 *      |       condenser   radiator      .--------.
 *   -->|   ||     ||          ||   plenum          )==> underhood --> exit
 *   -->|   ||     ||          ||         '--flap--'
 *   --> blanked                ||  ------------------->   (tile outside the shroud)
 * </pre>
 *
 * @param grid tiles of the face
 * @param cores in depth order from the front
 * @param openings of the body; a tile whose middle lies in several belongs to the first
 * @param blanked pressure recovery and loss of tiles behind no opening
 * @param shroud what collects the air for the fans behind the cores
 * @param fans none, one or two electric ones, or one belt-driven one
 * @param flaps relief doors of the shroud
 * @param exit of the bay
 * @param basePressure coefficient at the exit, -2..1
 * @param draughtHeight between inlet and exit for warm air, m, 0 or more
 * @param sealing against air that comes back
 */
public record Face(
        Grid grid,
        List<Core> cores,
        List<Opening> openings,
        Inlet blanked,
        Shroud shroud,
        List<Fan> fans,
        Flaps flaps,
        Exit exit,
        double basePressure,
        double draughtHeight,
        Sealing sealing) {
    private static final double EDGE = 1e-9; // m, rounding of a sum of lengths

    public Face {
        cores = List.copyOf(cores);
        openings = List.copyOf(openings);
        fans = List.copyOf(fans);
        within("base pressure coefficient", basePressure, -2.0, 1.0, "");
        within("draught height", draughtHeight, 0.0, 100.0, " m");
        cores.forEach(core -> insideFace(grid, "core " + core.name(), core.place()));
        insideFace(grid, "shroud", shroud.place());
        checkDepths(cores);
        checkFans(grid, shroud.place(), fans);
    }

    /**
     * A core: face-velocity resistance a v + b v|v|, Pa, at 1.2 kg/m3 and 293.15 K.
     *
     * @param depth position, 0 in front; cores at one depth stand beside each other
     * @param linear a, Pa s/m, 0 or more
     * @param square b, Pa s2/m2, 0 or more
     */
    public record Core(String name, int depth, Rectangle place, double linear, double square) {
        public Core {
            within(name + " linear resistance", linear, 0.0, 1e6, " Pa s/m");
            within(name + " square resistance", square, 0.0, 1e6, " Pa s2/m2");
        }
    }

    /**
     * What the air meets before the first core.
     *
     * @param recovery share of 0.5 rho V^2 that reaches the tile, -2..1
     * @param loss coefficient of grille or leak on the face velocity, above 0
     */
    public record Inlet(double recovery, double loss) {
        public Inlet {
            within("pressure recovery", recovery, -2.0, 1.0, "");
            within("inlet loss", loss, 1e-6, 1e9, "");
        }
    }

    /** An opening of the body and what it does to the tiles behind it. */
    public record Opening(Rectangle place, Inlet inlet) {}

    /**
     * Shroud between the last core and the fans.
     *
     * @param place tiles outside it discharge straight underhood
     * @param gap effective area (discharge coefficient x area) of missing strips and gaps between plenum and underhood, m2, 0 or more;
     *     air passes both ways
     */
    public record Shroud(Rectangle place, double gap) {
        public Shroud {
            within("shroud gap", gap, 0.0, 10.0, " m2");
        }
    }

    /** Where a fan turns, m from the left and the top of the face. */
    public record Disc(double x, double y, double diameter) {
        public Disc {
            within("fan diameter", diameter, 1e-3, 10.0, " m");
        }

        boolean holds(double left, double top) {
            return Math.hypot(left - x, top - y) <= 0.5 * diameter;
        }
    }

    /** A fan of either kind; its speed is a share of that of the curve. */
    public sealed interface Fan {
        FanCurve curve();

        Disc disc();

        /** True in front of the cores, false behind the shroud. */
        boolean pushes();
    }

    /** A fan with its own motor, puller or pusher. */
    public record ElectricFan(FanCurve curve, Disc disc, boolean pushes) implements Fan {}

    /** A puller on the belt behind a viscous clutch. */
    public record BeltFan(FanCurve curve, Disc disc, ViscousClutch clutch) implements Fan {
        @Override
        public boolean pushes() {
            return false;
        }
    }

    /**
     * Speed = engine speed x pulley ratio x (1 - slip); the slip follows the air behind the radiator, linear between two
     * temperatures.
     *
     * @param ratio fan pulley over crank, above 0
     * @param curveSpeed at which the fan curve holds, rad/s
     * @param engages air temperature at which the slip begins to fall, K
     * @param engaged air temperature of the least slip, K
     * @param freeSlip 0..1
     * @param engagedSlip 0..freeSlip
     */
    public record ViscousClutch(
            double ratio, double curveSpeed, double engages, double engaged, double freeSlip, double engagedSlip) {
        public ViscousClutch {
            within("pulley ratio", ratio, 1e-3, 10.0, "");
            within("speed of the fan curve", curveSpeed, 1.0, 2000.0, " rad/s");
            within("clutch engages", engages, 200.0, 500.0, " K");
            within("clutch engaged", engaged, engages + 0.1, 600.0, " K");
            within("free slip", freeSlip, 0.0, 1.0, "");
            within("slip engaged", engagedSlip, 0.0, freeSlip, "");
        }

        /** Fan speed over that of the curve, 0 or more, from engine speed in rad/s and air temperature in K. */
        public double speedRatio(double engineSpeed, double airTemperature) {
            double way = Math.min(1.0, Math.max(0.0, (airTemperature - engages) / (engaged - engages)));
            double slip = freeSlip + way * (engagedSlip - freeSlip);
            return Math.max(0.0, engineSpeed) * ratio * (1.0 - slip) / curveSpeed;
        }
    }

    /**
     * One-way doors from plenum to underhood.
     *
     * @param area m2; 0 means none
     * @param discharge coefficient, 0..1
     * @param cracking pressure difference that opens them, Pa, 0 or more
     */
    public record Flaps(double area, double discharge, double cracking) {
        public static final Flaps NONE = new Flaps(0.0, 0.0, 0.0);

        public Flaps {
            within("flap area", area, 0.0, 10.0, " m2");
            within("flap discharge coefficient", discharge, 0.0, 1.0, "");
            within("cracking pressure", cracking, 0.0, 1e5, " Pa");
        }
    }

    /**
     * @param area m2
     * @param loss coefficient on the speed in that area
     */
    public record Exit(double area, double loss) {
        public Exit {
            within("exit area", area, 1e-6, 100.0, " m2");
            within("exit loss", loss, 1e-6, 1e6, "");
        }
    }

    private static void within(String name, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    name + " " + value + unit + " must be from " + least + " to " + most + unit);
        }
    }

    private static void insideFace(Grid grid, String name, Rectangle r) {
        inside(name, "left", r.left(), 0.0, grid.width());
        inside(name, "right", r.right(), 0.0, grid.width());
        inside(name, "top", r.top(), 0.0, grid.height());
        inside(name, "bottom", r.bottom(), 0.0, grid.height());
    }

    private static void inside(String name, String edge, double at, double least, double most) {
        if (!(at >= least - EDGE && at <= most + EDGE)) {
            throw new IllegalArgumentException(name + ": its " + edge + " edge at " + at + " m lies outside the face, "
                    + least + ".." + most + " m");
        }
    }

    private static void checkDepths(List<Core> cores) {
        for (int i = 1; i < cores.size(); i++) {
            if (cores.get(i).depth() < cores.get(i - 1).depth()) {
                throw new IllegalArgumentException("core " + cores.get(i).name() + " at depth "
                        + cores.get(i).depth() + " must not come after depth "
                        + cores.get(i - 1).depth());
            }
            for (int j = 0; j < i; j++) {
                if (cores.get(j).depth() == cores.get(i).depth()) {
                    apart(cores.get(j), cores.get(i));
                }
            }
        }
    }

    private static void apart(Core a, Core b) {
        double wide = Math.min(a.place().right(), b.place().right())
                - Math.max(a.place().left(), b.place().left());
        double high = Math.min(a.place().bottom(), b.place().bottom())
                - Math.max(a.place().top(), b.place().top());
        if (wide > EDGE && high > EDGE) {
            throw new IllegalArgumentException("cores " + a.name() + " and " + b.name() + " at depth " + a.depth()
                    + " overlap by " + wide + " m in width and " + high + " m in height");
        }
    }

    private static void checkFans(Grid grid, Rectangle shroud, List<Fan> fans) {
        boolean belt = fans.stream().anyMatch(BeltFan.class::isInstance);
        if (fans.size() > (belt ? 1 : 2)) {
            throw new IllegalArgumentException(
                    fans.size() + " fans given, at most " + (belt ? "1 with a belt fan" : "2 electric ones"));
        }
        Rectangle face = new Rectangle(0.0, 0.0, grid.width(), grid.height());
        checkSize(fans.stream().filter(f -> !f.pushes()).toList(), shroud, "shroud");
        checkSize(fans.stream().filter(Fan::pushes).toList(), face, "face");
    }

    private static void checkSize(List<Fan> fans, Rectangle place, String name) {
        double side = Math.min(place.width(), place.height());
        for (Fan fan : fans) {
            if (!(fan.disc().diameter() <= side + EDGE)) {
                throw new IllegalArgumentException("fan of " + fan.disc().diameter()
                        + " m is larger than the smaller side of the " + name + ", " + side + " m");
            }
        }
        double sum = fans.stream().mapToDouble(f -> f.disc().diameter()).sum();
        if (!(sum <= place.width() + EDGE)) {
            throw new IllegalArgumentException(
                    "fans side by side need " + sum + " m, the " + name + " is " + place.width() + " m wide");
        }
    }
}
