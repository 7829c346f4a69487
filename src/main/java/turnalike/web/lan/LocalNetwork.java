package turnalike.web.lan;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** This machine's own addresses on the networks it is joined to. */
public final class LocalNetwork {
    private LocalNetwork() {}

    /**
     * Every IPv4 address of the interfaces that are up, the loopback's left out: of a private network or not, since which network is to be
     * trusted is for whoever shares the page to say. A name is never taken, since a name can be rebound.
     */
    public static List<String> addresses() {
        List<String> out = new ArrayList<>();
        try {
            for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
                if (!each.isUp() || each.isLoopback()) {
                    continue;
                }
                for (InetAddress address : Collections.list(each.getInetAddresses())) {
                    if (address instanceof Inet4Address) {
                        out.add(address.getHostAddress());
                    }
                }
            }
        } catch (SocketException unknown) {
            return List.of();
        }
        return List.copyOf(out);
    }
}
