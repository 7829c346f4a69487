package turnalike.cli.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;
import turnalike.photo.BadPictures;
import turnalike.web.copy.Originals;

/** Pictures that nothing can come of, given to the command: a line that names the file and says why, exit code 2, nothing written. */
class TraceBadPicturesTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void bad_pictures_are_told_and_nothing_is_written() throws IOException {
        for (BadPictures.Bad bad : BadPictures.of(Originals.picture())) {
            refused(Files.write(folder.resolve(bad.name()), bad.bytes()), bad.said(), "--span", "400 mm");
        }
        Path good = Files.write(folder.resolve("p8.jpg"), Originals.photograph());
        refused(good, "no turned piece is under 0.01 mm", "--span", "0.001 mm");
        refused(good, "no turned piece is 7000 mm", "--span", "7 m");
        refused(good, "of that length the piece is only 0.", "--span", "5 mm");
        refused(Files.write(folder.resolve("p7.jpg"), Originals.photograph()), "nothing says how large the piece is");
    }

    private void refused(Path file, String said, String... more) {
        String[] arguments = new String[more.length + 4];
        arguments[0] = "trace";
        arguments[1] = file.toString();
        arguments[2] = "--out";
        arguments[3] = folder.resolve("out").toString();
        System.arraycopy(more, 0, arguments, 4, more.length);
        Ran ran = Ran.here(arguments);
        String name = String.valueOf(file.getFileName());
        assertThat(ran.code()).as(name).isEqualTo(2);
        assertThat(ran.err()).contains(name).contains(said).doesNotContain("Exception");
        assertThat(ran.out()).isEmpty();
        assertThat(folder.resolve("out")).doesNotExist();
    }
}
