package hotday.app.cli;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.study.demo.DemoShop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code hotday new}: a shop folder to start from. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description = "make a shop folder with two invented builds to start from")
final class NewCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "FOLDER", description = "a folder that does not exist yet")
    private Path folder;

    NewCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (Files.exists(folder)) {
            throw InputException.at(
                    Place.of(folder.toString()), "exists", "is there already; give a folder that does not exist yet");
        }
        DemoShop shop = DemoShop.create(folder);
        console.result("Shop in " + folder + " with builds " + String.join(", ", DemoShop.BUILDS) + ".");
        console.result("Next: hotday check " + shop.build(DemoShop.BUILDS.get(0)));
        console.result("      hotday gateway check " + shop.network());
        console.result("      hotday gateway replay " + shop.network() + " " + shop.networkDrive());
        return CommandLineDoor.HOLDS;
    }
}
