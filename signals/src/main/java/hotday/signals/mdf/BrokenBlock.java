package hotday.signals.mdf;

/** A block that does not hold what it must; caught inside this package and told as a finding. */
final class BrokenBlock extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String key;
    private final long position;

    /**
     * @param key of the finding
     * @param position byte in the file
     */
    BrokenBlock(String key, long position, String message) {
        super(message);
        this.key = key;
        this.position = position;
    }

    String key() {
        return key;
    }

    long position() {
        return position;
    }
}
