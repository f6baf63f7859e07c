package hotday.signals.dbc;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The description of a network: every statement of a DBC file in order, and the messages that they make. What was not
 * understood is kept and told in the findings; nothing is guessed. Immutable.
 */
public final class DbcFile {
    /** Bytes; the largest vehicle networks need a tenth of it. */
    static final int LARGEST = 64_000_000;

    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final String name;
    private final Encoding encoding;
    private final List<Statement> statements;
    private final List<Message> messages;
    private final Attributes attributes;
    private final List<Finding> findings;

    private DbcFile(String name, Encoding encoding, List<DbcReader.Placed> read, FindingList found) {
        this.name = name;
        this.encoding = encoding;
        this.statements = read.stream().map(DbcReader.Placed::statement).toList();
        Network network = Network.of(read, found);
        this.messages = network.messages();
        this.attributes = network.attributes();
        this.findings = found.all();
    }

    /** Throws {@link InputException} when the file cannot be read or nothing in it is a statement. */
    public static DbcFile read(Path path) {
        Place place = Place.of(path.toString());
        if (Files.isDirectory(path)) {
            throw InputException.at(place, "is-folder", "is a folder, a DBC file is needed");
        }
        if (!Files.exists(path)) {
            throw InputException.at(place, "no-such-file", "no such file");
        }
        try (InputStream in = Files.newInputStream(path)) {
            return parse(path.toString(), in.readNBytes(LARGEST + 1));
        } catch (AccessDeniedException e) {
            throw InputException.at(place, "not-readable", "may not be read by you (file permissions)");
        } catch (IOException e) {
            throw InputException.at(place, "not-readable", "cannot be read: " + e.getMessage());
        }
    }

    /** @param name what findings call the file */
    public static DbcFile parse(String name, byte[] bytes) {
        byte[] unmarked = checked(name, bytes);
        Encoding encoding = Encoding.of(unmarked);
        FindingList findings = new FindingList(name);
        List<DbcReader.Placed> read = DbcReader.read(encoding.decoded(unmarked), findings);
        if (read.stream().allMatch(p -> p.statement() instanceof Statement.Kept)) {
            throw new InputException(noStatement(name, findings));
        }
        return new DbcFile(name, encoding, read, findings);
    }

    private static List<Finding> noStatement(String name, FindingList findings) {
        List<Finding> faults = new ArrayList<>();
        faults.add(Finding.fault("not-a-dbc", Place.of(name), "holds no statement of a DBC file (BO_, SG_ ...)"));
        findings.all().stream()
                .filter(f -> f.severity() == Severity.FAULT)
                .limit(1)
                .forEach(faults::add);
        return faults;
    }

    private static byte[] checked(String name, byte[] bytes) {
        Place place = Place.of(name);
        if (bytes.length > LARGEST) {
            throw InputException.at(
                    place, "file-too-large", "has more than " + LARGEST / 1_000_000 + " MB; no network needs as many");
        }
        if (bytes.length > 1 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFE + 0xFF) {
            throw InputException.at(place, "text-in-utf16", "is text in UTF-16: save it as UTF-8 text");
        }
        boolean blank = true;
        for (byte b : bytes) {
            if (b == 0) {
                throw InputException.at(place, "binary-file", "is a binary file, the text of a DBC file is needed");
            }
            blank &= b >= 0 && b <= ' ';
        }
        if (blank) {
            throw InputException.at(place, "empty-file", "the file is empty");
        }
        boolean marked = bytes.length >= 3 && Arrays.equals(bytes, 0, 3, BYTE_ORDER_MARK, 0, 3);
        return marked ? Arrays.copyOfRange(bytes, 3, bytes.length) : bytes;
    }

    public String name() {
        return name;
    }

    public Encoding encoding() {
        return encoding;
    }

    /** All of the file, in order. */
    public List<Statement> statements() {
        return statements;
    }

    /** In the order of the file. */
    public List<Message> messages() {
        return messages;
    }

    /** The first message of an identifier. */
    public Optional<Message> message(int id, boolean extended) {
        return messages.stream()
                .filter(m -> m.id() == id && m.extended() == extended)
                .findFirst();
    }

    /** Names of the nodes. */
    public List<String> nodes() {
        return statements.stream()
                .filter(Statement.Nodes.class::isInstance)
                .flatMap(s -> ((Statement.Nodes) s).names().stream())
                .toList();
    }

    /** An attribute of a message: its own, else the one for all. */
    public Optional<String> attribute(Message message, String attribute) {
        return attributes.of(message.attributes(), attribute);
    }

    /** An attribute of a signal: its own, else the one for all. */
    public Optional<String> attribute(Signal signal, String attribute) {
        return attributes.of(signal.attributes(), attribute);
    }

    /** An attribute of the network itself. */
    public Optional<String> attribute(String attribute) {
        return attributes.of(attributes.ofNetwork(), attribute);
    }

    /** What a person should know, with places. */
    public List<Finding> findings() {
        return findings;
    }

    /** Whether a statement was not understood, or contradicts itself. */
    public boolean hasFaults() {
        return findings.stream().anyMatch(f -> f.severity() == Severity.FAULT);
    }

    /** The file as text: every statement, in order; blanks and blank lines are those most files have. */
    public String text() {
        return StatementText.of(statements);
    }

    /** {@link #text} in the encoding that the file was read in. */
    public byte[] bytes() {
        return encoding.encoded(text());
    }
}
