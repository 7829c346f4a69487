package turnalike.cli.page;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import turnalike.cli.kit.UserError;
import turnalike.reach.Outside;
import turnalike.reach.OwnCertificate;
import turnalike.reach.PemFiles;
import turnalike.reach.PublicAddress;

/** How the page is reached from elsewhere: the operator's certificate, and the server before it. */
final class OutsideOptions {
    private static final Duration SOON = Duration.ofDays(14);

    @Option(
            names = "--tls-cert",
            paramLabel = "FILE",
            description =
                    "Serve encrypted (HTTPS) by this certificate: a PEM file, this machine's own first, then of who signed it.")
    private Optional<Path> certificate = Optional.empty();

    @Option(
            names = "--tls-key",
            paramLabel = "FILE",
            description =
                    "The key that fits the certificate: a PEM file, PKCS #8, of RSA or an elliptic curve, not encrypted.")
    private Optional<Path> key = Optional.empty();

    @Option(
            names = "--behind",
            paramLabel = "ADDRESS",
            description = "The address of a server of your own on this machine that passes requests on, such as"
                    + " https://turn.example.org; whoever comes by it must be paired.")
    private Optional<String> behind = Optional.empty();

    /** What the options come to. */
    Outside read(boolean lan, Instant now) {
        return new Outside(lan, certificate(now), behind.map(OutsideOptions::address));
    }

    private Optional<OwnCertificate> certificate(Instant now) {
        if (certificate.isPresent() != key.isPresent()) {
            String missing = certificate.isPresent() ? "--tls-key" : "--tls-cert";
            throw UserError.of(missing, "is missing", "give a certificate and its key, or neither");
        }
        try {
            return certificate.isEmpty()
                    ? Optional.empty()
                    : Optional.of(PemFiles.read(certificate.get(), key.orElseThrow(), now));
        } catch (PemFiles.Unfit unfit) {
            throw new UserError(List.of(unfit.problem()));
        }
    }

    private static PublicAddress address(String text) {
        return PublicAddress.parse(text)
                .orElseThrow(() -> UserError.of(
                        "--behind",
                        "'%s' is no address of a server".formatted(text),
                        "give one such as https://turn.example.org, without a path"));
    }

    /** What whoever starts it should know of it. */
    List<String> notes(boolean lan, Instant now) {
        List<String> notes = new ArrayList<>();
        Optional<Instant> end = certificate(now).map(OwnCertificate::end);
        if (lan && end.isEmpty()) {
            notes.add("What passes over the network is not encrypted: share only on one you trust.");
        }
        end.filter(at -> at.isBefore(now.plus(SOON)))
                .ifPresent(at -> notes.add("Note: the certificate ends on %s; renew it and start again."
                        .formatted(LocalDate.ofInstant(at, ZoneOffset.UTC))));
        return notes;
    }
}
