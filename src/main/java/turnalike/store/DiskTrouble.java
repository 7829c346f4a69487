package turnalike.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Why a file could not be read or written, in the user's words. */
public final class DiskTrouble {
    /** Less than any file of ours needs. */
    private static final long NO_SPACE = 4096;

    private DiskTrouble() {}

    /**
     * {@return the reason in a few words: {@code access denied}, {@code the disk is full}}
     *
     * @param trouble as it was thrown
     */
    public static String reason(IOException trouble) {
        String message = String.valueOf(trouble.getMessage()).toLowerCase(Locale.ROOT);
        if (message.contains("no space left") || message.contains("not enough space") || message.contains("quota")) {
            return "the disk is full";
        }
        return trouble.getClass() == IOException.class
                ? "the disk refused"
                : trouble.getClass()
                        .getSimpleName()
                        .replace("Exception", "")
                        .replaceAll("([a-z])([A-Z])", "$1 $2")
                        .toLowerCase(Locale.ROOT);
    }

    /**
     * {@return whether that is why: by the words of it or, where the system says it in another language, by the space there}
     *
     * @param trouble as it was thrown
     * @param folder that was written to
     */
    public static boolean isFull(IOException trouble, Path folder) {
        try {
            return reason(trouble).equals("the disk is full")
                    || Files.getFileStore(folder).getUsableSpace() < NO_SPACE;
        } catch (IOException unknown) {
            return false;
        }
    }
}
