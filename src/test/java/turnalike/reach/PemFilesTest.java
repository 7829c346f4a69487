package turnalike.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;

class PemFilesTest {
    @TempDir
    private static Path folder;

    private static Certificates.Pair rsa;
    private static Certificates.Pair curve;

    @BeforeAll
    static void make() throws Exception {
        rsa = Certificates.of(folder, "rsa", "RSA", "dns:bench.test,dns:*.Shop.test,ip:127.0.0.1,ip:fe80::1");
        curve = Certificates.of(folder, "curve", "EC", "dns:bench.test");
    }

    private static Path file(String name, String text) throws Exception {
        return Files.writeString(folder.resolve(name), text);
    }

    private static void assertUnfit(Path certificate, Path key, String... parts) {
        assertThatThrownBy(() -> PemFiles.read(certificate, key, Instant.now()))
                .isInstanceOfSatisfying(PemFiles.Unfit.class, unfit -> assertThat(
                                unfit.problem().line())
                        .contains(parts)
                        .doesNotContain("Exception"));
    }

    @Test
    void a_certificate_is_read_with_its_key_and_the_names_it_stands_for() throws Exception {
        OwnCertificate own = PemFiles.read(rsa.certificate(), rsa.key(), Instant.now());
        assertThat(own.names()).containsExactly("bench.test", "*.shop.test", "127.0.0.1", "[fe80:0:0:0:0:0:0:1]");
        assertThat(own.end()).isAfter(Instant.now());
        assertThat(PemFiles.read(curve.certificate(), curve.key(), Instant.now())
                        .key()
                        .getAlgorithm())
                .isEqualTo("EC");
    }

    @Test
    void a_key_of_another_certificate_does_not_fit() throws Exception {
        assertUnfit(rsa.certificate(), curve.key(), "curve.key", "does not fit");
        Certificates.Pair other = Certificates.of(folder, "other", "RSA", "dns:bench.test");
        assertUnfit(rsa.certificate(), other.key(), "other.key", "does not fit", "rsa.crt");
    }

    @Test
    void one_that_is_out_of_its_time_is_told_with_the_day() {
        assertThatThrownBy(() -> PemFiles.read(
                        rsa.certificate(), rsa.key(), Instant.now().plusSeconds(31 * 86_400)))
                .hasMessageMatching("ended on 20\\d\\d-\\d\\d-\\d\\d");
        assertThatThrownBy(() -> PemFiles.read(
                        rsa.certificate(), rsa.key(), Instant.now().minusSeconds(2 * 86_400)))
                .hasMessageMatching("begins only on 20\\d\\d-\\d\\d-\\d\\d");
    }

    @Test
    void what_is_no_certificate_or_no_key_is_told() throws Exception {
        String key = Files.readString(rsa.key());
        assertUnfit(folder.resolve("nowhere"), rsa.key(), "no such file");
        assertUnfit(folder, rsa.key(), "is a folder");
        assertUnfit(rsa.key(), rsa.key(), "has no certificate in it");
        assertUnfit(rsa.certificate(), rsa.certificate(), "has no private key in it");
        assertUnfit(
                rsa.certificate(),
                file("locked", key.replace("PRIVATE", "ENCRYPTED PRIVATE")),
                "is an encrypted key",
                "openssl pkcs8");
        assertUnfit(
                rsa.certificate(), file("older", key.replace("PRIVATE", "RSA PRIVATE")), "older form", "openssl pkcs8");
        assertUnfit(
                rsa.certificate(),
                file(
                        "older-locked",
                        key.replace("PRIVATE", "RSA PRIVATE")
                                .replace("KEY-----\n", "KEY-----\nProc-Type: 4,ENCRYPTED\n\n")),
                "is an encrypted key");
        assertUnfit(rsa.certificate(), file("short", key.substring(0, key.length() / 2)), "has no private key");
        assertUnfit(
                rsa.certificate(),
                Certificates.pem(folder.resolve("noise"), "PRIVATE KEY", new byte[] {1, 2, 3}),
                "neither RSA nor EC");
        assertUnfit(
                Certificates.pem(folder.resolve("noise.crt"), "CERTIFICATE", new byte[] {1, 2, 3}),
                rsa.key(),
                "cannot be read");
    }

    @Test
    void a_certificate_without_a_name_or_with_another_s_signer_is_refused() throws Exception {
        Certificates.Pair nameless = Certificates.of(folder, "nameless", "EC", "-0d", List.of());
        assertUnfit(nameless.certificate(), nameless.key(), "stands for no name", "subjectAltName");
        Certificates.Pair stranger =
                Certificates.of(folder, "stranger", "EC", "-0d", List.of("-dname", "CN=somebody else"));
        Path chain =
                file("chain.crt", Files.readString(curve.certificate()) + Files.readString(stranger.certificate()));
        assertUnfit(chain, curve.key(), "certificate 1 was not signed by the one after it");
    }

    @Test
    void the_command_tells_it_on_one_line_before_a_store_is_made() {
        Path store = folder.resolve("none.db");
        Ran unfit = Ran.here(
                "serve",
                "--store",
                store.toString(),
                "--tls-cert",
                rsa.certificate().toString(),
                "--tls-key",
                curve.key().toString());
        assertThat(unfit.code()).isEqualTo(2);
        assertThat(unfit.err()).hasLineCount(1).contains("does not fit", "; ");
        Ran alone = Ran.here("serve", "--store", store.toString(), "--tls-key", "k");
        assertThat(alone.code()).isEqualTo(2);
        assertThat(alone.err()).startsWith("turnalike: --tls-cert: is missing");
        Ran nowhere = Ran.here("serve", "--store", store.toString(), "--behind", "turn.example.org/shop");
        assertThat(nowhere.code()).isEqualTo(2);
        assertThat(nowhere.err()).startsWith("turnalike: --behind: 'turn.example.org/shop' is no address");
        assertThat(store).doesNotExist();
    }

    @Test
    void a_public_address_is_kept_as_browsers_write_it() {
        assertThat(PublicAddress.parse("https://Turn.Example.org:443/"))
                .contains(new PublicAddress("https://turn.example.org"));
        assertThat(PublicAddress.parse("http://10.0.0.2:8080")).contains(new PublicAddress("http://10.0.0.2:8080"));
        for (String none : List.of("turn.example.org", "ftp://a", "https://", "https://a/b", "https://u@a", "a b")) {
            assertThat(PublicAddress.parse(none)).as(none).isEmpty();
        }
    }
}
