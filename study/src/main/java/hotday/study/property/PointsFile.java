package hotday.study.property;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.physics.refrigerant.RangeException;
import hotday.physics.refrigerant.Refrigerant;
import hotday.signals.log.DelimitedText;
import hotday.signals.log.ReaderOptions;
import hotday.signals.log.Row;
import hotday.study.workspace.AtomicFile;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A file of known values, one state a row, answered row by row into another file; format: docs/formats.md. Read twice,
 * first for the kinds of row in it, so that memory does not grow with the file.
 */
public final class PointsFile {
    private static final int MOST_FAULTS = 1000;

    private final DelimitedText text;
    private final PointsHeader header;
    private final RowKnown rows;
    private final List<Finding> faults = new ArrayList<>();
    private long unsaid;
    private long states;
    private long saturations;

    private PointsFile(DelimitedText text) {
        this.text = text;
        this.header = PointsHeader.of(text);
        this.rows = new RowKnown(header, text.path().toString());
    }

    /** Looks at the header; throws {@link InputException} for what is no points file. */
    public static PointsFile open(Path path) {
        return new PointsFile(DelimitedText.open(path, ReaderOptions.list()));
    }

    /**
     * Writes the answers of all rows, or throws every fault found and writes nothing.
     *
     * @param fluid named where a value lies outside its range
     * @param source what answers
     * @return rows written
     */
    public long answer(Refrigerant fluid, Answers source, Path to) {
        count();
        AtomicFile.write(to, out -> {
            OutputStream buffered = new BufferedOutputStream(out, 1 << 16);
            write(fluid, source, buffered);
            buffered.flush();
            throwFaults();
        });
        return states + saturations;
    }

    private void count() {
        states = 0;
        saturations = 0;
        text.rows(row -> {
            if (rows.of(row).saturation()) {
                saturations++;
            } else {
                states++;
            }
        });
        if (states + saturations == 0) {
            throw InputException.at(
                    Place.of(text.path().toString()),
                    "no-rows",
                    "the file has a header and no rows: nothing to answer");
        }
    }

    private void write(Refrigerant fluid, Answers source, OutputStream out) throws IOException {
        AnswerLines lines = new AnswerLines(fluid, header, states > 0, saturations > 0);
        out.write(lines.names().getBytes(StandardCharsets.UTF_8));
        try {
            text.rows(row -> {
                if (rows.wellFormed(row, this::fault)) {
                    answer(fluid, source, row, lines).ifPresent(line -> put(out, line));
                }
            });
        } catch (UncheckedIOException e) {
            throw e.getCause(); // as from the stream itself: a full disk is said in words
        }
    }

    private Optional<String> answer(Refrigerant fluid, Answers source, Row row, AnswerLines lines) {
        Known known = rows.of(row);
        try {
            return Optional.of(
                    known.saturation()
                            ? lines.bothPhases(row, source.bothPhases(known))
                            : lines.state(row, source.state(known)));
        } catch (RangeException e) {
            fault(rows.outOfRange(row, known, fluid, e.getMessage()));
            return Optional.empty();
        }
    }

    private static void put(OutputStream out, String line) {
        try {
            out.write(line.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void fault(Finding finding) {
        if (faults.size() < MOST_FAULTS) {
            faults.add(finding);
        } else {
            unsaid++;
        }
    }

    private void throwFaults() {
        if (unsaid > 0) {
            faults.add(Finding.fault(
                    "more-faults", Place.of(text.path().toString()), "and " + unsaid + " more faults like these"));
        }
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
    }
}
