package turnalike.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** SHA-256 (FIPS 180-4), by which damage to a text or to the order of steps is noticed. No defence against ill will. */
final class Digest {
    private Digest() {}

    static String of(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** The seal of a step: over the seal before it and the step's own parts, none of which holds a line end. */
    static String seal(String sealBefore, List<String> parts) {
        return of(sealBefore + "\n" + String.join("\n", parts));
    }
}
