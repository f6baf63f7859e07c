package hotday.signals.sample;

import java.io.OutputStream;
import java.util.List;

/** Rows as text cut by commas. */
final class TextColumns implements ColumnRows {
    private final TextBuffer text;

    TextColumns(OutputStream out, List<String> header) {
        this.text = new TextBuffer(out);
        for (int i = 0; i < header.size(); i++) {
            text.put(TextBuffer.cell(header.get(i)));
            text.put(i == header.size() - 1 ? '\n' : ',');
        }
    }

    @Override
    public void row(double time, double[] values, String[] texts) {
        text.putTime(time);
        for (int i = 0; i < values.length; i++) {
            text.put(',');
            if (texts[i] != null) {
                text.put(TextBuffer.cell(texts[i]));
            } else if (!Double.isNaN(values[i])) {
                text.put(values[i]);
            }
        }
        text.put('\n');
    }

    @Override
    public void finish() {
        text.flush();
    }
}
