package turnalike.cli.kit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.ThreadLocalRandom;
import turnalike.sheets.Sheet;
import turnalike.store.DiskTrouble;

/** A folder that results are written to. Each file is written beside its place and then moved there, so none is ever half there. */
public final class OutputFolder {
    private final Path folder;
    private final List<Path> written = new ArrayList<>();

    public OutputFolder(Path folder) {
        this.folder = folder;
        try {
            Files.createDirectories(folder);
        } catch (IOException refused) {
            throw UserError.of(
                    folder.toString(),
                    "cannot be made a folder (" + DiskTrouble.reason(refused) + ")",
                    "choose another with --out");
        }
    }

    public void write(String name, String text) {
        write(name, text.getBytes(StandardCharsets.UTF_8));
    }

    public void write(Sheet sheet) {
        sheet.files().forEach(this::write);
    }

    public void write(String name, byte[] bytes) {
        Path target = folder.resolve(name);
        try {
            // No createTempFile: its files are the maker's alone, and whoever prints the sheets may be another.
            String random =
                    HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextLong());
            Path beside = folder.resolve(".%s.%s.part".formatted(name, random));
            try {
                Files.write(beside, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException refused) {
            if (DiskTrouble.isFull(refused, folder)) {
                throw UserError.of(
                        target.toString(),
                        "cannot be written: the disk is full",
                        "free some space, or choose another folder with --out");
            }
            throw UserError.of(
                    target.toString(),
                    "cannot be written (" + DiskTrouble.reason(refused) + ")",
                    "choose another folder with --out");
        }
        written.add(target);
    }

    public List<Path> written() {
        return List.copyOf(written);
    }
}
