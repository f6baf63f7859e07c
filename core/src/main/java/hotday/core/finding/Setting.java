package hotday.core.finding;

import java.util.Objects;

/**
 * Something a person can set, named in a {@link Sentence}: whoever says the sentence names it as it is seen there, as a key of a file or as a
 * field of a page.
 *
 * @param key full key, as in {@code channels.coolant_temperature.unit}
 * @param value it should be set to; empty when it is only named
 * @param inFile what is said of it to whoever has the file open
 */
public record Setting(String key, String value, String inFile) {
    public Setting {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(inFile, "inFile");
    }

    /** Only named. */
    public static Setting named(String key, String inFile) {
        return new Setting(key, "", inFile);
    }
}
