package turnalike.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/**
 * Files and folders that no one but their owner may read: what a store holds is the shop's own, and a machine may have other accounts. Where
 * the file system knows no such permissions nothing is done; Windows gives a user's own folders to that user alone.
 */
public final class OwnerOnly {
    private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-------");
    private static final Set<PosixFilePermission> FOLDER = PosixFilePermissions.fromString("rwx------");

    private OwnerOnly() {}

    /** What a new file there is made with. */
    static FileAttribute<?>[] file(Path file) {
        return isPosix(file)
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(FILE)}
                : new FileAttribute<?>[0];
    }

    /**
     * Makes a folder, and whatever is missing above it, the owner's alone; one that is there stays as it is.
     *
     * @param folder to be there after it
     * @throws IOException when it cannot be made
     */
    public static void makeFolder(Path folder) throws IOException {
        if (isPosix(folder)) {
            Files.createDirectories(folder, PosixFilePermissions.asFileAttribute(FOLDER));
        } else {
            Files.createDirectories(folder);
        }
    }

    /** Takes from all others what an earlier program, or a copy, left them. Who is not the owner cannot, and goes on without. */
    static void tighten(Path file) {
        try {
            if (isPosix(file) && !FILE.containsAll(Files.getPosixFilePermissions(file))) {
                Set<PosixFilePermission> own = Files.getPosixFilePermissions(file);
                own.retainAll(FILE);
                Files.setPosixFilePermissions(file, own);
            }
        } catch (IOException notOurs) {
            // The file can be used all the same.
        }
    }

    private static boolean isPosix(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
