package turnalike.cli.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;

class InputFilesTest {
    @TempDir
    Path folder;

    private void assertRefused(byte[] bytes, String what) throws IOException {
        Path file = Files.write(folder.resolve("pieces.csv"), bytes);
        Ran ran = Ran.here("control", file.toString(), "--column", "mass_g");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("pieces.csv: is " + what).contains("save a table as CSV in UTF-8");
    }

    @Test
    void a_workbook_named_csv_is_called_what_it_is() throws IOException {
        ByteArrayOutputStream zip = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(zip)) {
            out.putNextEntry(new ZipEntry("xl/workbook.xml"));
            out.write("<workbook/>".getBytes(StandardCharsets.UTF_8));
        }
        assertRefused(zip.toByteArray(), "a spreadsheet's workbook");
        assertRefused(new byte[] {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0, 1, 2}, "a spreadsheet's older workbook");
    }

    @Test
    void other_text_and_other_documents_too() throws IOException {
        assertRefused("\ufeffpiece,mass_g\n1,2\n".getBytes(StandardCharsets.UTF_16LE), "text in UTF-16");
        assertRefused("\ufeffpiece,mass_g\n1,2\n".getBytes(StandardCharsets.UTF_16BE), "text in UTF-16");
        assertRefused("%PDF-1.7 ...".getBytes(StandardCharsets.US_ASCII), "a PDF");
    }
}
