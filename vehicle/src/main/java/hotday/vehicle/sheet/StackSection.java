package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.physics.component.CatalogueCore;
import hotday.vehicle.airpath.Rectangle;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The stack block: where each core, the shroud, the fan and the openings sit on the face, measured from its lower left
 * corner as seen from the front. Left out, a usual arrangement is assumed and said.
 */
final class StackSection {
    private static final double REFERENCE_FACE_SPEED = 3.0;
    private static final double SLACK = 1e-3; // m, rounding of typed lengths
    private static final String SMALLEST = "20 mm";
    private static final String USUAL = "common practice, no source";

    private final TypedMap root;
    private final Section s;
    private double width;
    private double height;

    StackSection(TypedMap root, List<Assumption> assumptions) {
        this.root = root;
        this.s = Section.optional(
                root,
                "stack",
                assumptions,
                "width",
                "height",
                "gearbox_cooler",
                "condenser",
                "charge_air_cooler",
                "radiator",
                "upper_opening",
                "lower_opening",
                "shroud",
                "fans",
                "flap_area",
                "flap_cracking");
    }

    VehicleSpec.Stack stack(
            VehicleSpec.Radiator radiator, VehicleSpec.Fan fan, VehicleSpec.FrontEnd front, List<CoreKind> kinds) {
        if (Double.isNaN(radiator.width() + radiator.height())) {
            return standIn();
        }
        width = s.derived("width", Quantity.LENGTH, "100 mm", "2500 mm", radiator.width(), "that of the radiator");
        height = s.derived("height", Quantity.LENGTH, "100 mm", "2000 mm", radiator.height(), "that of the radiator");
        if (Double.isNaN(width + height + front.openingArea() + fan.diameter())) {
            return standIn();
        }
        List<PlacedCore> cores = new ArrayList<>();
        for (CoreKind kind : CoreKind.values()) {
            if (kind == CoreKind.RADIATOR) {
                radiator(radiator).ifPresent(cores::add);
            } else if (kinds.contains(kind)) {
                core(kind, radiator).ifPresent(cores::add);
            } else if (s.has(key(kind))) {
                s.fault(
                        key(kind),
                        "'stack." + key(kind) + "' places a core this sheet does not have: " + missing(kind));
            }
        }
        cores.sort(Comparator.comparingInt(PlacedCore::layer));
        beside(cores);
        List<Assumption> own = new ArrayList<>();
        Section behind = s.part("shroud", own, "left", "bottom", "width", "height", "gap");
        String whole = "covers the whole face, no gaps; " + USUAL;
        Rectangle shroud = covering(behind, "shroud", new Rectangle(0.0, 0.0, width, height), whole);
        double gap = behind.value("gap", Quantity.AREA, "0 m2", "0.5 m2", "0 m2", whole);
        s.settle(behind, own, whole);
        int fans = s.integer("fans", 1, 2, 1, "one fan");
        double diameter = fanDiameter(shroud, fans, fan);
        double flaps = s.value("flap_area", Quantity.AREA, "0 m2", "0.5 m2", "0 m2", "no relief flaps");
        double cracking = s.value(
                "flap_cracking", Quantity.PRESSURE_DIFFERENCE, "0 Pa", "500 Pa", "10 Pa", "rubber flap; from memory");
        return new VehicleSpec.Stack(
                width, height, cores, openings(front.openingArea()), shroud, gap, fans, diameter, flaps, cracking);
    }

    /** In place of a stack around a radiator with faults; such a sheet is refused. */
    private static VehicleSpec.Stack standIn() {
        Rectangle any = new Rectangle(0, 0, 1, 1);
        return new VehicleSpec.Stack(1, 1, List.of(), List.of(any), any, 0, 1, 0.5, 0, 0);
    }

