package hotday.study.shop;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.typed.TypedText;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What lies beside the sheets of a shop and is read with them: parts of the shelf, cases. */
final class Beside {
    private Beside() {}

    /** Changes with every change of it; throws {@link InputException} when it cannot be read. */
    static String digest(Path shop) {
        return Digest.of(texts(shop, "shelf") + texts(shop, "cases"));
    }

    /** All files of a folder of the shop, one after the other. */
    private static String texts(Path shop, String name) {
        StringBuilder all = new StringBuilder(name);
        Path within = shop.resolve(name);
        if (Files.isDirectory(within)) {
            try (DirectoryStream<Path> found = Files.newDirectoryStream(within, "*.{yaml,yml}")) {
                List<Path> files = new ArrayList<>();
                found.forEach(files::add);
                for (Path file : files.stream().sorted().toList()) {
                    all.append('\n').append(file.getFileName()).append('\n').append(TypedText.read(file));
                }
            } catch (IOException e) {
                throw InputException.at(
                        Place.of(within.toString()), "not-readable", "cannot be read: " + e.getMessage());
            }
        }
        return all.toString();
    }
}
