package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptPhoto;
import turnalike.job.kept.PhotoResult;
import turnalike.units.Length;

/** Photographs in a store's file. */
class KeptPhotoIT {
    @TempDir
    private Path folder = Path.of("");

    private static KeptPhoto photo() throws IOException {
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(64, 32, BufferedImage.TYPE_INT_RGB), "jpeg", jpeg);
        KeptPhoto.Axis axis = new KeptPhoto.Axis(4.25, 16, 60.5, 15.125, Length.ofMm(400));
        return KeptPhoto.of("old leg.jpg", 64, 32, axis, jpeg.toByteArray());
    }

    @Test
    void a_photograph_is_kept_given_and_brought_back_as_it_was_and_check_finds_it_sound() throws IOException {
        Path file = folder.resolve("jobs.db");
        try (JobStore store = StoreFile.openOrMake(file, new Folder.SetClock())) {
            JobId id = store.keep(Histories.job("Leg", 30));
            store.edit(id, kept -> Edit.of("keep it", Change.of(result())));
            assertThat(KeptPhoto.of(store.find(id).orElseThrow())).contains(photo());
            GivenJob given = store.give(id).orElseThrow();
            assertThat(GivenJob.read(given.format()).job()).contains(given);
            JobId again = store.keepBeside(GivenJob.read(given.format()).job().orElseThrow());
            assertThat(KeptPhoto.of(store.find(again).orElseThrow())).contains(photo());
            store.undo(id);
            assertThat(KeptPhoto.of(store.find(id).orElseThrow())).isEmpty();
        }
        assertThat(StoreFile.check(file).faults()).isEmpty();
    }

    private static PhotoResult result() {
        try {
            return photo().result();
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    @Test
    void one_that_cannot_be_shown_keeps_no_job_from_opening_and_check_tells_of_it() {
        Path file = folder.resolve("jobs.db");
        try (JobStore store = StoreFile.openOrMake(file, new Folder.SetClock())) {
            JobId id = store.keep(Histories.job("Leg", 30));
            for (String picture : new String[] {"{}", "{\"base64\":\"bm8=\"}", "3"}) {
                store.edit(
                        id,
                        kept -> Edit.of(
                                "keep it",
                                Change.of(PhotoResult.of("strange.jpg", "{\"picture\":%s}".formatted(picture)))));
                assertThat(KeptPhoto.of(store.find(id).orElseThrow())).isEmpty();
            }
            store.edit(id, kept -> Edit.of("keep it", Change.of(PhotoResult.of("strange.jpg", "{\"picture\":{}}"))));
        }
        assertThat(StoreFile.check(file).faults()).singleElement().satisfies(each -> assertThat(each.what())
                .contains("its photograph strange.jpg cannot be shown"));
    }

    @Test
    void what_is_no_picture_is_refused() {
        KeptPhoto.Axis axis = new KeptPhoto.Axis(0, 0, 9, 0, Length.ofMm(9));
        assertThatThrownBy(() -> KeptPhoto.of("a.jpg", 9, 9, axis, new byte[] {1, 2, 3}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new KeptPhoto("a.jpg", 9, 9, axis, "/9j/<script>"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new KeptPhoto.Axis(3, 3, 3, 3, Length.ofMm(9)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
