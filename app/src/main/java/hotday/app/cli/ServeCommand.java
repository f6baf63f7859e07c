package hotday.app.cli;

import hotday.app.web.PageServer;
import hotday.app.web.Reach;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.study.shop.Shop;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hotday serve}: the page over a shop folder, for browsers on this machine or, paired, in the workshop. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "open the page over a shop folder, for browsers on this machine (with --lan in the workshop too)")
final class ServeCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SHOP", description = "shop folder (hotday new makes one)")
    private Path folder;

    @Option(names = "--port", defaultValue = "8643", description = "default ${DEFAULT-VALUE}; 0 takes any free one")
    private int port;

    @Option(
            names = "--lan",
            description =
                    "answer other devices of this network too, after they were told a code; what they exchange is not encrypted, so only in a network you trust")
    private boolean lan;

    ServeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > 65_535) {
            throw InputException.at(
                    Place.of("--port"), "out-of-range", "there is no port " + port + ": give one from 0 to 65535");
        }
        Shop shop = Shop.open(folder);
        try (PageServer server = PageServer.start(shop, port, lan ? Reach.WORKSHOP : Reach.THIS_MACHINE)) {
            console.result(shop.name() + ": " + server.address());
            console.say("Open this address in a browser on this machine. Stop with Ctrl-C.");
            server.code().ifPresent(code -> others(server, code));
            new CountDownLatch(1).await();
        }
        return CommandLineDoor.HOLDS;
    }

    private void others(PageServer server, String code) {
        if (server.addresses().isEmpty()) {
            console.say("This machine is in no network; other devices cannot reach it.");
            return;
        }
        console.result("Other devices: " + String.join("  or  ", server.addresses()));
        console.result("Code for them: " + code.substring(0, 4) + " " + code.substring(4));
    }
}
