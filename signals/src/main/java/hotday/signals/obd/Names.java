package hotday.signals.obd;

/** How senders are called in signals and findings: {@code 7E8}, from the second network on {@code can1:7E8}. */
final class Names {
    private Names() {}

    static String of(int bus, int id) {
        return (bus == 0 ? "" : "can" + bus + ":") + String.format("%X", id);
    }
}
