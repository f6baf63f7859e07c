package hotday.signals.parquet;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** A table as text cut by commas, made as it is read. */
final class ParquetText extends InputStream {
    private static final int ENOUGH = 1 << 16;

    private final ParquetRows rows;
    private byte[] ready;
    private int at;
    private boolean ended;

    ParquetText(ParquetTable table) {
        this.rows = table.rows(Integer.MAX_VALUE);
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < table.header().size(); i++) {
            String name = table.header().get(i);
            boolean bracketed = name.endsWith("]") || name.endsWith(")");
            String unit = table.unit(i)
                    .filter(u -> !bracketed)
                    .map(u -> " [" + u + "]")
                    .orElse("");
            put(line, i, name + unit);
        }
        ready = line.append('\n').toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void put(StringBuilder line, int cell, String text) {
        line.append(cell == 0 ? "" : ",");
        String one = text.replace('\n', ' ').replace('\r', ' ');
        boolean plain = one.indexOf(',') < 0 && one.indexOf('"') < 0;
        line.append(plain ? one : '"' + one.replace("\"", "\"\"") + '"');
    }

    private boolean fill() {
        if (at < ready.length) {
            return true;
        }
        StringBuilder lines = new StringBuilder();
        while (!ended && lines.length() < ENOUGH) {
            ended = !rows.next();
            for (int i = 0; !ended && i < rows.count(); i++) {
                put(lines, i, rows.text(i));
            }
            lines.append(ended ? "" : "\n");
        }
        ready = lines.toString().getBytes(StandardCharsets.UTF_8);
        at = 0;
        return ready.length > 0;
    }

    @Override
    public int read() {
        return fill() ? ready[at++] & 0xFF : -1;
    }

    @Override
    public int read(byte[] to, int from, int length) {
        if (length == 0) {
            return 0;
        }
        if (!fill()) {
            return -1;
        }
        int n = Math.min(length, ready.length - at);
        System.arraycopy(ready, at, to, from, n);
        at += n;
        return n;
    }

    @Override
    public void close() {
        rows.close();
    }
}
