package hotday.app.cli;

import hotday.app.web.PageServer;
import hotday.study.shop.Shop;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hotday serve}: the page over a shop folder, for browsers on this machine. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "open the page over a shop folder, for browsers on this machine only")
final class ServeCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SHOP", description = "shop folder (hotday new makes one)")
    private Path folder;

    @Option(names = "--port", defaultValue = "8643", description = "default ${DEFAULT-VALUE}; 0 takes any free one")
    private int port;

    ServeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws InterruptedException {
        Shop shop = Shop.open(folder);
        try (PageServer server = PageServer.start(shop, port)) {
            console.result(shop.name() + ": " + server.address());
            console.say("Open this address in a browser on this machine. Stop with Ctrl-C.");
            new CountDownLatch(1).await();
        }
        return CommandLineDoor.HOLDS;
    }
}
