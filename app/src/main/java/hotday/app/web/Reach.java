package hotday.app.web;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** Whom the server answers: this machine alone, or the devices of the workshop's network too. */
public enum Reach {
    THIS_MACHINE("127.0.0.1"),
    WORKSHOP("0.0.0.0");

    private static final List<String> OWN = List.of("127.0.0.1", "localhost", "[::1]");

    private final String bound;

    Reach(String bound) {
        this.bound = bound;
    }

    /** Address that is listened on. */
    String bound() {
        return bound;
    }

    /** What may stand in a browser's address line. */
    Set<String> names() {
        Set<String> names = new LinkedHashSet<>(OWN);
        if (this == WORKSHOP) {
            names.addAll(addresses());
            names.addAll(hostNames());
        }
        return names;
    }

    /** Of this machine in the workshop's network, IPv4. */
    Set<String> addresses() {
        Set<String> all = new TreeSet<>();
        try {
            NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(a -> a instanceof Inet4Address && !a.isLoopbackAddress())
                    .forEach(a -> all.add(a.getHostAddress()));
        } catch (SocketException e) {
            return Set.of();
        }
        return all;
    }

    private static List<String> hostNames() {
        try {
            String name = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
            return List.of(name, name + ".local");
        } catch (UnknownHostException e) {
            return List.of();
        }
    }
}
