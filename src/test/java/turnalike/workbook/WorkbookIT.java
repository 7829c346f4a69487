package turnalike.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.drawing.OtherReaders;
import turnalike.pieces.PiecesFile;

/** Workbooks from and for another program's library: openpyxl (MIT licence; Debian's python3-openpyxl). */
class WorkbookIT {
    private static final Path SCRIPT = Path.of("src/test/resources/turnalike/workbook.py");

    @TempDir
    Path folder = Path.of("");

    @Test
    void what_another_program_wrote_is_read() throws IOException, InterruptedException {
        Path file = folder.resolve("pieces.xlsx");
        OtherReaders.python(SCRIPT, List.of("write", file.toString()));
        WorkbookTable.Read read = WorkbookTable.read(Files.readAllBytes(file), "pieces.xlsx");
        assertThat(read.problems()).isEmpty();
        assertThat(read.text().lines())
                .containsExactly(
                        "\"piece\",\"mass_g\",\"length\",\"turned\"",
                        "\"007\",\"213.5\",\"15 1/2\"\"\",\"2026-11-29\"",
                        "\"8\",\"0.1\",,\"2026-11-29 10:30\"");
    }

    @Test
    void what_we_wrote_is_read_by_another_program_as_figures_and_text() throws IOException, InterruptedException {
        String table = "piece,mass_g,length,note\r\n007,213.5,381,'=1+1\r\n8,0.1,15.5 mm,\r\n";
        Path file = Files.write(folder.resolve("x.xlsx"), WorkbookFile.of("Pieces", table, PiecesFile::isFigure));
        assertThat(OtherReaders.python(SCRIPT, List.of("read", file.toString())))
                .containsExactly(
                        "s:'piece'|s:'mass_g'|s:'length'|s:'note'",
                        "s:'007'|n:213.5|n:381.0|s:\"'=1+1\"",
                        "s:'8'|n:0.1|s:'15.5 mm'|n:None");
    }
}
