package hotday.app.cli;

import hotday.study.demo.DemoShop;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Parameters;

/** The sheets that virtual cars are drawn from. */
final class DrawnBuilds {
    @Parameters(
            paramLabel = "BUILD",
            arity = "0..*",
            description = "build sheets the cars are drawn from in turn (default: both of the demo shop)")
    private List<Path> builds = List.of();

    /** @param scratch where a demo shop may be written */
    List<VehicleSpec> read(Path scratch) {
        if (builds.isEmpty()) {
            DemoShop shop = DemoShop.create(scratch.resolve("shop"));
            return DemoShop.BUILDS.stream()
                    .map(name -> BuildSheet.read(shop.build(name)).vehicle())
                    .toList();
        }
        return builds.stream().map(path -> BuildSheet.read(path).vehicle()).toList();
    }
}
