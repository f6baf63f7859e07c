package hotday.vehicle.cases;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The shipped cases and a shop's own, which add to them or, with the same id, take the place of one. */
public final class Cases {
    private Cases() {}

    /** The cases for a build sheet: the shop's are {@code cases/*.yaml} beside the folder {@code builds} it lies in. */
    public static List<Case> ofBuild(Path sheet) {
        for (Path at = sheet.toAbsolutePath().normalize().getParent(); at != null; at = at.getParent()) {
            if (at.endsWith("builds")) {
                return of(shown(sheet, at.resolveSibling("cases")));
            }
        }
        return StandardCases.all();
    }

    /** As people type it: relative where the sheet is. */
    private static Path shown(Path sheet, Path folder) {
        Path here = Path.of("").toAbsolutePath();
        return sheet.isAbsolute() || !folder.startsWith(here) ? folder : here.relativize(folder);
    }

    /**
     * The shipped cases and those of a folder, which may be absent. Throws {@link InputException} with the faults of all
     * its files.
     */
    public static List<Case> of(Path folder) {
        Map<String, Case> cases = new LinkedHashMap<>();
        StandardCases.all().forEach(kase -> cases.put(kase.id(), kase));
        Map<String, Path> own = new LinkedHashMap<>();
        List<Finding> faults = new ArrayList<>();
        for (Path file : files(folder)) {
            try {
                Case kase = CaseFile.read(file);
                Path other = own.putIfAbsent(kase.id(), file);
                if (other == null) {
                    cases.put(kase.id(), kase);
                } else {
                    faults.add(twice(kase, file, other));
                }
            } catch (InputException e) {
                faults.addAll(e.findings());
            }
        }
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
        return List.copyOf(cases.values());
    }

    private static Finding twice(Case kase, Path file, Path other) {
        return Finding.fault(
                "case-twice",
                Place.of(file.toString()),
                "'case: " + kase.id() + "' stands here again, first in " + other + "; give one another name");
    }

    private static List<Path> files(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*.{yaml,yml}")) {
            found.forEach(files::add);
        } catch (IOException e) {
            throw InputException.at(Place.of(folder.toString()), "not-readable", "cannot be read: " + e.getMessage());
        }
        Collections.sort(files);
        return files;
    }
}
