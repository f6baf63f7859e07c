package hotday.signals.parquet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/**
 * Writes rows as a Parquet file (format 2.x, version 1 pages): numbers as plain doubles, texts through a dictionary, any cell may
 * be missing, pages packed with gzip. Rows are written in groups of a few megabytes: memory does not grow with the file but for some
 * hundred bytes a group. Source of the layout: the open specification of Apache Parquet (parquet-format 2.10).
 */
public final class ParquetWriter {
    /** Of a group, bytes in memory: large enough to pack well. */
    private static final long GROUP = 8_000_000;

    private static final int MOST_ROWS = 1 << 18;
    private static final byte[] MARK = "PAR1".getBytes(StandardCharsets.US_ASCII);

    private static final int DOUBLE = 5;
    private static final int BYTE_ARRAY = 6;
    private static final int OPTIONAL = 1;
    private static final int UTF8 = 0;
    private static final int GZIP = 2;
    private static final int PLAIN = 0;
    private static final int RLE = 3;
    private static final int RLE_DICTIONARY = 8;
    private static final int DATA_PAGE = 0;
    private static final int DICTIONARY_PAGE = 2;

    private final OutputStream out;
    private final List<ParquetColumn> columns;
    private final List<ColumnChunk> chunks = new ArrayList<>();
    private final List<CompactBytes> groups = new ArrayList<>();
    /** Rows of the group so far. */
    private int rows;
    /** Rows of the groups before. */
    private long before;
    /** Bytes written. */
    private long at;

    /** @param out stays open; {@link #finish} before it is closed */
    public ParquetWriter(OutputStream out, List<ParquetColumn> columns) {
        this.out = out;
        this.columns = List.copyOf(columns);
        columns.forEach(c -> chunks.add(new ColumnChunk(c.text())));
        write(MARK, MARK.length);
    }

    /** The number in a column of numbers of this row, once at most; NaN is no value. */
    public void put(int column, double value) {
        if (!Double.isNaN(value)) {
            ColumnChunk chunk = chunks.get(column);
            chunk.fillTo(rows);
            chunk.put(value);
        }
    }

    /** The text in a column of texts of this row, once at most. */
    public void put(int column, String value) {
        ColumnChunk chunk = chunks.get(column);
        chunk.fillTo(rows);
        chunk.put(value);
    }

    /** Ends the row; cells that were not put hold nothing. */
    public void endRow() {
        rows++;
        if (rows == MOST_ROWS || (rows & 0x3FF) == 0 && size() > GROUP) {
            group();
        }
    }

    private long size() {
        return chunks.stream().mapToLong(ColumnChunk::size).sum();
    }

    /** Writes what is not written yet, and the end of the file. */
    public void finish() {
        if (rows > 0) {
            group();
        }
        List<CompactBytes> schema = new ArrayList<>();
        schema.add(new CompactBytes().text(4, "recording").i32(5, columns.size()));
        columns.forEach(c -> schema.add(element(c)));
        byte[] footer = new CompactBytes()
                .i32(1, 1)
                .structs(2, schema, schema.size())
                .i64(3, before)
                .structs(4, groups, groups.size())
                .text(6, "Hotday")
                .end();
        write(footer, footer.length);
        PageBytes end = new PageBytes();
        end.putInt(footer.length);
        end.put(MARK);
        write(end.array(), end.size());
    }

    private static CompactBytes element(ParquetColumn column) {
        CompactBytes element = new CompactBytes()
                .i32(1, column.text() ? BYTE_ARRAY : DOUBLE)
                .i32(3, OPTIONAL)
                .text(4, column.name());
        return column.text()
                ? element.i32(6, UTF8).struct(10, new CompactBytes().struct(1, new CompactBytes()))
                : element;
    }

    private void group() {
        List<CompactBytes> written = new ArrayList<>();
        long unpacked = 0;
        for (int i = 0; i < chunks.size(); i++) {
            ColumnChunk chunk = chunks.get(i);
            chunk.fillTo(rows);
            Written data = column(chunk);
            unpacked += data.unpacked();
            written.add(new CompactBytes().i64(2, data.start()).struct(3, data.described(columns.get(i), rows)));
            chunk.clear();
        }
        groups.add(new CompactBytes()
                .structs(1, written, written.size())
                .i64(2, unpacked)
                .i64(3, rows));
        before += rows;
        rows = 0;
    }

    /**
     * Where the pages of a column lie.
     *
     * @param start of the dictionary, or of the data where there is none
     * @param data start of the data
     * @param end behind them
     * @param unpacked bytes with their headers
     */
    private record Written(long start, long data, long end, long unpacked) {
        CompactBytes described(ParquetColumn column, int rows) {
            CompactBytes all = new CompactBytes().i32(1, column.text() ? BYTE_ARRAY : DOUBLE);
            CompactBytes encoded =
                    column.text() ? all.numbers(2, PLAIN, RLE, RLE_DICTIONARY) : all.numbers(2, PLAIN, RLE);
            encoded.texts(3, column.name())
                    .i32(4, GZIP)
                    .i64(5, rows)
                    .i64(6, unpacked)
                    .i64(7, end - start)
                    .i64(9, data);
            return column.text() ? encoded.i64(11, start) : encoded;
        }
    }

    private Written column(ColumnChunk chunk) {
        long start = at;
        long unpacked = 0;
        if (chunk.isText()) {
            CompactBytes header = new CompactBytes().i32(1, chunk.words()).i32(2, PLAIN);
            unpacked += page(DICTIONARY_PAGE, chunk.dictionary(), 7, header);
        }
        long data = at;
        CompactBytes header = new CompactBytes()
                .i32(1, chunk.rows())
                .i32(2, chunk.isText() ? RLE_DICTIONARY : PLAIN)
                .i32(3, RLE)
                .i32(4, RLE);
        unpacked += page(DATA_PAGE, chunk.data(), 5, header);
        return new Written(start, data, at, unpacked);
    }

    /** @return bytes of header and unpacked page */
    private long page(int type, PageBytes content, int field, CompactBytes header) {
        byte[] packed = packed(content);
        byte[] head = new CompactBytes()
                .i32(1, type)
                .i32(2, content.size())
                .i32(3, packed.length)
                .struct(field, header)
                .end();
        write(head, head.length);
        write(packed, packed.length);
        return (long) head.length + content.size();
    }

    private static byte[] packed(PageBytes content) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(content.size() / 2 + 64);
        try (GZIPOutputStream gzip = new Fast(bytes)) {
            gzip.write(content.array(), 0, content.size());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** Packs less and much faster. */
    private static final class Fast extends GZIPOutputStream {
        Fast(OutputStream out) throws IOException {
            super(out, 1 << 16);
            def.setLevel(Deflater.BEST_SPEED);
        }
    }

    private void write(byte[] bytes, int length) {
        try {
            out.write(bytes, 0, length);
            at += length;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
