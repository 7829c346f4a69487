package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.Test;

class CoresTest {
    @Test
    void every_piece_of_work_is_done_once() {
        for (int count : new int[] {0, 1, 2, 15, 16, 17, 1000}) {
            AtomicIntegerArray done = new AtomicIntegerArray(count);
            Cores.each(count, done::incrementAndGet);
            Cores.parts(count, (from, end) -> {
                for (int k = from; k < end; k++) {
                    done.addAndGet(k, 10);
                }
            });
            for (int k = 0; k < count; k++) {
                assertThat(done.get(k)).as("%s of %s", k, count).isEqualTo(11);
            }
        }
    }

    @Test
    void work_within_work_comes_to_an_end() {
        AtomicIntegerArray done = new AtomicIntegerArray(64);
        Cores.each(8, one -> Cores.each(8, other -> done.incrementAndGet(8 * one + other)));
        for (int k = 0; k < done.length(); k++) {
            assertThat(done.get(k)).isEqualTo(1);
        }
    }

    @Test
    void a_fault_in_a_piece_reaches_whoever_handed_it_out() {
        assertThatThrownBy(() -> Cores.each(100, k -> {
                    if (k == 57) {
                        throw new IllegalStateException("the 57th");
                    }
                }))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void what_was_begun_tells_its_end_when_asked() throws Unsure {
        assertThat(Cores.begin(() -> "found").done()).isEqualTo("found");
        Cores.Work<String> beside = Cores.begin(CoresTest::refused);
        Cores.Work<String> atOnce = Cores.held(CoresTest::refused);
        assertThatThrownBy(beside::done).isInstanceOf(Unsure.class).hasMessage("nothing there");
        assertThatThrownBy(atOnce::done).isInstanceOf(Unsure.class).hasMessage("nothing there");
    }

    private static String refused() throws Unsure {
        throw new Unsure(PhotoTrace.Reason.NO_PIECE, "nothing there", "look elsewhere");
    }
}
