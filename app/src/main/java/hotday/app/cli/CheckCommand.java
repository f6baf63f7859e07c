package hotday.app.cli;

import hotday.core.finding.InputException;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.vehicle.sheet.Assumption;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hotday check}: reads a build sheet and says what is wrong, all of it at once. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "read a build sheet and say what is wrong, with file:line:column")
final class CheckCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "BUILD", description = "build sheet (build.yaml)")
    private Path build;

    @Option(names = "--json", description = "for machines")
    private boolean json;

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        return json ? forMachines() : forPeople();
    }

    private int forPeople() {
        text(BuildSheet.read(build));
        return CommandLineDoor.HOLDS;
    }

    /** Faults are a result here: they go to standard output as everything that machines read. */
    private int forMachines() {
        try {
            CheckJson.print(console, BuildSheet.read(build));
            return CommandLineDoor.HOLDS;
        } catch (InputException wrong) {
            CheckJson.print(console, wrong);
            return CommandLineDoor.WRONG_INPUT;
        }
    }

    private void text(BuildSheet sheet) {
        VehicleSpec v = sheet.vehicle();
        Display show = new Display(sheet.units());
        console.result(v.name() + ": the sheet is in order.");
        console.result("  vehicle   " + show.format(Quantity.MASS, v.roadLoad().mass()) + " with load, "
                + show.format(Quantity.VOLUME, v.engine().displacement()) + " "
                + v.engine().fuel().name().toLowerCase(java.util.Locale.ROOT) + ", "
                + show.format(Quantity.POWER, v.engine().ratedPower()));
        console.result(
                "  radiator  " + show.format(Quantity.LENGTH, v.radiator().width()) + " x "
                        + show.format(Quantity.LENGTH, v.radiator().height()) + " x "
                        + show.format(Quantity.LENGTH, v.radiator().depth()));
        console.result(
                "  must stand " + show.format(Quantity.TEMPERATURE, v.designAmbient()) + " outside, coolant below "
                        + show.format(Quantity.TEMPERATURE, v.limits().coolant()));
        sheet.remarks().forEach(remark -> console.result("  look at " + remark));
        if (!sheet.assumptions().isEmpty()) {
            console.result("");
            console.result("Left open and filled in (type the key to replace it):");
            for (Assumption a : sheet.assumptions()) {
                console.result(String.format("  %-30s %-22s %s", a.key(), a.value(), a.reason()));
            }
        }
    }
}
