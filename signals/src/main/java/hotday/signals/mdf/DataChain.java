package hotday.signals.mdf;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/**
 * Where data lie: blocks in order, found through lists of them. Only their places are kept, and the lengths of those met so
 * far.
 */
final class DataChain {
    private static final Set<String> LISTS = Set.of("##DL", "##LD");
    private static final int MOST_BLOCKS = 1 << 20;

    private final BlockFile file;
    private final Set<String> kinds;
    private final Set<Long> lists = new HashSet<>();
    private long[] positions = new long[4];
    private long[] starts = new long[5];
    private int count;
    /** Blocks whose start is known. */
    private int known;

    private DataChain(BlockFile file, Set<String> kinds) {
        this.file = file;
        this.kinds = kinds;
    }

    /**
     * Follows a link to data. What breaks is told, and the blocks before it stay.
     *
     * @param kinds of blocks that may hold them, packed ones aside
     */
    static DataChain of(BlockFile file, long link, String from, Set<String> kinds, Faults faults) {
        DataChain chain = new DataChain(file, kinds);
        try {
            chain.follow(link, from);
        } catch (BrokenBlock broken) {
            faults.add(broken, "; the data before it are read");
        }
        try {
            chain.requireOnce(from);
        } catch (BrokenBlock broken) {
            faults.add(broken, "; the data before it are read");
        }
        chain.lists.clear();
        return chain;
    }

    private void follow(long link, String from) {
        if (link == 0) {
            return;
        }
        BlockFile.Head head = file.head(link, from);
        if (head.id().equals("##HL")) {
            long first = file.whole(head).need(1, 0).link(0);
            list(first, "block ##HL at byte " + link);
        } else if (LISTS.contains(head.id())) {
            list(link, from);
        } else {
            add(link);
            requireKind(head, from);
        }
    }

    private void requireKind(BlockFile.Head head, String from) {
        if (!kinds.contains(head.id()) && !head.id().equals("##DZ")) {
            throw new BrokenBlock(
                    "link-broken",
                    head.position(),
                    from + " leads to a block " + head.id() + ", data are needed (" + String.join(", ", kinds) + ")");
        }
    }

    private void list(long first, String from) {
        long at = first;
        String by = from;
        while (at != 0) {
            if (!lists.add(at)) {
                throw new BrokenBlock("link-loop", at, by + " leads to a list that was read before");
            }
            Block list = file.block(at, by, "##DL", "##LD").need(1, 8);
            blocks(list);
            by = "the link of block " + list.id() + " at byte " + at + " to the next one";
            at = list.link(0);
        }
    }

    private void blocks(Block list) {
        boolean columns = list.id().equals("##LD");
        long said = list.u32(4);
        int there =
                columns && (list.u32(0) & 0x8000_0000L) != 0 ? (list.links().length - 1) / 2 : list.links().length - 1;
        int last = columns ? list.links().length - 1 : (int) Math.min(said, there);
        for (int i = 1; i <= last; i++) {
            long link = list.link(i);
            if (link != 0 && (!columns || isOfKind(link, list))) {
                add(link);
            }
        }
        if (said > there) {
            throw list.broken("says it lists " + said + " blocks and has links to " + there);
        }
    }

    /** Ends the chain before the first block that it has a second time. */
    private void requireOnce(String from) {
        long[] sorted = Arrays.copyOf(positions, count);
        Arrays.sort(sorted);
        Set<Long> twice = new HashSet<>();
        for (int i = 1; i < sorted.length; i++) {
            if (sorted[i] == sorted[i - 1]) {
                twice.add(sorted[i]);
            }
        }
        Set<Long> met = new HashSet<>();
        for (int i = 0; i < count && !twice.isEmpty(); i++) {
            if (twice.contains(positions[i]) && !met.add(positions[i])) {
                count = i;
                throw new BrokenBlock("link-loop", positions[i], from + " come to this block a second time");
            }
        }
    }

    /** Lists of columns hold blocks of values and blocks of validity side by side. */
    private boolean isOfKind(long link, Block list) {
        BlockFile.Head head = file.head(link, "block ##LD at byte " + list.position());
        return kinds.contains(head.id())
                || head.id().equals("##DZ")
                        && kinds.contains(PackedBlock.of(file, head).kind());
    }

    private void add(long position) {
        if (count == MOST_BLOCKS) {
            throw new BrokenBlock("too-many-blocks", position, "more than " + MOST_BLOCKS + " blocks of data");
        }
        if (count == positions.length) {
            positions = Arrays.copyOf(positions, 2 * count);
            starts = Arrays.copyOf(starts, 2 * count + 1);
        }
        positions[count++] = position;
    }

    int count() {
        return count;
    }

    /** Whether the first block is of a kind, or was before it was packed; false when it is broken. */
    boolean isOf(String kind) {
        try {
            BlockFile.Head first = head(0);
            return first.id().equals(kind)
                    || first.id().equals("##DZ")
                            && PackedBlock.of(file, first).kind().equals(kind);
        } catch (BrokenBlock told) {
            return false; // it is told where it is read
        }
    }

    long position(int block) {
        return positions[block];
    }

    /** The head of a block, checked to be one that holds such data. */
    BlockFile.Head head(int block) {
        BlockFile.Head head = file.head(positions[block], "a list of data");
        requireKind(head, "a list of data");
        return head;
    }

    /** First byte of a block among all data; lengths of blocks before it are looked up once. */
    long start(int block) {
        while (known < block) {
            BlockFile.Head head = head(known);
            long length = head.id().equals("##DZ")
                    ? PackedBlock.of(file, head).unpacked()
                    : Math.min(head.dataLength(), file.size() - head.dataAt());
            starts[known + 1] = starts[known] + length;
            known++;
        }
        return starts[block];
    }

    /** The block that holds a byte of the data; {@link #count} when it lies behind all. */
    int holding(long at) {
        int found = Arrays.binarySearch(starts, 0, known + 1, at);
        if (found >= 0) {
            int block = found;
            while (block < count && start(block + 1) == at) {
                block++;
            }
            return block;
        }
        int block = -found - 2;
        while (block < count && start(block + 1) <= at) {
            block++;
        }
        return block;
    }
}
