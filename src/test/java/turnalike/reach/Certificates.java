package turnalike.reach;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/** Certificates that sign themselves, made by Java's keytool, as PEM files. */
public final class Certificates {
    private static final String PASSWORD = "changeit";

    private Certificates() {}

    /** A certificate and its key. */
    public record Pair(Path certificate, Path key) {}

    /** One of 30 days from now, for these names: {@code dns:bench.test,ip:127.0.0.1}. */
    public static Pair of(Path folder, String name, String algorithm, String names) throws Exception {
        return of(folder, name, algorithm, "-0d", List.of("-ext", "san=" + names));
    }

    static Pair of(Path folder, String name, String algorithm, String start, List<String> more) throws Exception {
        Path store = folder.resolve(name + ".p12");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                "-J-XX:TieredStopAtLevel=1",
                "-genkeypair",
                "-alias",
                "one",
                "-keyalg",
                algorithm,
                "-dname",
                "CN=invented for a test",
                "-startdate",
                start,
                "-validity",
                "30",
                "-storetype",
                "PKCS12",
                "-keystore",
                store.toString(),
                "-storepass",
                PASSWORD));
        command.addAll(more);
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        KeyStore keys = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(store)) {
            keys.load(in, PASSWORD.toCharArray());
        }
        return new Pair(
                pem(
                        folder.resolve(name + ".crt"),
                        "CERTIFICATE",
                        keys.getCertificate("one").getEncoded()),
                pem(
                        folder.resolve(name + ".key"),
                        "PRIVATE KEY",
                        keys.getKey("one", PASSWORD.toCharArray()).getEncoded()));
    }

    static Path pem(Path file, String label, byte[] bytes) throws Exception {
        return Files.writeString(
                file,
                "-----BEGIN %s-----\n%s\n-----END %s-----\n"
                        .formatted(label, Base64.getMimeEncoder().encodeToString(bytes), label));
    }
}
