package hotday.signals.framelog;

/** How the digits of a column are a number. */
public enum NumberBase {
    HEX(16),
    DECIMAL(10);

    private final int radix;

    NumberBase(int radix) {
        this.radix = radix;
    }

    int radix() {
        return radix;
    }
}
