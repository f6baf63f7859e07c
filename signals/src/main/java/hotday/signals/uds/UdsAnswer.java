package hotday.signals.uds;

import java.util.List;

/** What a control unit answered. Bytes are told in hexadecimal, capital letters, without blanks. */
public sealed interface UdsAnswer {
    /** The service that was asked for (not the byte that answers it). */
    int service();

    /** The data of one identifier (service 22). */
    record Data(int identifier, String bytes) implements UdsAnswer {
        @Override
        public int service() {
            return UdsReader.READ;
        }
    }

    /**
     * The data of several identifiers whose lengths nobody knows and that can be cut apart in more ways than one.
     *
     * @param bytes of the whole answer, identifiers among them
     */
    record Several(List<Integer> identifiers, String bytes) implements UdsAnswer {
        public Several {
            identifiers = List.copyOf(identifiers);
        }

        @Override
        public int service() {
            return UdsReader.READ;
        }
    }

    /**
     * An actuator or input taken over, or given back (service 2F).
     *
     * @param option 0 given back, 1 reset, 2 frozen, 3 adjusted for a while; others are the maker's
     * @param bytes its state now, may be empty
     */
    record Control(int identifier, int option, String bytes) implements UdsAnswer {
        @Override
        public int service() {
            return UdsReader.CONTROL;
        }

        /** The option in words. */
        public String words() {
            return switch (option) {
                case 0 -> "given back";
                case 1 -> "reset";
                case 2 -> "frozen";
                case 3 -> "adjusted";
                default -> String.format("option %02X", option);
            };
        }
    }

    /**
     * Not done.
     *
     * @param code the reason, see {@link Refusals}
     */
    record Refused(int service, int code) implements UdsAnswer {
        /** Whether it is no refusal but a request for patience. */
        public boolean isPending() {
            return code == Refusals.PENDING;
        }

        /** The reason in words. */
        public String words() {
            return Refusals.words(code);
        }
    }

    /** Another service was done. */
    record Done(int service, String bytes) implements UdsAnswer {}
}
