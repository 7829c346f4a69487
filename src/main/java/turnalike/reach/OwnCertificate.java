package turnalike.reach;

import java.security.PrivateKey;
import java.security.cert.CertificateParsingException;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The operator's certificate and the key that fits it.
 *
 * @param chain the machine's own certificate, then whoever signed it, and so on
 * @param key the private key of the first
 */
public record OwnCertificate(List<X509Certificate> chain, PrivateKey key) {
    private static final int DNS_NAME = 2;
    private static final int IP_ADDRESS = 7;

    public OwnCertificate {
        chain = List.copyOf(chain);
    }

    /** {@return the names and then the IP addresses that it stands for, names in small letters; one may begin with {@code *.}} */
    public List<String> names() {
        return names(chain.get(0));
    }

    static List<String> names(X509Certificate certificate) {
        try {
            Collection<List<?>> all = Optional.ofNullable(certificate.getSubjectAlternativeNames())
                    .orElse(List.of());
            return Stream.concat(ofKind(all, DNS_NAME), ofKind(all, IP_ADDRESS)).toList();
        } catch (CertificateParsingException unreadable) {
            return List.of();
        }
    }

    private static Stream<String> ofKind(Collection<List<?>> all, int kind) {
        return all.stream()
                .filter(each -> Integer.valueOf(kind).equals(each.get(0)))
                .map(each -> String.valueOf(each.get(1)).toLowerCase(java.util.Locale.ROOT))
                .map(each -> each.contains(":") ? "[" + each + "]" : each);
    }

    /** {@return when it ends} */
    public Instant end() {
        return chain.get(0).getNotAfter().toInstant();
    }
}
