package turnalike.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * The parts of a workbook that a table needs, unpacked within limits and packed again without compression: the library sees these and no
 * others, so that nothing can grow or hide in it.
 */
final class WorkbookParts {
    private static final int MOST_BYTES = 48 << 20;
    private static final int MOST_PARTS = 1000;

    /** A column beyond the last that a sheet can have: three letters. */
    private static final Pattern FAR_COLUMN = Pattern.compile("\\br=['\"][A-Za-z]{4,}[0-9]");

    private static final Pattern DEFINITIONS = Pattern.compile("<!(DOCTYPE|ENTITY)", Pattern.CASE_INSENSITIVE);

    private final byte[] zip;
    private final Optional<String> what;

    private WorkbookParts(byte[] zip, Optional<String> what) {
        this.zip = zip;
        this.what = what;
    }

    /** The parts, without compression; read once. Nothing where something is wrong. */
    InputStream zip() {
        return new ByteArrayInputStream(zip);
    }

    /** What is wrong, as a message says it. */
    Optional<String> what() {
        return what;
    }

    static WorkbookParts of(byte[] file) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        boolean workbook = false;
        int parts = 0;
        int room = MOST_BYTES;
        try (ZipFile in = ZipFile.builder().setByteArray(file).get();
                ZipOutputStream again = new ZipOutputStream(out)) {
            again.setLevel(Deflater.NO_COMPRESSION);
            for (ZipArchiveEntry entry : Collections.list(in.getEntries())) {
                byte[] content = unpacked(in, entry, room);
                room -= content.length;
                if (room < 0 || ++parts > MOST_PARTS) {
                    return wrong("is a workbook that unpacks to more than %d MiB".formatted(MOST_BYTES >> 20));
                }
                if (entry.getName().matches(".*\\.(xml|rels)")) {
                    if (isStrange(new String(content, StandardCharsets.ISO_8859_1))) {
                        return wrong("is a workbook that no spreadsheet wrote");
                    }
                    workbook |= entry.getName().equals("xl/workbook.xml");
                    again.putNextEntry(new ZipEntry(entry.getName()));
                    again.write(content);
                    again.closeEntry();
                }
            }
        } catch (IOException | IllegalArgumentException damaged) {
            return wrong("is a damaged workbook or zip file");
        }
        return workbook ? new WorkbookParts(out.toByteArray(), Optional.empty()) : wrong("is a zip file, no workbook");
    }

    /** One byte more than there is room for, at most. */
    private static byte[] unpacked(ZipFile zip, ZipArchiveEntry entry, int room) throws IOException {
        try (InputStream in = zip.getInputStream(entry)) {
            return in.readNBytes(room + 1);
        }
    }

    private static boolean isStrange(String xml) {
        return DEFINITIONS.matcher(xml).find()
                || xml.indexOf('\0') >= 0
                || FAR_COLUMN.matcher(xml).find();
    }

    private static WorkbookParts wrong(String what) {
        return new WorkbookParts(new byte[0], Optional.of(what));
    }
}
