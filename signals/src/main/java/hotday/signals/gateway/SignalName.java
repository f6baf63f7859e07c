package hotday.signals.gateway;

import java.util.Optional;

/** A signal as a sheet names it: {@code network.message.signal}. */
record SignalName(String network, String message, String signal) {
    static final String FORM = "network.message.signal";

    static Optional<SignalName> of(String typed) {
        String[] parts = typed.strip().split("\\.", -1);
        boolean whole = parts.length == 3 && !parts[0].isBlank() && !parts[1].isBlank() && !parts[2].isBlank();
        return whole ? Optional.of(new SignalName(parts[0], parts[1], parts[2])) : Optional.empty();
    }

    @Override
    public String toString() {
        return network + "." + message + "." + signal;
    }
}
