package hotday.signals.dbc;

import java.util.List;

/**
 * One statement of a DBC file as it was typed; together, in order, they are the file. Numbers keep their spelling, so
 * that writing them changes nothing. What statements mean together is in {@link Message} and {@link Signal}.
 */
public sealed interface Statement {

    /** A number with its spelling. */
    record Numeral(String text) {
        /** Finite. */
        double value() {
            return Double.parseDouble(text);
        }
    }

    /** What an object is to a comment or an attribute. */
    enum Kind {
        NETWORK(""),
        NODE("BU_"),
        MESSAGE("BO_"),
        SIGNAL("SG_"),
        VARIABLE("EV_");

        private final String keyword;

        Kind(String keyword) {
            this.keyword = keyword;
        }

        String keyword() {
            return keyword;
        }
    }

    /**
     * What a comment or an attribute is about.
     *
     * @param message as typed, with the bit of extended identifiers; 0 for network, node and variable
     * @param name of node, signal or variable; empty for network and message
     */
    record Target(Kind kind, long message, String name) {
        static final Target NETWORK = new Target(Kind.NETWORK, 0, "");
    }

    /** A raw value and its word. */
    record Word(Numeral raw, String text) {}

    /** {@code VERSION}. */
    record Version(String text) implements Statement {}

    /** {@code NS_}: the keywords that the writer of the file knew. */
    record Symbols(List<String> names) implements Statement {
        public Symbols {
            names = List.copyOf(names);
        }
    }

    /** {@code BS_}: bit rate and two registers, or nothing; obsolete. */
    record BitTiming(List<Numeral> numbers) implements Statement {
        public BitTiming {
            numbers = List.copyOf(numbers);
        }
    }

    /** {@code BU_}. */
    record Nodes(List<String> names) implements Statement {
        public Nodes {
            names = List.copyOf(names);
        }
    }

    /** {@code VAL_TABLE_}: words to choose from when writing such files; nothing refers to them. */
    record WordTable(String name, List<Word> words) implements Statement {
        public WordTable {
            words = List.copyOf(words);
        }
    }

    /**
     * {@code BO_}.
     *
     * @param id as typed, with the bit of extended identifiers
     * @param length bytes
     */
    record MessageHead(long id, String name, int length, String sender) implements Statement {}

    /**
     * {@code SG_}.
     *
     * @param multiplexing as typed: empty, {@code M}, {@code m3}, {@code m3M}, or what nobody understands
     * @param start bit, as typed
     * @param bits length
     * @param bigEndian {@code @0}
     * @param signed {@code -}
     */
    record SignalLine(
            String name,
            String multiplexing,
            int start,
            int bits,
            boolean bigEndian,
            boolean signed,
            Numeral factor,
            Numeral offset,
            Numeral min,
            Numeral max,
            String unit,
            List<String> receivers)
            implements Statement {
        public SignalLine {
            receivers = List.copyOf(receivers);
        }
    }

    /** {@code BO_TX_BU_}: further senders. */
    record Senders(long message, List<String> nodes) implements Statement {
        public Senders {
            nodes = List.copyOf(nodes);
        }
    }

    /**
     * {@code EV_}.
     *
     * @param type 0 whole number, 1 number, 2 text
     * @param access {@code DUMMY_NODE_VECTOR0} and the like, as typed
     */
    record Variable(
            String name,
            int type,
            Numeral min,
            Numeral max,
            String unit,
            Numeral initial,
            Numeral number,
            String access,
            List<String> nodes)
            implements Statement {
        public Variable {
            nodes = List.copyOf(nodes);
        }
    }

    /** {@code CM_}. */
    record Comment(Target target, String text) implements Statement {}

    /**
     * {@code BA_DEF_}.
     *
     * @param type {@code INT}, {@code HEX}, {@code FLOAT}, {@code STRING} or {@code ENUM}
     * @param range lowest and highest of a number, or nothing
     * @param words of an {@code ENUM}
     */
    record AttributeDefinition(Kind kind, String name, String type, List<Numeral> range, List<String> words)
            implements Statement {
        public AttributeDefinition {
            range = List.copyOf(range);
            words = List.copyOf(words);
        }
    }

    /**
     * {@code BA_DEF_DEF_}.
     *
     * @param quoted whether the value was typed as text
     */
    record AttributeDefault(String name, String value, boolean quoted) implements Statement {}

    /**
     * {@code BA_}.
     *
     * @param quoted whether the value was typed as text
     */
    record AttributeValue(String name, Target target, String value, boolean quoted) implements Statement {}

    /** {@code VAL_} of a signal or of a variable. */
    record Words(Target target, List<Word> words) implements Statement {
        public Words {
            words = List.copyOf(words);
        }
    }

    /** {@code SIG_GROUP_}. */
    record Group(long message, String name, long repetitions, List<String> signals) implements Statement {
        public Group {
            signals = List.copyOf(signals);
        }
    }

    /**
     * {@code SIG_VALTYPE_}.
     *
     * @param type 0 whole number, 1 IEEE single, 2 IEEE double
     */
    record ValueType(long message, String signal, int type) implements Statement {}

    /** {@code SG_MUL_VAL_}: for which values of which multiplexor a signal is there. */
    record MultiplexedBy(long message, String signal, String multiplexor, List<ValueRange> values)
            implements Statement {
        public MultiplexedBy {
            values = List.copyOf(values);
        }
    }

    /**
     * What this program has no use for or does not understand, to the letter.
     *
     * @param keyword its first word
     * @param text without the blanks around it
     */
    record Kept(String keyword, String text) implements Statement {}
}
