package hotday.app.cli;

import hotday.app.web.PageWording;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.signals.channel.ChannelMap;
import hotday.study.demo.DemoShop;
import hotday.study.demo.VirtualCar;
import hotday.study.prove.CeilingEnds;
import hotday.study.prove.CeilingReport;
import hotday.study.prove.HotDay;
import hotday.study.prove.Proof;
import hotday.study.prove.Prove;
import hotday.study.prove.ProveRequest;
import hotday.study.shop.ProofOrder;
import hotday.study.shop.Proofs;
import hotday.study.shop.Shop;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.sheet.BuildSheet;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code hotday demo}: the whole way through on two invented builds, the hidden truth shown at the end. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = "the whole way through on an invented shop: check, predict, a virtual mild day, prove, sign off")
final class DemoCommand implements Callable<Integer> {
    private final Console console;

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            defaultValue = "hotday-demo",
            description = "where the shop is written (default ${DEFAULT-VALUE})")
    private Path folder;

    @Option(
            names = "--seed",
            defaultValue = "7",
            description = "another number, other hidden cars (default ${DEFAULT-VALUE})")
    private long seed;

    DemoCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        DemoShop shop = DemoShop.create(folder);
        console.result("An invented shop, written to " + folder + ".");
        int inside = 0;
        for (String name : DemoShop.BUILDS) {
            inside += walk(shop, name);
        }
        console.result("");
        console.result(inside + " of "
                + DemoShop.BUILDS.size() * cases().size()
                + " hidden ceilings lie inside their 90 % interval (nine in ten are meant to).");
        console.result(CeilingText.CAUTION);
        return CommandLineDoor.HOLDS;
    }

    private static List<Case> cases() {
        return StandardCases.all().stream().filter(c -> !c.forCold()).toList();
    }

    private int walk(DemoShop shop, String name) {
        BuildSheet sheet = BuildSheet.read(shop.build(name));
        Display show = new Display(sheet.units());
        console.result("");
        console.result("== " + sheet.vehicle().name() + " ==");
        console.result("1 check    " + shop.build(name) + ": in order, "
                + sheet.assumptions().size() + " values left open and filled in");
        console.progress(name + ": predict", 0.1);
        List<CeilingReport> before = HotDay.ofSheet(sheet.vehicle(), cases(), seed);
        console.clear();
        console.result("2 predict  from the sheet alone:");
        CeilingText.lines(before, show).forEach(l -> console.result("         " + l));
        console.progress(name + ": a virtual mild day", 0.2);
        VirtualCar car = shop.drive(name, seed);
        console.clear();
        console.result(
                "3 drive    a car with hidden values drives a mild day: " + car.commissioning() + ", " + car.another());
        Proof proof = prove(shop, sheet, car);
        console.result(String.format(
                "4 prove    fitted to within %s rms, another day predicted to within %s rms; after the run:",
                show.format(Quantity.TEMPERATURE_DIFFERENCE, proof.pooledFit().rmse()),
                show.format(
                        Quantity.TEMPERATURE_DIFFERENCE,
                        proof.pooledPrediction().rmse())));
        CeilingText.lines(proof.ceilings(), show).forEach(l -> console.result("         " + l));
        sign(shop, name, sheet, car, proof);
        SignOffDoor.plots(shop.plots(name), sheet, proof);
        console.result("5 sign off " + shop.signOff(name) + ", pictures in " + shop.plots(name));
        return truth(car, proof, show);
    }

    /** As the page does it, so that the page shows what was done here. */
    private void sign(DemoShop shop, String name, BuildSheet sheet, VirtualCar car, Proof proof) {
        List<String> fit = List.of(ChannelMap.nameOf(car.commissioning()));
        List<String> predict = List.of(ChannelMap.nameOf(car.another()));
        Proofs proofs = Shop.open(shop.folder()).proofs();
        ProofOrder order = new ProofOrder(name, fit, predict, false, seed);
        proofs.signOff(name, proofs.keep(order, "demo", PageWording.PAGE, sheet, proof));
    }

    private Proof prove(DemoShop shop, BuildSheet sheet, VirtualCar car) {
        ChannelMap map = ChannelMap.read(shop.channels());
        Proof proof = Prove.prove(new ProveRequest(
                sheet.vehicle(),
                cases(),
                List.of(map.recording(car.commissioning())),
                List.of(map.recording(car.another())),
                false,
                seed,
                Math.max(1, Runtime.getRuntime().availableProcessors()),
                console::progress,
                () -> false));
        console.clear();
        return proof;
    }

    private int truth(VirtualCar car, Proof proof, Display show) {
        console.result("6 truth    what the hidden car really stands:");
        List<Ceiling> truth = car.truth(cases());
        int inside = 0;
        for (int i = 0; i < truth.size(); i++) {
            CeilingReport said = proof.ceilings().get(i);
            double real = truth.get(i).ambient();
            boolean hit = real >= said.low() && real <= said.high();
            inside += hit ? 1 : 0;
            console.result(String.format(
                    "           %-38s said %s to %s, truth %s %s  %s",
                    said.best().kase().title(),
                    CeilingEnds.words(said.low(), show),
                    CeilingEnds.words(said.high(), show),
                    CeilingEnds.words(real, show),
                    show.unitFor(Quantity.TEMPERATURE).symbol(),
                    hit ? "inside" : "OUTSIDE"));
        }
        return inside;
    }
}
