package hotday.app.cli;

import hotday.study.prove.Proof;
import hotday.study.signoff.SignOffPdf;
import hotday.study.workspace.AtomicFile;
import hotday.vehicle.sheet.BuildSheet;
import java.nio.file.Path;
import java.time.LocalDate;

/** Writes the sign-off document of a proof to where somebody asked for it. */
final class SignOffDoor {
    private SignOffDoor() {}

    static void write(Path path, BuildSheet sheet, Proof proof) {
        AtomicFile.write(path, out -> SignOffPdf.write(sheet, proof, Version.NUMBER, LocalDate.now(), out));
    }
}
