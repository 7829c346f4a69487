package turnalike.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;

/**
 * Files that are there whole or not at all: written under another name in the same folder and then given theirs, which never replaces a
 * file that has it.
 */
final class AtomicFile {
    private AtomicFile() {}

    /**
     * An empty file under a name nobody has, in the same folder, that no one but this user may read: what a store holds is the shop's own.
     * SQLite takes an empty file for a new store and keeps its permissions.
     */
    static Path begin(Path file) throws IOException {
        String random = HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextLong());
        Path unfinished = file.resolveSibling(".%s.%s.part".formatted(file.getFileName(), random));
        return Files.createFile(unfinished, OwnerOnly.file(file));
    }

    /** Gives the finished file its name, for good. False, and the unfinished one gone, when another program was first. */
    static boolean publish(Path unfinished, Path file) throws IOException {
        try {
            sync(unfinished, StandardOpenOption.WRITE);
            giveName(unfinished, file);
            syncFolder(file);
            return true;
        } catch (FileAlreadyExistsException another) {
            return false;
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    private static void giveName(Path unfinished, Path file) throws IOException {
        try {
            Files.createLink(file, unfinished);
        } catch (FileAlreadyExistsException another) {
            throw another;
        } catch (IOException | UnsupportedOperationException noLinks) {
            // A memory stick's file system: a move looks first and then moves, between which a second program could
            // slip in.
            Files.move(unfinished, file);
        }
    }

    private static void syncFolder(Path file) {
        try {
            sync(folder(file), StandardOpenOption.READ);
        } catch (IOException notHere) {
            // Windows cannot open a folder; its file systems write names through their own journal.
        }
    }

    private static void sync(Path path, StandardOpenOption how) throws IOException {
        try (FileChannel channel = FileChannel.open(path, how)) {
            channel.force(true);
        }
    }

    static Path folder(Path file) {
        Path parent = file.toAbsolutePath().getParent();
        if (parent == null) {
            throw new IllegalArgumentException("'%s' is no file".formatted(file));
        }
        return parent;
    }
}
