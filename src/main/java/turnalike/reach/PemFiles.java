package turnalike.reach;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.cert.CertificateException;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.security.spec.PKCS8EncodedKeySpec;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.units.Problem;

/**
 * A certificate and its key out of two PEM files. The labels and what stands between them: RFC 7468; the key in PKCS #8, RFC 5208, of RSA or
 * of an elliptic curve (both from memory).
 */
public final class PemFiles {
    private static final long LARGEST = 1_000_000;

    private static final Pattern BLOCK =
            Pattern.compile("-----BEGIN ([A-Z0-9 ]+)-----\\s([A-Za-z0-9+/=\\s]*)-----END \\1-----");

    private static final Map<String, String> SIGNATURES = Map.of("RSA", "SHA256withRSA", "EC", "SHA256withECDSA");

    private static final String TO_PKCS8 =
            "make one with 'openssl pkcs8 -topk8 -nocrypt -in KEY -out NEW', readable by you alone";

    private PemFiles() {}

    /** Something in the files to mend. */
    public static final class Unfit extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient Problem problem;

        Unfit(Path file, String what, String mend) {
            super(what);
            this.problem = new Problem(file.toString(), what, mend);
        }

        /** {@return what is wrong, and how to mend it} */
        public Problem problem() {
            return problem;
        }
    }

    /**
     * {@return the certificate with its key}
     *
     * @param certificates the machine's own certificate first, then those of who signed it
     * @param key the private key, not encrypted
     * @param now the time at which it must hold
     * @throws Unfit when one cannot be read, is not what it should be, is out of its time, or they do not fit each other
     */
    public static OwnCertificate read(Path certificates, Path key, Instant now) throws Unfit {
        List<X509Certificate> chain = chain(certificates);
        X509Certificate own = chain.get(0);
        if (now.isAfter(own.getNotAfter().toInstant())) {
            throw new Unfit(certificates, "ended on " + day(own.getNotAfter().toInstant()), "renew the certificate");
        }
        if (now.isBefore(own.getNotBefore().toInstant())) {
            throw new Unfit(
                    certificates,
                    "begins only on " + day(own.getNotBefore().toInstant()),
                    "wait, or check this machine's clock");
        }
        if (OwnCertificate.names(own).isEmpty()) {
            throw new Unfit(
                    certificates,
                    "stands for no name or address (subjectAltName), so that every browser refuses it",
                    "have one made for the name by which this machine is called");
        }
        PrivateKey fitting = key(key);
        if (!fit(own, fitting)) {
            throw new Unfit(key, "does not fit the certificate " + certificates, "name the key that it was made for");
        }
        return new OwnCertificate(chain, fitting);
    }

    private static LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, ZoneOffset.UTC);
    }

    private static List<X509Certificate> chain(Path file) throws Unfit {
        List<X509Certificate> out = new ArrayList<>();
        Matcher block = BLOCK.matcher(text(file));
        while (block.find()) {
            if (block.group(1).equals("CERTIFICATE")) {
                out.add(certificate(file, block.group(2)));
            }
        }
        if (out.isEmpty()) {
            throw new Unfit(file, "has no certificate in it", "name a PEM file with BEGIN CERTIFICATE in it");
        }
        for (int i = 0; i + 1 < out.size(); i++) {
            if (!out.get(i).getIssuerX500Principal().equals(out.get(i + 1).getSubjectX500Principal())) {
                throw new Unfit(
                        file,
                        "certificate %d was not signed by the one after it".formatted(i + 1),
                        "put this machine's own first, then the one of who signed it, and so on");
            }
        }
        return out;
    }

    private static X509Certificate certificate(Path file, String letters) throws Unfit {
        try {
            return (X509Certificate) CertificateFactory.getInstance("X.509")
                    .generateCertificate(new ByteArrayInputStream(decoded(file, letters)));
        } catch (CertificateException unreadable) {
            throw new Unfit(file, "holds a certificate that cannot be read", "have it written anew");
        }
    }

    private static PrivateKey key(Path file) throws Unfit {
        String text = text(file);
        Matcher block = BLOCK.matcher(text);
        while (block.find()) {
            switch (block.group(1)) {
                case "PRIVATE KEY" -> {
                    return key(file, decoded(file, block.group(2)));
                }
                case "ENCRYPTED PRIVATE KEY" ->
                    throw new Unfit(file, "is an encrypted key, and nobody is asked for its password", TO_PKCS8);
                case "RSA PRIVATE KEY", "EC PRIVATE KEY" ->
                    throw new Unfit(file, "is a key in an older form, not PKCS #8", TO_PKCS8);
                default -> {
                    // a certificate or curve parameters beside the key
                }
            }
        }
        boolean older = text.contains("Proc-Type:");
        throw new Unfit(
                file,
                older ? "is an encrypted key in an older form" : "has no private key in it",
                older ? TO_PKCS8 : "name a PEM file with BEGIN PRIVATE KEY in it");
    }

    private static PrivateKey key(Path file, byte[] bytes) throws Unfit {
        for (String kind : List.of("RSA", "EC")) {
            Optional<PrivateKey> key = key(kind, bytes);
            if (key.isPresent()) {
                return key.get();
            }
        }
        throw new Unfit(file, "holds a key that is neither RSA nor EC, or cannot be read", "have one of those made");
    }

    private static Optional<PrivateKey> key(String kind, byte[] bytes) {
        try {
            return Optional.of(KeyFactory.getInstance(kind).generatePrivate(new PKCS8EncodedKeySpec(bytes)));
        } catch (GeneralSecurityException notOfThisKind) {
            return Optional.empty();
        }
    }

    /** Whether what the key signs is what the certificate tells. */
    private static boolean fit(X509Certificate certificate, PrivateKey key) {
        byte[] anything = "turnalike".getBytes(StandardCharsets.US_ASCII);
        try {
            Signature signing = Signature.getInstance(SIGNATURES.getOrDefault(key.getAlgorithm(), "none"));
            signing.initSign(key);
            signing.update(anything);
            byte[] signed = signing.sign();
            signing.initVerify(certificate.getPublicKey());
            signing.update(anything);
            return signing.verify(signed);
        } catch (GeneralSecurityException otherKind) {
            return false;
        }
    }

    private static byte[] decoded(Path file, String letters) throws Unfit {
        try {
            return Base64.getMimeDecoder().decode(letters);
        } catch (IllegalArgumentException cutShort) {
            throw new Unfit(file, "is cut short or damaged", "copy it anew");
        }
    }

    private static String text(Path file) throws Unfit {
        if (Files.isDirectory(file)) {
            throw new Unfit(file, "is a folder", "name the file in it");
        }
        if (!Files.exists(file)) {
            throw new Unfit(file, "no such file", "check the name");
        }
        try {
            if (Files.size(file) > LARGEST) {
                throw new Unfit(file, "is larger than any certificate or key", "check the name");
            }
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (AccessDeniedException denied) {
            throw new Unfit(file, "may not be read by you", "let whoever runs the program read it, and nobody else");
        } catch (IOException unreadable) {
            throw new Unfit(file, "cannot be read", "check the file");
        }
    }
}
