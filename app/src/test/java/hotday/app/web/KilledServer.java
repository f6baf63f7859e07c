package hotday.app.web;

import hotday.study.shop.Shop;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;

/** A server without the page in a process of its own, for {@link KillTest}: prints its address and serves until it is killed. */
final class KilledServer {
    private KilledServer() {}

    public static void main(String[] args) throws InterruptedException {
        PageServer server = PageServer.started(Shop.open(Path.of(args[0])), 0, Reach.THIS_MACHINE, false);
        System.out.println(server.address());
        new CountDownLatch(1).await();
    }
}
