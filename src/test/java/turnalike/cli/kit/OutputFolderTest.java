package turnalike.cli.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
    @TempDir
    Path folder;

    @Test
    void a_file_has_the_permissions_of_any_that_the_user_makes() throws IOException {
        Path plain = Files.writeString(folder.resolve("plain"), "");
        OutputFolder out = new OutputFolder(folder.resolve("out"));
        out.write("sheet.svg", "first");
        out.write("sheet.svg", "second");
        Path written = folder.resolve("out/sheet.svg");
        assertThat(written).hasContent("second");
        assertThat(Files.getPosixFilePermissions(written)).isEqualTo(Files.getPosixFilePermissions(plain));
    }

    @Test
    void nothing_unfinished_is_left_beside_it() throws IOException {
        OutputFolder out = new OutputFolder(folder);
        out.write("sheet.svg", "x");
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all.toList()).isEqualTo(List.of(folder.resolve("sheet.svg")));
        }
    }
}
