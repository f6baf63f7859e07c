package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Severity;
import hotday.signals.gateway.GatewayCheck;
import hotday.signals.gateway.SheetProgram;
import hotday.signals.gateway.TranslationSheet;
import hotday.study.export.GatewayExport;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hotday gateway export}: a translation sheet as C99. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = {
            "write the translation of a sheet as portable C99 with test vectors",
            "Only a sheet that 'hotday gateway check' finds in order is written; exit status 2 otherwise."
        })
final class GatewayExportCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SHEET", description = "translation sheet (network/*.yaml)")
    private Path sheet;

    @Option(names = "--to", paramLabel = "FOLDER", required = true, description = "where the files are written")
    private Path folder;

    GatewayExportCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        TranslationSheet read = TranslationSheet.read(sheet);
        List<Finding> faults = GatewayCheck.of(read).findings().stream()
                .filter(f -> f.severity() == Severity.FAULT)
                .toList();
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
        List<String> files = GatewayExport.write(SheetProgram.of(read), folder);
        console.result(read.title() + ", in " + folder + ": " + String.join(", ", files) + ".");
        console.result("Try it: cc -std=c99 -Wall -Wextra -Werror gateway.c gateway_test.c -o gateway_test"
                + " && ./gateway_test gateway_vectors.txt");
        return CommandLineDoor.HOLDS;
    }
}
