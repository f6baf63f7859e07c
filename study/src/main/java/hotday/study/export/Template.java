package hotday.study.export;

import hotday.study.workspace.AtomicFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;

/** A file of code with places such as {@code @TITLE@} to be filled. */
final class Template {
    private Template() {}

    static String filled(String name, Map<String, String> places) {
        String text = text(name);
        for (Map.Entry<String, String> place : places.entrySet()) {
            text = text.replace("@" + place.getKey() + "@", place.getValue());
        }
        return text;
    }

    /** Lines that begin with a mark such as {@code @CHARGE_AIR@}: kept without it, or taken out. */
    static String marked(String text, String mark, boolean kept) {
        return kept ? text.replace("@" + mark + "@", "") : text.replaceAll("(?m)^@" + mark + "@.*\\n", "");
    }

    private static String text(String name) {
        try (InputStream in = Template.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its own file " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Text that may stand in a comment. */
    static String comment(String text) {
        return text.replaceAll("[^\\x20-\\x7E]", "?").replace("*/", "* /").replace("/*", "/ *");
    }

    /** Writes all of them, each whole or not at all. */
    static void write(Path folder, Map<String, String> files) {
        AtomicFile.requireFolder(folder);
        files.keySet().forEach(name -> AtomicFile.requireTarget(folder.resolve(name)));
        files.forEach((name, text) ->
                AtomicFile.write(folder.resolve(name), out -> out.write(text.getBytes(StandardCharsets.UTF_8))));
    }
}