    private static String key(CoreKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    private static String missing(CoreKind kind) {
        return switch (kind) {
            case GEARBOX_COOLER -> "say 'gearbox: {cooler: front}'";
            case CONDENSER -> "there is no 'air_conditioning'";
            case CHARGE_AIR_COOLER -> "say 'engine: {charging: turbo}'";
            case RADIATOR -> "";
        };
    }

    /** Share of the radiator's width and height, depth, fins and layer that are usual for a core. */
    private record Usual(double width, double height, String depth, String fins, int layer, double left, String why) {
        static Usual of(CoreKind kind) {
            return switch (kind) {
                case GEARBOX_COOLER -> new Usual(0.45, 0.35, "19 mm", "14 /in", 1, 0.0, "low on the left, in front");
                case CONDENSER -> new Usual(1.0, 0.85, "16 mm", "18 /in", 2, 0.5, "full width, bottom aligned");
                case CHARGE_AIR_COOLER -> new Usual(1.0, 0.45, "50 mm", "9 /in", 3, 0.5, "lower half");
                case RADIATOR -> throw new IllegalArgumentException("the radiator has its own block");
            };
        }
    }

    private Optional<PlacedCore> core(CoreKind kind, VehicleSpec.Radiator radiator) {
        Usual usual = Usual.of(kind);
        List<Assumption> own = new ArrayList<>();
        Section c = s.part(
                key(kind),
                own,
                "layer",
                "width",
                "height",
                "depth",
                "fins",
                "tube_rows",
                "tube_pitch",
                "left",
                "bottom");
        String why = usual.why() + "; " + USUAL;
        int layer = c.integer("layer", 1, 9, usual.layer(), "from the front; " + USUAL);
        double w = c.derived("width", Quantity.LENGTH, SMALLEST, "2500 mm", usual.width() * radiator.width(), why);
        double h = c.derived("height", Quantity.LENGTH, SMALLEST, "2000 mm", usual.height() * radiator.height(), why);
        double depth = c.value("depth", Quantity.LENGTH, "8 mm", "150 mm", usual.depth(), USUAL);
        double fins = c.value("fins", Quantity.PER_LENGTH, "5 /in", "30 /in", usual.fins(), USUAL);
        int rows = c.integer("tube_rows", 1, 4, 1, "single row");
        double pitch = c.value("tube_pitch", Quantity.LENGTH, "6 mm", "20 mm", "9 mm", "from memory");
        Optional<Rectangle> place = place(c, kind, w, h, usual.left());
        s.settle(c, own, why);
        if (place.isEmpty() || Double.isNaN(depth + fins + pitch)) {
            return Optional.empty();
        }
        CatalogueCore core = new CatalogueCore(w, h, depth, fins, rows, pitch);
        Fins.remark(c, core);
        double[] resistance = core.resistance();
        return Optional.of(new PlacedCore(
                kind,
                layer,
                place.get(),
                depth,
                core.airConductance(REFERENCE_FACE_SPEED),
                core.airExponent(),
                resistance[0],
                resistance[1]));
    }

    /** Behind everything else. */
    private Optional<PlacedCore> radiator(VehicleSpec.Radiator r) {
        List<Assumption> own = new ArrayList<>();
        Section c = s.part("radiator", own, "left", "bottom");
        Optional<Rectangle> found = place(c, CoreKind.RADIATOR, r.width(), r.height(), 0.5);
        s.settle(c, own, "in the middle of the face");
        return found.map(place -> new PlacedCore(
                CoreKind.RADIATOR,
                Integer.MAX_VALUE,
                place,
                r.depth(),
                r.airConductance(),
                r.airExponent(),
                r.resistanceLinear(),
                r.resistanceSquare()));
    }

    /** @param aside where it stands when nobody says: share of the free width on its left */
    private Optional<Rectangle> place(Section c, CoreKind kind, double w, double h, double aside) {
        double left = c.derived(
                "left",
                Quantity.LENGTH,
                "0 mm",
                "2500 mm",
                Math.max(0.0, aside * (width - w)),
                "from the left edge of the face");
        double bottom =
                c.value("bottom", Quantity.LENGTH, "0 mm", "2000 mm", "0 mm", "from the lower edge of the face");
        if (Double.isNaN(left + bottom + w + h + width + height)) {
            return Optional.empty();
        }
        boolean inside = fits(c, "left", kind.title(), left + w, width, "right of the left", "wide")
                & fits(c, "bottom", kind.title(), bottom + h, height, "above the lower", "high");
        return inside ? Optional.of(rectangle(left, bottom, w, h)) : Optional.empty();
    }

    private boolean fits(Section c, String key, String name, double end, double room, String where, String dimension) {
        if (end <= room + SLACK) {
            return true;
        }
        String message = String.format(
                Locale.ROOT,
                "the %s ends %.0f mm %s edge, but the face is %.0f mm %s: move it, or give 'stack: {width, height}' of a bigger face",
                name,
                1e3 * end,
                where,
                1e3 * room,
                dimension);
        c.faultNear(key, s, message);
        return false;
    }

    /** From the lower left corner, as typed, to the top left corner, as computed. */
    private Rectangle rectangle(double left, double bottom, double w, double h) {
        double right = Math.min(width, left + w);
        double top = Math.max(0.0, height - bottom - h);
        return new Rectangle(left, top, right - left, height - bottom - top);
    }

    /** Cores of one layer must stand beside each other. */
    private void beside(List<PlacedCore> cores) {
        for (int i = 0; i < cores.size(); i++) {
            for (int j = 0; j < i; j++) {
                PlacedCore a = cores.get(j);
                PlacedCore b = cores.get(i);
                double wide = Math.min(a.place().right(), b.place().right())
                        - Math.max(a.place().left(), b.place().left());
                double high = Math.min(a.place().bottom(), b.place().bottom())
                        - Math.max(a.place().top(), b.place().top());
                if (a.layer() == b.layer() && wide > SLACK && high > SLACK) {
                    s.fault(
                            key(placedHere(a, b)),
                            String.format(
                                    Locale.ROOT,
                                    "the %s and the %s both stand in layer %d and overlap by %.0f mm x %.0f mm: move one, or give it another layer",
                                    a.kind().title(),
                                    b.kind().title(),
                                    a.layer(),
                                    1e3 * wide,
                                    1e3 * high));
                }
            }
        }
    }

    /** Of two cores the one that was typed. */
    private CoreKind placedHere(PlacedCore a, PlacedCore b) {
        return s.has(key(b.kind())) ? b.kind() : a.kind();
    }

    /** A rectangle in typed form; what is left out comes from the usual one. */
    private Rectangle covering(Section c, String name, Rectangle usual, String why) {
        double w = c.derived("width", Quantity.LENGTH, SMALLEST, "2500 mm", usual.width(), why);
        double h = c.derived("height", Quantity.LENGTH, SMALLEST, "2000 mm", usual.height(), why);
        double left = c.derived("left", Quantity.LENGTH, "0 mm", "2500 mm", usual.left(), why);
        double bottom =
                c.derived("bottom", Quantity.LENGTH, "0 mm", "2000 mm", Math.max(0.0, height - usual.bottom()), why);
        if (Double.isNaN(w + h + left + bottom)) {
            return usual;
        }
        boolean inside = fits(c, "left", name, left + w, width, "right of the left", "wide")
                & fits(c, "bottom", name, bottom + h, height, "above the lower", "high");
        return inside ? rectangle(left, bottom, w, h) : usual;
    }

    private double fanDiameter(Rectangle shroud, int fans, VehicleSpec.Fan fan) {
        double room = Math.min(shroud.height(), shroud.width() / fans);
        boolean typed = root.map("fan").filter(m -> m.has("diameter")).isPresent();
        if (!typed) {
            return Math.min(fan.diameter(), 0.95 * room);
        }
        if (fan.diameter() > room + SLACK) {
            String message = String.format(
                    Locale.ROOT,
                    "%s of %.0f mm, but the shroud is %.0f mm x %.0f mm: %.0f mm is the most that goes in",
                    fans == 1 ? "a fan" : "two fans",
                    1e3 * fan.diameter(),
                    1e3 * shroud.width(),
                    1e3 * shroud.height(),
                    1e3 * room);
            root.map("fan").ifPresent(m -> m.fault("diameter", message));
            return room;
        }
        return Math.min(fan.diameter(), room);
    }

    /** Above and below a bumper bar that hides what the openings leave of the height. */
    private List<Rectangle> openings(double area) {
        double open = Math.min(1.0, area / (width * height));
        double half = 0.5 * open * height;
        String why = "front_end.opening_area in two strips over the full width; " + USUAL;
        List<Rectangle> all = new ArrayList<>();
        all.add(opening("upper_opening", new Rectangle(0.0, 0.0, width, half), why));
        all.add(opening("lower_opening", new Rectangle(0.0, height - half, width, half), why));
        return all;
    }

    private Rectangle opening(String key, Rectangle usual, String why) {
        List<Assumption> own = new ArrayList<>();
        Section c = s.part(key, own, "left", "bottom", "width", "height");
        Rectangle place = covering(c, key.replace('_', ' '), usual, why);
        s.settle(c, own, why);
        return place;
    }
}
