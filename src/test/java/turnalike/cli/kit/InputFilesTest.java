package turnalike.cli.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;
import turnalike.job.InventedLeg;
import turnalike.workbook.WorkbookTable;
import turnalike.workbook.Workbooks;

class InputFilesTest {
    @TempDir
    Path folder;

    private void assertRefused(byte[] bytes, String what) throws IOException {
        Path file = Files.write(folder.resolve("pieces.csv"), bytes);
        Ran ran = Ran.here("control", file.toString(), "--column", "mass_g");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("pieces.csv: is " + what).contains("save a table as .xlsx or as CSV in UTF-8");
    }

    @Test
    void a_workbook_is_read_whatever_its_name() throws IOException {
        String rows =
                "<row r='1'><c r='A1' t='inlineStr'><is><t>piece</t></is></c><c r='B1' t='inlineStr'><is><t>mass_g</t></is></c></row>"
                        + "<row r='2'><c r='A2'><v>1</v></c><c r='B2'><v>213.5</v></c></row>"
                        + "<row r='3'><c r='A3'><v>2</v></c><c r='B3'><v>214</v></c></row>";
        for (String name : List.of("pieces.xlsx", "pieces.csv")) {
            Path file = Files.write(folder.resolve(name), Workbooks.of(rows));
            Ran ran = Ran.here("control", file.toString(), "--column", "mass_g");
            assertThat(ran.code()).as(ran.err()).isZero();
            assertThat(ran.out()).contains("213.75");
        }
    }

    /** A person opens the workbook and reads what the page told; programs find grams in the CSV as ever. */
    @Test
    void the_workbook_of_a_job_kept_in_ounces_is_in_ounces_and_its_csv_in_grams() throws IOException {
        String job = InventedLeg.text("\"tolerances\": {\"scale_oz\": 0.1},", "");
        Path file = Files.writeString(folder.resolve("leg.job.json"), job);
        String store = folder.resolve("shop.db").toString();
        Matcher kept = Pattern.compile("\\w{4}-\\w{4}-\\w{4}")
                .matcher(Ran.here("keep", file.toString(), "--store", store, "--json")
                        .out());
        assertThat(kept.find()).isTrue();
        String id = kept.group();
        assertThat(Ran.here("log", id, "--store", store, "--piece", "1", "--mass", "7.7 oz")
                        .code())
                .isZero();
        for (String name : List.of("pieces.xlsx", "pieces.csv")) {
            Path out = folder.resolve(name);
            Ran ran = Ran.here("give", id, "--store", store, "--pieces", "--out", out.toString());
            assertThat(ran.code()).as(ran.err()).isZero();
        }
        assertThat(WorkbookTable.read(Files.readAllBytes(folder.resolve("pieces.xlsx")), "pieces.xlsx")
                        .text())
                .isEqualToNormalizingNewlines("\"piece\",\"mass_oz\"\n\"1\",\"7.7\"\n");
        assertThat(Files.readString(folder.resolve("pieces.csv")))
                .isEqualToNormalizingNewlines("piece,mass_g\n1,218.2913280625\n");
        assertThat(Ran.here("give", id, "--store", store, "--pieces").out()).contains("mass_g");
    }

    @Test
    void a_workbook_that_cannot_be_read_is_told_with_its_cell() throws IOException {
        byte[] formula = Workbooks.of("<row r='1'><c r='A1'><f>1+1</f></c></row>");
        Path file = Files.write(folder.resolve("pieces.xlsx"), formula);
        Ran ran = Ran.here("control", file.toString(), "--column", "mass_g");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith("turnalike: pieces.xlsx: sheet 'Weighed', cell A1: ");
        assertThat(Ran.here("plan", file.toString()).err()).contains("a spreadsheet's workbook", "a job as plain text");
        Files.write(file, Workbooks.empty().part("content.xml", "").bytes());
        assertThat(Ran.here("control", file.toString(), "--column", "mass_g").err())
                .startsWith("turnalike: pieces.xlsx: is a zip file, no workbook; ");
        assertRefused(
                new byte[] {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0, 1, 2},
                "a spreadsheet's older workbook (.xls)");
    }

    @Test
    void other_text_and_other_documents_too() throws IOException {
        assertRefused("\ufeffpiece,mass_g\n1,2\n".getBytes(StandardCharsets.UTF_16LE), "text in UTF-16");
        assertRefused("\ufeffpiece,mass_g\n1,2\n".getBytes(StandardCharsets.UTF_16BE), "text in UTF-16");
        assertRefused("%PDF-1.7 ...".getBytes(StandardCharsets.US_ASCII), "a PDF");
    }

    @Test
    void other_drawings_are_named() throws IOException {
        Path file = folder.resolve("piece.dxf");
        for (String[] each : new String[][] {
            {"AC1032\0\0\0 ...", "a DWG drawing"},
            {"AutoCAD Binary DXF\r\n", "a binary DXF drawing"},
            {"\u001f\u008b\b\0", "a compressed file"}
        }) {
            Files.write(file, each[0].getBytes(StandardCharsets.ISO_8859_1));
            Ran ran = Ran.here("trace", file.toString());
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err())
                    .contains("piece.dxf: is " + each[1])
                    .contains("save it as plain SVG, or as DXF in text");
        }
    }

    @Test
    void a_file_larger_than_what_is_read_at_once_comes_whole() throws IOException {
        for (int size : new int[] {0, 1, 1 << 20, (3 << 20) + 7}) {
            byte[] bytes = new byte[size];
            new Random(size).nextBytes(bytes);
            Path file = Files.write(folder.resolve("picture.jpg"), bytes);
            assertThat(InputFiles.picture(file)).isEqualTo(bytes);
        }
    }

    /** Without an end, or with none until somebody writes into it. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void a_device_or_a_pipe_is_no_file() throws Exception {
        Path pipe = folder.resolve("pipe.jpg");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        Path zero = Files.createSymbolicLink(folder.resolve("zero.jpg"), Path.of("/dev/zero"));
        for (Path each : List.of(pipe, zero)) {
            Ran ran = Ran.here("trace", each.toString(), "--span", "300 mm");
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err()).contains(each + ": is a device or a pipe, not a file; save what comes from it");
        }
    }

    /** What the shell hands over is read, and no more of it than of a file. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void what_tells_no_size_is_read_to_a_bound() {
        assertThatThrownBy(() -> InputFiles.picture(Path.of("/proc/self/fd/../../../dev/zero")))
                .hasMessageContaining("is a device");
        try (RandomAccessFile open = new RandomAccessFile("/dev/zero", "r")) {
            assertThatThrownBy(() -> InputFiles.text(handed(open))).hasMessageContaining("is larger than 16 MiB");
        } catch (IOException none) {
            throw new UncheckedIOException(none);
        }
    }

    /** The open file by the name that the system has for it. */
    private static Path handed(RandomAccessFile open) throws IOException {
        assertThat(open.getFD().valid()).isTrue();
        try (Stream<Path> all = Files.list(Path.of("/proc/self/fd"))) {
            return all.filter(each -> {
                        try {
                            return Files.readSymbolicLink(each).equals(Path.of("/dev/zero"));
                        } catch (IOException closed) {
                            return false;
                        }
                    })
                    .findFirst()
                    .orElseThrow();
        }
    }

    /** Linux says of such a file that it holds nothing, as of a pipe. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void a_file_that_says_it_is_empty_is_read_to_its_end() {
        assertThat(InputFiles.picture(Path.of("/proc/version"))).isNotEmpty();
    }
}
