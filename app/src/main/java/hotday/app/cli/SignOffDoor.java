package hotday.app.cli;

import hotday.study.prove.Proof;
import hotday.study.workspace.AtomicFile;
import hotday.vehicle.sheet.BuildSheet;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Writes the sign-off document of a proof. */
final class SignOffDoor {
    private SignOffDoor() {}

    static void write(Path path, BuildSheet sheet, Proof proof) {
        AtomicFile.write(
                path, out -> out.write((sheet.vehicle().name() + proof.build()).getBytes(StandardCharsets.UTF_8)));
    }
}
