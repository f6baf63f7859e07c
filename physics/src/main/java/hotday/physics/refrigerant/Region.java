package hotday.physics.refrigerant;

import java.util.Locale;

/** Where a state lies. */
public enum Region {
    /** Liquid below the critical pressure. */
    SUBCOOLED,
    TWO_PHASE,
    /** Vapour below the critical pressure, at any temperature. */
    SUPERHEATED,
    /** Above the critical pressure, below the critical temperature. */
    COMPRESSED_LIQUID,
    /** Above both. */
    SUPERCRITICAL;

    /** As written to files: {@code two_phase}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
