package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.core.unit.Units;
import hotday.physics.component.Conductor;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.Wiring;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The wiring block: cables, fuse and drive of the fan, to be checked; it may be left out. */
final class WiringSection {
    private static final Pattern GAUGE = Pattern.compile("(?i)\\s*(?:([1-9]|1[0-9]|20)|([1-4])/0)\\s*(AWG|SAE)\\s*");
    private static final String[] CABLE = {"size", "length", "conductor"};
    private static final double START_OF_A_RELAY = 4.0;
    private static final double WARM_CABLE = 333.15; // K
    /** m2 where a fault is booked already. */
    private static final double STAND_IN = 1e-6;

    private static final double LEAST_ROOM = 5.0; // K

    private final Section s;
    private Optional<Path> path = Optional.empty();

    WiringSection(TypedMap root, List<Assumption> assumptions) {
        this.s = Section.optional(
                root,
                "wiring",
                assumptions,
                "feed",
                "return",
                "ground",
                "ground_resistance",
                "surroundings",
                "insulation",
                "bundled",
                "fuse",
                "drive");
    }

    /**
     * What the fan's current goes through.
     *
     * @param back cable on the way back; empty where the body leads back from the fan on
     * @param ground resistance of joints and body, ohm
     */
    private record Path(Wiring.Run feed, Optional<Wiring.Run> back, double ground) {}

    /** Ohm of the loop with warm copper; empty where no cable is typed here. */
    Optional<Double> resistance() {
        path = s.inner("feed", CABLE).map(feed -> path(run(feed)));
        return path.map(p -> p.feed().resistance(WARM_CABLE)
                + p.back().map(b -> b.resistance(WARM_CABLE)).orElse(0.0)
                + p.ground());
    }

    private Path path(Wiring.Run feed) {
        boolean body = body();
        Optional<Wiring.Run> back = s.inner("return", CABLE).map(this::run);
        if (!body && back.isEmpty() && !s.has("return")) {
            s.assume("return", "{size: " + feed.size() + ", length: " + feed.length() + " m}", "as the feed");
            back = Optional.of(feed);
        }
        return new Path(feed, back, body ? ground() : 0.0);
    }

    private boolean body() {
        boolean body = "chassis".equals(s.word("ground", "cable", "a cable of its own leads back", "cable", "chassis"));
        if (!body && s.has("ground_resistance")) {
            s.fault("ground_resistance", "'wiring.ground_resistance' belongs to 'ground: chassis'; take it out");
        }
        return body;
    }

    private double ground() {
        return s.value(
                "ground_resistance",
                Quantity.RESISTANCE,
                "0 mohm",
                "200 mohm",
                "2 mohm",
                "bolted joints and sheet metal, clean; from memory");
    }

    /**
     * The whole block; empty when it is left out.
     *
     * @param loop length, m, and cross-section, m2, of {@code electrical.fan_cable}
     */
    Optional<Wiring> wiring(VehicleSpec.Electrical electrical, VehicleSpec.Fan fan, double[] loop) {
        if (!s.present()) {
            return Optional.empty();
        }
        Path way = path.orElseGet(() -> ofLoop(loop));
        double surroundings = s.value(
                "surroundings",
                Quantity.TEMPERATURE,
                "20 degC",
                "150 degC",
                "80 degC",
                "air along a cable in the engine bay; common practice, no source");
        double insulation = s.value(
                "insulation",
                Quantity.TEMPERATURE,
                "60 degC",
                "260 degC",
                "125 degC",
                "cross-linked, class C of ISO 6722; from memory");
        if (insulation - surroundings < LEAST_ROOM) {
            s.fault(
                    s.has("insulation") ? "insulation" : "surroundings",
                    "'wiring.insulation' must lie 5 K or more above 'wiring.surroundings', else the cable can carry nothing");
        }
        int bundled = s.integer("bundled", 1, 40, 1, "the cable lies by itself");
        return Optional.of(new Wiring(
                way.feed(),
                way.back(),
                way.ground(),
                surroundings,
                insulation,
                bundled,
                fuse(),
                drive(electrical, fan)));
    }

    /** The cable of the electrical block: both ways in one length. */
    private Path ofLoop(double[] loop) {
        if (body() || s.has("return")) {
            s.fault(
                    s.has("return") ? "return" : "ground",
                    "needs 'wiring.feed' with its length one way: 'electrical.fan_cable' counts both ways together");
        }
        double area = loop[1] > 0.0 ? loop[1] : STAND_IN;
        String size = Units.unit(Quantity.AREA, "mm2").text(area);
        double length = loop[0] > 0.0 ? 0.5 * loop[0] : 1.0;
        Wiring.Run half = new Wiring.Run(Wiring.Series.IEC, size, Conductor.iec(area), length);
        return new Path(half, Optional.of(half), 0.0);
    }

