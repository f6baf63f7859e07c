package hotday.study.shop;

import java.text.Normalizer;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a recording that is sent is called in the folder: ASCII, so that it is the same on every disk, in every address and terminal.
 *
 * @param file safe name with its endings
 * @param title the name it came with, without endings
 */
record RunName(String file, String title) {
    static final int LONGEST = 80;
    /** Names of recordings in the folder. */
    static final Pattern SAFE = Pattern.compile(
            "([A-Za-z0-9_(-][A-Za-z0-9_()., +-]*)((?i:\\.(?:csv|txt|tsv|log|parquet)(?:\\.gz)?|\\.mf4|\\.mdf))");

    private static final Pattern SENT = Pattern.compile(
            "([^./\\\\\\p{Cntrl}][^/\\\\\\p{Cntrl}]*)((?i:\\.(?:csv|txt|tsv|log|parquet)(?:\\.gz)?|\\.mf4|\\.mdf))");
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern OTHERS = Pattern.compile("[^A-Za-z0-9_()., +-]");
    private static final Pattern BEGINNING = Pattern.compile("^[^A-Za-z0-9_(-]");
    /** Letters that are not one of ours with a mark. */
    private static final Map<String, String> SPELT = Map.ofEntries(
            Map.entry("\u00E4", "ae"),
            Map.entry("\u00F6", "oe"),
            Map.entry("\u00FC", "ue"),
            Map.entry("\u00C4", "Ae"),
            Map.entry("\u00D6", "Oe"),
            Map.entry("\u00DC", "Ue"),
            Map.entry("\u00DF", "ss"),
            Map.entry("\u00E6", "ae"),
            Map.entry("\u00C6", "Ae"),
            Map.entry("\u00F8", "o"),
            Map.entry("\u00D8", "O"),
            Map.entry("\u0153", "oe"),
            Map.entry("\u0142", "l"),
            Map.entry("\u0141", "L"));

    /** Empty for what no file a person means to send is called. */
    static Optional<RunName> of(String sent) {
        Matcher m = SENT.matcher(Normalizer.normalize(sent, Normalizer.Form.NFC));
        if (!m.matches()) {
            return Optional.empty();
        }
        String title = m.group(1);
        String name = ascii(title);
        String file = name + m.group(2);
        boolean says = name.chars().anyMatch(Character::isLetterOrDigit);
        return says && name.length() <= LONGEST && SAFE.matcher(file).matches()
                ? Optional.of(new RunName(file, title))
                : Optional.empty();
    }

    private static String ascii(String title) {
        String spelt = title;
        for (Map.Entry<String, String> letter : SPELT.entrySet()) {
            spelt = spelt.replace(letter.getKey(), letter.getValue());
        }
        String bare =
                MARKS.matcher(Normalizer.normalize(spelt, Normalizer.Form.NFD)).replaceAll("");
        return BEGINNING.matcher(OTHERS.matcher(bare).replaceAll("-")).replaceFirst("-");
    }
}
