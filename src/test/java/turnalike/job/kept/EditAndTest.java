package turnalike.job.kept;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class EditAndTest {
    private static final Change OUT = Change.without(new Subject(Subject.Kind.PIECE, "1"));

    /** A store whose server is lost twice before an edit is kept: the function is called three times. */
    @SuppressWarnings("unchecked")
    private static JobStore lossy(Optional<Step> kept) {
        InvocationHandler handler = (proxy, method, arguments) -> {
            if (method.isDefault()) {
                return InvocationHandler.invokeDefault(proxy, method, arguments);
            }
            assertThat(method.getName()).isEqualTo("edit");
            for (int call = 0; kept.isPresent() && call < 3; call++) {
                assertThat(((Function<KeptJob, Edit>) arguments[1]).apply(null).what())
                        .isEqualTo("log a piece");
            }
            return kept;
        };
        return (JobStore)
                Proxy.newProxyInstance(JobStore.class.getClassLoader(), new Class<?>[] {JobStore.class}, handler);
    }

    private static Optional<StepAnd<List<String>>> asked(JobStore store) {
        AtomicInteger calls = new AtomicInteger();
        return store.editAnd(
                new JobId("2222-2222-2222"),
                kept -> new EditAnd<>(Edit.of("log a piece", OUT), List.of("call " + calls.incrementAndGet())));
    }

    @Test
    void what_the_last_call_found_is_told_and_nothing_of_those_before() {
        Step step = new Step(2, Instant.EPOCH, Step.Did.EDIT, OptionalInt.empty(), "log a piece", List.of(OUT));
        assertThat(asked(lossy(Optional.of(step)))).contains(new StepAnd<>(step, List.of("call 3")));
    }

    @Test
    void of_a_job_that_is_not_there_nothing_is_told() {
        assertThat(asked(lossy(Optional.empty()))).isEmpty();
    }
}
