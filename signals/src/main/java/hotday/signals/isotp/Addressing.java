package hotday.signals.isotp;

/** Where a frame says whom it is for. */
public enum Addressing {
    /** In the identifier alone. */
    NORMAL(0),
    /** In the first byte of the payload too; the transport begins behind it. */
    EXTENDED(1);

    final int bytes;

    Addressing(int bytes) {
        this.bytes = bytes;
    }
}
