package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class DiskTroubleTest {
    @Test
    void a_full_disk_is_told_as_such_however_the_system_says_it() {
        for (IOException full : new IOException[] {
            new IOException("No space left on device"),
            new FileSystemException("sheets/stick.pdf", null, "No space left on device"),
            new IOException("There is not enough space on the disk"),
            new FileSystemException("sheets/stick.pdf: Disk quota exceeded")
        }) {
            assertThat(DiskTrouble.reason(full)).isEqualTo("the disk is full");
            assertThat(DiskTrouble.isFull(full, Path.of("."))).isTrue();
        }
    }

    @Test
    void other_trouble_is_told_by_its_kind() {
        assertThat(DiskTrouble.reason(new AccessDeniedException("stick.pdf"))).isEqualTo("access denied");
        assertThat(DiskTrouble.reason(new IOException("Input/output error"))).isEqualTo("the disk refused");
        assertThat(DiskTrouble.isFull(new AccessDeniedException("stick.pdf"), Path.of(".")))
                .isFalse();
    }
}
