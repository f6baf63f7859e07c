package hotday.signals.parquet;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** The cells of one column that are not written yet: a number, a text or nothing each. */
final class ColumnChunk {
    private final boolean text;
    /** Whether a cell holds something, one for every row. */
    private int[] there = new int[256];

    private int rows;
    private final PageBytes numbers = new PageBytes();
    private final PageBytes words = new PageBytes();
    private final Map<String, Integer> indexes = new HashMap<>();
    private int[] texts = new int[256];
    private int filled;

    ColumnChunk(boolean text) {
        this.text = text;
    }

    void put(double value) {
        numbers.putDouble(value);
        cell(1);
        filled++;
    }

    void put(String value) {
        Integer index = indexes.get(value);
        if (index == null) {
            index = indexes.size();
            indexes.put(value, index);
            byte[] bytes = value.getBytes(StandardCharsets.UTF_8);
            words.putInt(bytes.length);
            words.put(bytes);
        }
        if (filled == texts.length) {
            texts = Arrays.copyOf(texts, 2 * filled);
        }
        texts[filled++] = index;
        cell(1);
    }

    private void cell(int holds) {
        if (rows == there.length) {
            there = Arrays.copyOf(there, 2 * rows);
        }
        there[rows++] = holds;
    }

    /** Empty cells up to a row. */
    void fillTo(int row) {
        while (rows < row) {
            cell(0);
        }
    }

    int rows() {
        return rows;
    }

    /** Memory of its cells, about, bytes. */
    long size() {
        return numbers.size() + words.size() + (long) Integer.BYTES * (rows + (text ? filled : 0));
    }

    boolean isText() {
        return text;
    }

    /** Different texts. */
    int words() {
        return indexes.size();
    }

    /** The different texts as a dictionary page. */
    PageBytes dictionary() {
        return words;
    }

    /** Which cells hold something, and their values. */
    PageBytes data() {
        PageBytes levels = new PageBytes();
        levels.putPacked(there, rows, 1);
        PageBytes page = new PageBytes();
        page.putInt(levels.size());
        page.put(Arrays.copyOf(levels.array(), levels.size()));
        if (!text) {
            page.put(Arrays.copyOf(numbers.array(), numbers.size()));
            return page;
        }
        int width = Math.max(1, 32 - Integer.numberOfLeadingZeros(Math.max(0, indexes.size() - 1)));
        page.put(width);
        if (filled > 0) {
            page.putPacked(texts, filled, width);
        }
        return page;
    }

    void clear() {
        rows = 0;
        filled = 0;
        numbers.clear();
        words.clear();
        indexes.clear();
    }
}
