package turnalike.web;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import turnalike.reach.Outside;
import turnalike.reach.OwnCertificate;
import turnalike.reach.PublicAddress;
import turnalike.web.lan.LocalNetwork;

/** Every address by which the page may be asked for. The port is known only when it is open. */
final class Origins {
    private final Outside outside;
    private final String scheme;
    private volatile int port;

    Origins(Outside outside) {
        this.outside = outside;
        this.scheme = outside.certificate().isPresent() ? "https" : "http";
    }

    void opened(int at) {
        port = at;
    }

    private String at(String host) {
        return PublicAddress.origin(scheme, host, port);
    }

    private List<String> certified() {
        return outside.certificate().map(OwnCertificate::names).orElse(List.of());
    }

    /** As browsers write them; a name may begin with {@code *.}. */
    Set<String> all() {
        Set<String> all = new HashSet<>(Set.of(at("localhost"), at("[::1]")));
        if (outside.behind().isEmpty()) {
            // Else a server before us that does not say by which name it was asked would pass for this machine.
            all.add(at("127.0.0.1"));
        }
        if (outside.lan()) {
            LocalNetwork.addresses().forEach(each -> all.add(at(each)));
        }
        certified().forEach(each -> all.add(at(each)));
        outside.behind().ifPresent(each -> all.add(each.origin()));
        return all;
    }

    /** What to open on this machine: a name that the certificate bears, where another would bring a warning. */
    String own() {
        List<String> names = certified();
        boolean warned = outside.lan() && !names.isEmpty() && !names.contains("localhost");
        return (warned ? named().findFirst().orElse(at("localhost")) : at("localhost")) + "/";
    }

    /** What to open on other devices. */
    List<String> others() {
        Stream<String> here = !outside.lan()
                ? Stream.empty()
                : outside.certificate().isPresent()
                        ? named()
                        : LocalNetwork.addresses().stream().map(this::at);
        return Stream.concat(outside.behind().map(PublicAddress::origin).stream(), here)
                .map(each -> each + "/")
                .toList();
    }

    private Stream<String> named() {
        return certified().stream()
                .filter(each -> !each.startsWith("*") && !each.equals("localhost") && !each.startsWith("127."))
                .map(this::at);
    }
}