    private Wiring.Run run(Section cable) {
        double typed = cable.required("length", Quantity.LENGTH, "0.05 m", "40 m");
        double length = typed > 0.0 ? typed : 1.0;
        String size = cable.requiredText("size");
        if (cable.measures("size", Quantity.AREA)) {
            double area = cable.required("size", Quantity.AREA, "0.3 mm2", "300 mm2");
            boolean iso = "iso".equals(cable.word("conductor", "iec", "the higher resistance", "iec", "iso"));
            double safe = area > 0.0 ? area : STAND_IN;
            return iso
                    ? new Wiring.Run(Wiring.Series.ISO, size, Conductor.iso(safe), length)
                    : new Wiring.Run(Wiring.Series.IEC, size, Conductor.iec(safe), length);
        }
        return gauge(cable, size, length);
    }

    private static Wiring.Run gauge(Section cable, String size, double length) {
        Matcher m = GAUGE.matcher(size);
        if (!m.matches()) {
            if (!size.isBlank()) {
                cable.fault(
                        "size",
                        "'" + size
                                + "' is no cable size; type a cross-section such as '10 mm2', or a gauge with its list: '8 AWG', '1/0 AWG', '8 SAE'");
            }
            return new Wiring.Run(Wiring.Series.IEC, size, Conductor.iec(STAND_IN), length);
        }
        if (cable.has("conductor")) {
            cable.fault("conductor", "belongs to cross-sections in mm2; a gauge names its list itself");
        }
        int gauge = m.group(1) == null ? 1 - Integer.parseInt(m.group(2)) : Integer.parseInt(m.group(1));
        return "SAE".equalsIgnoreCase(m.group(3))
                ? new Wiring.Run(Wiring.Series.SAE, size, Conductor.sae(gauge), length)
                : new Wiring.Run(Wiring.Series.AWG, size, Conductor.awg(gauge), length);
    }

    private Wiring.Fuse fuse() {
        Optional<Section> typed = s.inner("fuse", "rating", "temperature", "distance");
        if (typed.isEmpty()) {
            missing("fuse", "{rating: 60 A}");
            return new Wiring.Fuse(Double.NaN, Double.NaN, Double.NaN);
        }
        Section fuse = typed.get();
        return new Wiring.Fuse(
                fuse.required("rating", Quantity.CURRENT, "1 A", "1000 A"),
                fuse.value(
                        "temperature",
                        Quantity.TEMPERATURE,
                        "-20 degC",
                        "150 degC",
                        "80 degC",
                        "in the engine bay; common practice, no source"),
                fuse.value(
                        "distance",
                        Quantity.LENGTH,
                        "0 m",
                        "20 m",
                        "150 mm",
                        "of cable between source and fuse; common practice, no source"));
    }

    private Wiring.Drive drive(VehicleSpec.Electrical electrical, VehicleSpec.Fan fan) {
        Optional<Section> typed = s.inner("drive", "kind", "rating", "start_current", "start_time", "highest_voltage");
        if (typed.isEmpty()) {
            missing("drive", "{kind: driver, rating: 80 A}");
            return new Wiring.Drive(Wiring.DriveKind.DRIVER, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        }
        Section drive = typed.get();
        boolean relay = "relay".equals(drive.requiredWord("kind", "driver", "relay"));
        double rating = drive.required("rating", Quantity.CURRENT, "1 A", "1500 A");
        double nominal = fan.shaftPower() / fan.motorEfficiency() / electrical.regulated();
        double start = drive.derived(
                "start_current",
                Quantity.CURRENT,
                "1 A",
                "3000 A",
                relay ? START_OF_A_RELAY * nominal : electrical.fanCurrentLimit(),
                relay
                        ? "a motor at rest takes 4 times its running current; common practice, no source"
                        : "'electrical.fan_current_limit'");
        double time = drive.value(
                "start_time",
                Quantity.TIME,
                "1 ms",
                "60 s",
                "0.5 s",
                "until it has come to speed; common practice, no source");
        double volts = drive.value(
                "highest_voltage", Quantity.VOLTAGE, "12 V", "60 V", "18 V", "usual for 12 V parts; from memory");
        return new Wiring.Drive(relay ? Wiring.DriveKind.RELAY : Wiring.DriveKind.DRIVER, rating, start, time, volts);
    }

    private void missing(String key, String example) {
        if (!s.has(key)) {
            s.fault(key, "'wiring." + key + "' is missing: the check needs it, such as '" + key + ": " + example + "'");
        }
    }
}
