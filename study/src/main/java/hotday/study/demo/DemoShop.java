package hotday.study.demo;

import hotday.signals.dbc.DbcFile;
import hotday.study.workspace.AtomicFile;
import hotday.vehicle.sheet.BuildSheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * An invented shop with a shelf of parts, two invented builds and the two networks of one with a recording, written as plain files. Everything random in it comes from one seed.
 */
public final class DemoShop {
    /** Builds of the shop, by folder name. */
    public static final List<String> BUILDS = List.of("heron", "oxbow");

    /** Part files of the shop, in its folder {@code shelf}. */
    static final List<String> SHELF =
            List.of("engines.yaml", "gearboxes.yaml", "cores.yaml", "fans.yaml", "compressors.yaml", "electrical.yaml");

    private static final List<String> FILES = List.of(
            "shop.yaml",
            "channels.yaml",
            "builds/heron/build.yaml",
            "builds/oxbow/build.yaml",
            "network/engine-side.dbc",
            "network/body-side.dbc",
            "network/heron.yaml");

    private static final String DRIVE = "network/heron-drive.log";
    private static final long DRIVE_SEED = 7;

    private final Path folder;

    private DemoShop(Path folder) {
        this.folder = folder;
    }

    /** Writes the shop into a folder; files of the same names are replaced, others stay. */
    public static DemoShop create(Path folder) {
        FILES.forEach(file -> write(folder, file));
        SHELF.forEach(file -> write(folder, "shelf/" + file));
        writeDrive(folder.resolve(DRIVE));
        return new DemoShop(folder);
    }

    private static void write(Path folder, String file) {
        byte[] content = resource(file);
        AtomicFile.write(folder.resolve(file), out -> out.write(content));
    }

    private static void writeDrive(Path file) {
        NetworkDrive drive = new NetworkDrive(description("engine-side"), description("body-side"), DRIVE_SEED);
        byte[] content = drive.record().getBytes(StandardCharsets.US_ASCII);
        AtomicFile.write(file, out -> out.write(content));
    }

    private static DbcFile description(String name) {
        String file = "network/" + name + ".dbc";
        return DbcFile.parse(file, resource(file));
    }

    private static byte[] resource(String name) {
        try (InputStream in = DemoShop.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its own file " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Path folder() {
        return folder;
    }

    public Path channels() {
        return channels(folder);
    }

    static Path channels(Path folder) {
        return folder.resolve("channels.yaml");
    }

    /** The channel map of the shop's logger alone. */
    static void writeChannels(Path folder) {
        write(folder, "channels.yaml");
    }

    public Path build(String name) {
        return folder.resolve("builds").resolve(name).resolve("build.yaml");
    }

    /** The translation sheet of the build that has two networks. */
    public Path network() {
        return folder.resolve("network").resolve("heron.yaml");
    }

    /** A recording of its two networks. */
    public Path networkDrive() {
        return folder.resolve(DRIVE);
    }

    public Path signOff(String name) {
        return folder.resolve("builds").resolve(name).resolve("signoff.pdf");
    }

    public Path plots(String name) {
        return folder.resolve("builds").resolve(name).resolve("plots");
    }

    /** Lets the virtual car of a build drive a mild day and leaves its recordings in the shop. */
    public VirtualCar drive(String name, long seed) {
        return VirtualCar.of(name, BuildSheet.read(build(name)).vehicle(), folder, seed);
    }
}
