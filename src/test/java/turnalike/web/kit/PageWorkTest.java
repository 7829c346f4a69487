package turnalike.web.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class PageWorkTest {
    private static final int AT_ONCE = 2;

    @Test
    void no_more_goes_on_at_once_than_was_said_and_all_is_done() {
        PageWork work = new PageWork(AT_ONCE);
        AtomicInteger now = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        List<CompletableFuture<Void>> all = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            Runnable busy = () -> {
                most.accumulateAndGet(now.incrementAndGet(), Math::max);
                Thread.onSpinWait();
                now.decrementAndGet();
            };
            all.add(CompletableFuture.runAsync(busy, work.beside()));
            all.add(CompletableFuture.runAsync(() -> work.inTurn(() -> {
                busy.run();
                return "done";
            })));
        }
        all.forEach(CompletableFuture::join);
        assertThat(most.get()).isBetween(1, AT_ONCE);
    }

    @Test
    void work_that_fails_gives_its_turn_back() {
        PageWork work = new PageWork(1);
        for (int i = 0; i < 3; i++) {
            assertThatThrownBy(() -> work.inTurn(() -> {
                        throw new IllegalStateException("broken");
                    }))
                    .hasMessage("broken");
            assertThatThrownBy(() -> CompletableFuture.runAsync(
                                    () -> {
                                        throw new IllegalStateException("broken beside");
                                    },
                                    work.beside())
                            .join())
                    .hasRootCauseMessage("broken beside");
        }
        assertThat(work.inTurn(() -> "next")).isEqualTo("next");
    }
}
