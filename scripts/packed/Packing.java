import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributeView;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * What ./package needs beside Java's own tools: zip files that come out the same to the byte, and libraries without the native parts of
 * other systems. Run with -Duser.timezone=UTC: a zip file keeps local time.
 */
public final class Packing {
    private Packing() {}

    /** zip SECONDS FOLDER FILE, or trim SECONDS FOLDER SYSTEM. */
    public static void main(String[] arguments) throws IOException {
        FileTime time = FileTime.from(Instant.ofEpochSecond(Long.parseLong(arguments[1])));
        Path from = Path.of(arguments[2]);
        switch (arguments[0]) {
            case "zip" -> zip(from, Path.of(arguments[3]), time);
            case "trim" -> {
                for (Path each : listed(from)) {
                    trim(each, time, arguments[3]);
                }
            }
            default -> throw new IllegalArgumentException(arguments[0]);
        }
    }

    /** The folder's whole content, by name, with the right to run what is run; every file of one time. */
    private static void zip(Path folder, Path file, FileTime time) throws IOException {
        Files.deleteIfExists(file);
        URI name = URI.create("jar:" + file.toUri());
        try (FileSystem zip = FileSystems.newFileSystem(name, Map.of("create", "true", "enablePosixFileAttributes", "true"));
                Stream<Path> all = Files.walk(folder)) {
            List<Path> sorted = all.filter(each -> !each.equals(folder))
                    .sorted(Comparator.comparing(each -> folder.relativize(each).toString()))
                    .toList();
            for (Path each : sorted) {
                Path entry = zip.getPath("/" + folder.relativize(each));
                Files.copy(each, entry);
                Files.setPosixFilePermissions(entry, Files.getPosixFilePermissions(each));
                Files.getFileAttributeView(entry, BasicFileAttributeView.class).setTimes(time, time, time);
            }
        }
    }

    private static List<Path> listed(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    /** Leaves a library the native parts of one system alone; one that has some, but none for it, is a fault. */
    private static void trim(Path jar, FileTime time, String system) throws IOException {
        List<ZipEntry> kept = new ArrayList<>();
        boolean others = false;
        boolean own = false;
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            for (ZipEntry each : zip.stream().sorted(Comparator.comparing(ZipEntry::getName)).toList()) {
                boolean isNative = each.getName().matches(".*\\.(so|dll|dylib|jnilib)");
                boolean isOther = isNative && !each.getName().contains("/" + system + "/");
                others |= isOther;
                own |= isNative && !isOther;
                if (!isOther && !each.isDirectory()) {
                    kept.add(each);
                }
            }
            if (others && !own) {
                throw new IOException("%s has nothing for %s".formatted(jar, system));
            }
            if (others) {
                Path beside = jar.resolveSibling("trimmed");
                write(zip, kept, beside, time);
                Files.move(beside, jar, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private static void write(ZipFile zip, List<ZipEntry> entries, Path file, FileTime time) throws IOException {
        try (ZipOutputStream written = new ZipOutputStream(Files.newOutputStream(file))) {
            for (ZipEntry each : entries) {
                ZipEntry entry = new ZipEntry(each.getName());
                entry.setLastModifiedTime(time);
                written.putNextEntry(entry);
                try (InputStream in = zip.getInputStream(each)) {
                    in.transferTo(written);
                }
                written.closeEntry();
            }
        }
    }
}
