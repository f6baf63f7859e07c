package hotday.vehicle.spec;

import hotday.physics.component.Cable;
import hotday.physics.component.Conductor;
import java.util.Optional;

/**
 * How the fan is wired. SI.
 *
 * @param feed from the battery's side to the fan
 * @param back cable of its own on the way back, or to the body where that leads back
 * @param groundResistance of joints and body where they lead back, ohm; else 0
 * @param surroundings air along the cable on the hottest day, K
 * @param insulation temperature it stands, K, above {@code surroundings}
 * @param bundled loaded cables that lie together, 1 for a cable by itself
 */
public record Wiring(
        Run feed,
        Optional<Run> back,
        double groundResistance,
        double surroundings,
        double insulation,
        int bundled,
        Fuse fuse,
        Drive drive) {

    /** Which list a size belongs to. */
    public enum Series {
        /** mm2, IEC 60228. */
        IEC,
        /** mm2, ISO 6722. */
        ISO,
        AWG,
        SAE
    }

    /**
     * A cable of a length.
     *
     * @param size as typed
     * @param length one way, m
     */
    public record Run(Series series, String size, Conductor conductor, double length) {
        /** Ohm at a temperature of its copper, K. */
        public double resistance(double temperature) {
            return new Cable(conductor.resistancePerMetre(), length).resistance(temperature);
        }
    }

    /**
     * @param rating A
     * @param temperature of the air at the fuse, K
     * @param distance of cable between the source and the fuse, m
     */
    public record Fuse(double rating, double temperature, double distance) {}

    /** What switches the fan. */
    public enum DriveKind {
        RELAY,
        /** Solid state, takes a duty. */
        DRIVER
    }

    /**
     * @param rating continuous current, A
     * @param startCurrent drawn at the start, A
     * @param startTime how long, s
     * @param highestVoltage it stands, V
     */
    public record Drive(DriveKind kind, double rating, double startCurrent, double startTime, double highestVoltage) {}
}
