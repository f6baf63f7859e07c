package hotday.app.cli;

import hotday.core.unit.Display;
import hotday.study.prove.Proof;
import hotday.study.signoff.ProofCharts;
import hotday.study.signoff.SignOffPdf;
import hotday.study.workspace.AtomicFile;
import hotday.vehicle.sheet.BuildSheet;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;

/** Writes the sign-off document and the pictures of a proof to where somebody asked for them. */
final class SignOffDoor {
    private SignOffDoor() {}

    static void write(Path path, BuildSheet sheet, Proof proof) {
        AtomicFile.write(path, out -> SignOffPdf.write(sheet, proof, Version.NUMBER, LocalDate.now(), out));
    }

    static void plots(Path folder, BuildSheet sheet, Proof proof) {
        new ProofCharts(proof, new Display(sheet.units())).svg().forEach((name, text) -> {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            AtomicFile.write(folder.resolve(name), out -> out.write(bytes));
        });
    }
}
