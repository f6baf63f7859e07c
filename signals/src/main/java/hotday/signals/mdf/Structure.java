package hotday.signals.mdf;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Walks from the head to groups and channels. A chain that breaks or comes back to itself ends there and is told. */
final class Structure {
    private static final long HEAD_AT = 64;
    private static final int MOST_CHANNELS = 1_000_000;
    private static final int DEEPEST = 16;
    private static final String[] SKIPPED = {"channel hierarchy (##CH)", "attachments (##AT)", "events (##EV)"};

    private final BlockFile file;
    private final Faults faults;
    private final Set<Long> met = new HashSet<>();
    private final List<DataGroup> groups = new ArrayList<>();
    private int channels;
    private String begun = "";

    Structure(BlockFile file, Faults faults) {
        this.file = file;
        this.faults = faults;
    }

    /** Groups in the order of the file; throws {@link InputException} where there is no head to start from. */
    List<DataGroup> read() {
        Block head;
        try {
            head = file.block(HEAD_AT, "the file's head", "##HD").need(6, 24);
        } catch (BrokenBlock broken) {
            throw new InputException(Finding.fault(
                            "mdf-head-broken",
                            Place.of(file.path().toString()),
                            "at byte " + broken.position() + ": " + broken.getMessage() + "; nothing can be read")
                    .with("byte", broken.position()));
        }
        begun = FileHead.begun(head);
        for (int i = 0; i < SKIPPED.length; i++) {
            if (head.link(2 + i) != 0) {
                faults.note("mdf-not-read", "holds a block that is passed over: " + SKIPPED[i]);
            }
        }
        chain(head.link(0), "##DG", "the link of the head to its first group", 0, this::dataGroup);
        return groups;
    }

    /** When the recording began, for people. */
    String begun() {
        return begun;
    }

    private interface Taker {
        void take(Block block);
    }

    /** Blocks of a chain, each with the next one's place in a link. */
    private void chain(long first, String id, String from, int nextLink, Taker taker) {
        long at = first;
        String by = from;
        try {
            while (at != 0) {
                if (!met.add(at)) {
                    throw new BrokenBlock("link-loop", at, by + " leads to a block " + id + " that was read before");
                }
                Block block = file.block(at, by, id);
                taker.take(block);
                by = "the link of block " + id + " at byte " + at + " to the next one";
                at = block.link(nextLink);
            }
        } catch (BrokenBlock broken) {
            faults.add(broken, "; what the chain holds behind it is not read");
        }
    }

    private void dataGroup(Block dg) {
        dg.need(4, 1);
        List<Group> all = new ArrayList<>();
        int idBytes = dg.u8(0);
        if (idBytes != 0 && idBytes != 1 && idBytes != 2 && idBytes != 4 && idBytes != 8) {
            throw dg.broken("has record identifiers of " + idBytes + " bytes, 0, 1, 2, 4 or 8 can be");
        }
        chain(dg.link(1), "##CG", "block ##DG at byte " + dg.position(), 0, cg -> all.add(group(cg)));
        long data = dg.link(2);
        if (data != 0 && !met.add(data)) {
            faults.add(new BrokenBlock(
                    "link-loop", dg.position(), "block ##DG has its data where another block is: they are not read"));
            data = 0;
        }
        groups.add(new DataGroup(dg.position(), idBytes, data, all));
    }

    private Group group(Block cg) {
        cg.need(6, 32);
        List<Channel> all = new ArrayList<>();
        chain(cg.link(1), "##CN", "block ##CG at byte " + cg.position(), 0, cn -> channel(cn, "", 0, all));
        Source source = source(cg.link(3), "block ##CG at byte " + cg.position());
        String name = text(cg.link(2), "the name of block ##CG at byte " + cg.position());
        return new Group(
                cg.position(),
                cg.i64(0),
                cg.i64(8),
                cg.u16(16),
                cg.u32(24),
                cg.u32(28),
                name.isEmpty() ? source.name() : name,
                source.bus(),
                cg.link(6),
                all);
    }

    private record Source(String name, int bus) {}

    private Source source(long link, String from) {
        if (link == 0) {
            return new Source("", 0);
        }
        try {
            Block si = file.block(link, from, "##SI").need(2, 2);
            return new Source(text(si.link(0), "the name of block ##SI at byte " + link), si.u8(1));
        } catch (BrokenBlock broken) {
            faults.add(broken);
            return new Source("", 0);
        }
    }

    private void channel(Block cn, String parent, int depth, List<Channel> all) {
        cn.need(8, 24);
        if (++channels > MOST_CHANNELS || depth > DEEPEST) {
            throw cn.broken("is one more than the " + MOST_CHANNELS + " channels, or the " + DEEPEST
                    + " steps from whole to part, that are read");
        }
        String where = "block ##CN at byte " + cn.position();
        String own;
        try {
            own = Texts.at(file, cn.link(2), "the name of " + where).strip();
        } catch (BrokenBlock broken) {
            faults.add(broken, "; a channel without a name is not read");
            return;
        }
        String name = parent.isEmpty() || own.startsWith(parent + ".") ? own : parent + "." + own;
        all.add(new Channel(
                cn.position(),
                name,
                unit(cn, where),
                cn.u8(0),
                cn.u8(1),
                cn.u8(2),
                cn.u8(3),
                cn.u32(4),
                cn.u32(8),
                cn.u32(12),
                cn.u32(16),
                cn.link(4),
                cn.link(5),
                composition(cn)));
        int self = all.size() - 1;
        if (all.get(self).composed() == Channel.Composition.STRUCTURE) {
            chain(cn.link(1), "##CN", where, 0, part -> channel(part, name, depth + 1, all));
            if (all.size() == self + 1) {
                all.set(self, all.get(self).alone());
            }
        }
    }

    /** A channel whose parts cannot be told is one whole. */
    private Channel.Composition composition(Block cn) {
        if (cn.link(1) == 0) {
            return Channel.Composition.NONE;
        }
        try {
            boolean structure = file.head(cn.link(1), "the composition of block ##CN at byte " + cn.position())
                    .id()
                    .equals("##CN");
            return structure ? Channel.Composition.STRUCTURE : Channel.Composition.ARRAY;
        } catch (BrokenBlock broken) {
            faults.add(broken);
            return Channel.Composition.NONE;
        }
    }

    /** Of the channel, else of its conversion. */
    private String unit(Block cn, String where) {
        long link = cn.link(6);
        if (link == 0 && cn.link(4) != 0) {
            try {
                link = file.block(cn.link(4), where, "##CC").link(1);
            } catch (BrokenBlock told) {
                return ""; // the conversion is told where it is read
            }
        }
        return text(link, "the unit of " + where);
    }

    private String text(long link, String what) {
        try {
            return Texts.at(file, link, what).strip();
        } catch (BrokenBlock broken) {
            faults.add(broken);
            return "";
        }
    }
}
