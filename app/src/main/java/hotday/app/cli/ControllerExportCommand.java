package hotday.app.cli;

import hotday.study.export.ControllerExport;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.sheet.ScheduleFile;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hotday controller export}: the fan controller and the compressor's rules of a build as C99. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = "write fan controller and compressor rules of a build as portable C99 with test vectors")
final class ControllerExportCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "BUILD", description = "build sheet (build.yaml)")
    private Path build;

    @Option(names = "--to", paramLabel = "FOLDER", required = true, description = "where the files are written")
    private Path folder;

    @Option(
            names = "--schedule",
            paramLabel = "FILE",
            description =
                    "with the fan schedule of this file, as 'hotday schedule --to' writes it, in place of the sheet's")
    private Optional<Path> schedule = Optional.empty();

    ControllerExportCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        BuildSheet sheet = BuildSheet.read(build);
        VehicleSpec vehicle = sheet.vehicle();
        FanSchedule curves = schedule.map(
                        file -> ScheduleFile.read(file, vehicle).schedule())
                .orElse(vehicle.schedule());
        String title = vehicle.name()
                + schedule.map(file -> ", fan schedule of " + file.getFileName())
                        .orElse("");
        List<String> files = ControllerExport.write(title, vehicle.with(curves), folder);
        console.result(title + ", in " + folder + ": " + String.join(", ", files) + ".");
        console.result("Try it: cc -std=c99 -Wall -Wextra -Werror fan_controller.c compressor_rules.c controller_test.c"
                + " -o controller_test && ./controller_test controller_vectors.txt");
        return CommandLineDoor.HOLDS;
    }
}
