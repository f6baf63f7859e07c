package hotday.signals.dbc;

import hotday.core.finding.Place;
import hotday.signals.frame.Frame;

/** What can be wrong with a message that was understood word for word. */
final class MessageChecks {
    private MessageChecks() {}

    /** Whether frames can have the identifier. */
    static boolean identifier(Draft draft, FindingList findings) {
        if (draft.head.id() == Message.NO_MESSAGE) {
            findings.note(
                    "signals-of-no-message",
                    draft.place,
                    draft.signals.size() + " signals belong to no message; kept, not used");
            return false;
        }
        int highest = draft.extended() ? Frame.HIGHEST_EXTENDED : Frame.HIGHEST_STANDARD;
        if (draft.id() >= 0 && draft.id() <= highest) {
            return true;
        }
        String bits = draft.extended() ? "29 bits" : "11 bits, and bit 31, which marks those of 29 bits, is not set";
        findings.fault(
                "identifier-impossible",
                draft.place,
                "message '" + draft.head.name() + "': identifier " + draft.head.id() + " has more than " + bits
                        + "; kept, not used");
        return false;
    }

    static void signals(Message message, FindingList findings) {
        Signal[] owner = new Signal[message.signals().isEmpty() ? 0 : 8 * Frame.LONGEST];
        for (Signal signal : message.signals()) {
            if (!signal.fits()) {
                length(signal, findings);
                continue;
            }
            if (signal.factor() == 0) {
                findings.warning("factor-zero", signal.place(), "signal '" + signal.name() + "' has the factor 0");
            }
            if (signal.lastByte() >= message.length()) {
                beyond(message, signal, findings);
            }
            if (signal.multiplexing().always()) {
                claim(owner, signal, findings);
            }
        }
    }

    private static void length(Signal signal, FindingList findings) {
        String needed = switch (signal.form()) {
            case SINGLE -> "a single needs 32";
            case DOUBLE -> "a double needs 64";
            default -> "must be 1 to " + Signal.MOST_BITS;
        };
        findings.fault(
                "signal-length",
                signal.place(),
                "signal '" + signal.name() + "' has " + signal.bits() + " bits, " + needed + "; not taken from frames");
    }

    private static void beyond(Message message, Signal signal, FindingList findings) {
        findings.warning(
                "signal-beyond-message",
                signal.place(),
                "signal '" + signal.name() + "' ends in byte " + (signal.lastByte() + 1) + ", message '"
                        + message.name() + "' has " + message.length() + "; there only in longer frames");
    }

    private static void claim(Signal[] owner, Signal signal, FindingList findings) {
        Signal other = null;
        for (int k = 0; k < signal.bits(); k++) {
            int bit = signal.bigEndian() ? sawtooth(signal.start(), k) : signal.start() + k;
            if (bit < owner.length) {
                other = other == null ? owner[bit] : other;
                owner[bit] = owner[bit] == null ? signal : owner[bit];
            }
        }
        if (other != null) {
            overlap(signal, other, findings);
        }
    }

    private static void overlap(Signal signal, Signal other, FindingList findings) {
        Place place = signal.place();
        findings.note(
                "signals-overlap", place, "signals '" + signal.name() + "' and '" + other.name() + "' share bits");
    }

    /** The bit k places below a start: down in its byte, then on at the top of the next byte. */
    private static int sawtooth(int start, int k) {
        int fromTop = 8 * (start / 8) + 7 - start % 8 + k;
        return 8 * (fromTop / 8) + 7 - fromTop % 8;
    }
}
