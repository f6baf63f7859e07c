package hotday.app.cli;

import hotday.core.finding.InputException;
import hotday.signals.gateway.GatewayCheck;
import hotday.signals.gateway.GatewayReport;
import hotday.signals.gateway.TranslationSheet;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hotday gateway check}: what is wrong with a translation sheet. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = {
            "say what is wrong with a translation sheet: signals, units, ranges, time-outs, senders, bus load, response times, delays of paths",
            "Exit status 1: something does not hold; every finding stands with file:line:column."
        })
final class GatewayCheckCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SHEET", description = "translation sheet (network/*.yaml)")
    private Path sheet;

    @Option(names = "--json", description = "for machines")
    private boolean json;

    GatewayCheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        return json ? forMachines() : forPeople();
    }

    private int forPeople() {
        GatewayReport report = GatewayCheck.of(TranslationSheet.read(sheet));
        GatewayText.print(console, report);
        return status(report);
    }

    private int forMachines() {
        try {
            GatewayReport report = GatewayCheck.of(TranslationSheet.read(sheet));
            GatewayJson.print(console, report);
            return status(report);
        } catch (InputException wrong) {
            GatewayJson.refused(console, wrong);
            return CommandLineDoor.WRONG_INPUT;
        }
    }

    private static int status(GatewayReport report) {
        return report.holds() ? CommandLineDoor.HOLDS : CommandLineDoor.DOES_NOT_HOLD;
    }
}
