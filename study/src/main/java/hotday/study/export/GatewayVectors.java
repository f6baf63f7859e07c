package hotday.study.export;

import hotday.signals.translator.Field;
import hotday.signals.translator.Program;
import hotday.signals.translator.Program.Counter;
import hotday.signals.translator.Program.Guard;
import hotday.signals.translator.Program.Incoming;
import hotday.signals.translator.Translator;
import java.util.HexFormat;
import java.util.List;
import java.util.SplittableRandom;

/** Frames, looks and what must come of them, line by line as the runner in C reads it. */
public final class GatewayVectors {
    private static final HexFormat HEX = HexFormat.of().withUpperCase();
    private static final int HIGHEST_STANDARD = 0x7FF;

    private final Program program;
    private final Translator gateway;
    private final StringBuilder lines = new StringBuilder();

    /** From the state at power-up on. */
    public GatewayVectors(Program program) {
        this.program = program;
        this.gateway = new Translator(program);
    }

    /** A data frame comes; the network is a place in {@link Program#networks}. */
    public void receive(int network, int id, boolean extended, byte[] data, int from, int length) {
        int result = gateway.receive(network, id, extended, data, from, length).ordinal();
        lines.append("r ");
        frame(network, id, extended, data, from, length);
        lines.append(' ').append(result).append('\n');
    }

    /** The gateway looks. */
    public void look() {
        lines.append("l\n");
        gateway.look((network, id, extended, data, length) -> {
            lines.append("s ");
            frame(network, id, extended, data, 0, length);
            lines.append('\n');
        });
    }

    private void frame(int network, int id, boolean extended, byte[] data, int from, int length) {
        lines.append(network).append(' ').append(Integer.toHexString(id)).append(extended ? " 1 " : " 0 ");
        lines.append(length == 0 ? "-" : HEX.formatHex(data, from, from + length));
    }

    /**
     * Random frames, most of them of messages that are listened to, with guards that are mostly right; a look after two of
     * three. Now and then nothing comes for a while.
     */
    public void random(int frames, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] counts = new int[program.incoming().size()];
        byte[] data = new byte[Field.MOST_BYTES];
        for (int i = 0; i < frames; i++) {
            random.nextBytes(data);
            int length = random.nextInt(20) == 0 ? random.nextInt(Field.MOST_BYTES + 1) : Field.MOST_BYTES;
            if (counts.length == 0 || random.nextInt(10) == 0) {
                int network = random.nextInt(program.networks().size());
                receive(network, random.nextInt(HIGHEST_STANDARD + 1), random.nextBoolean(), data, 0, length);
            } else {
                int m = random.nextInt(counts.length);
                guarded(program.incoming().get(m), data, random, counts[m]++);
                Incoming message = program.incoming().get(m);
                receive(message.network(), message.id(), message.extended(), data, 0, length);
            }
            int looks = random.nextInt(500) == 0 ? random.nextInt(200) : random.nextInt(3) == 0 ? 0 : 1;
            for (int k = 0; k < looks; k++) {
                look();
            }
        }
    }

    /** One counter in ten stands still, one checksum in ten is random. */
    private static void guarded(Incoming message, byte[] data, SplittableRandom random, int count) {
        long word = Field.word(data, 0, data.length);
        if (message.counter().isPresent() && random.nextInt(10) > 0) {
            Counter c = message.counter().get();
            int values = (c.last() - c.first()) / c.step() + 1;
            word = c.field().put(word, c.first() + (long) (count % values) * c.step());
            Field.bytes(word, data, data.length);
        }
        if (message.checksum().isPresent() && random.nextInt(10) > 0) {
            Guard guard = message.checksum().get();
            Field.bytes(guard.field().put(word, guard.value(data, 0)), data, data.length);
        }
    }

    /** All lines so far. */
    public String text() {
        return lines.toString();
    }

    /** What the runner looks at, by kind of line: {@code r}, {@code l} or {@code s}. */
    public long count(char kind) {
        List<String> all = lines.toString().lines().toList();
        return all.stream().filter(l -> l.charAt(0) == kind).count();
    }
}
