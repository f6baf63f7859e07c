package hotday.app.cli;

import hotday.study.wiring.WiringCheck;
import hotday.vehicle.cases.Cases;
import hotday.vehicle.sheet.BuildSheet;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hotday wiring}: cable, fuse, drive and supply of the fan. */
@Command(
        name = "wiring",
        mixinStandardHelpOptions = true,
        description = {
            "whether the fan of a build is wired right: cable, fuse, relay or driver, ground, alternator at hot idle, after-run",
            "Exit status 1: something is at fault; every finding stands with file:line:column."
        })
final class WiringCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "BUILD", description = "build sheet (build.yaml) with a wiring block")
    private Path build;

    @Option(names = "--json", description = "for machines")
    private boolean json;

    WiringCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        WiringCheck check = WiringCheck.of(build, BuildSheet.read(build), Cases.ofBuild(build));
        if (json) {
            WiringJson.print(console, check);
        } else {
            WiringText.print(console, check);
        }
        return check.holds() ? CommandLineDoor.HOLDS : CommandLineDoor.DOES_NOT_HOLD;
    }
}
