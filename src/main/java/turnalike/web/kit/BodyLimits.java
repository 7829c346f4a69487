package turnalike.web.kit;

import java.util.regex.Pattern;
import turnalike.units.Problem;

/** How much may be sent, by where it goes: what a person types or pastes, or a file with a photograph. */
public final class BodyLimits {
    /** What a person can type or paste in one go is far below it. */
    public static final int TYPED = 1 << 20;

    /** A photograph of 50 megapixels as cameras write them is below it, and so is a job given with many small ones. */
    public static final int FILE = 32 << 20;

    private static final Pattern FILES = Pattern.compile("/copy|/api/trace|/jobs/(?:file|[^/]+/(?:copy|check))");

    private BodyLimits() {}

    /** Whether files may be sent there. */
    public static boolean isForFiles(String path) {
        return FILES.matcher(path).matches();
    }

    /** The most bytes of a body sent there. */
    public static int most(String path) {
        return isForFiles(path) ? FILE : TYPED;
    }

    /** What is said of a larger one. */
    public static Problem tooLarge(String path) {
        return isForFiles(path)
                ? new Problem("upload", "is larger than 32 megabytes", "make the picture smaller, or save it as JPEG")
                : new Problem("upload", "is larger than a megabyte", "send a smaller file");
    }
}
