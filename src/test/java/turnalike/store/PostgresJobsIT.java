package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.StoreReport;

class PostgresJobsIT extends StoreContract {
    private final Map<String, PostgresAddress> databases = new HashMap<>();

    @Override
    int seeds() {
        return 1;
    }

    @Override
    StorePlace place(String name) {
        return new StoreInPostgres(address(name));
    }

    private synchronized PostgresAddress address(String name) {
        return databases.computeIfAbsent(name, any -> PostgresServer.shared().makeDatabase());
    }

    @Test
    void history_cannot_be_altered_even_by_sql() {
        try (JobStore store = open("shop")) {
            store.edit(store.keep(Histories.job("Leg", 22.5)), Folder.log("7", 243.1));
        }
        for (String sql : List.of("DELETE FROM step", "UPDATE change SET name = ''", "DELETE FROM document")) {
            assertThatThrownBy(() ->
                            PostgresServer.shared().sql(address("shop").database(), "SET search_path = turnalike", sql))
                    .hasStackTraceContaining("history is only added to");
        }
        assertSound("shop");
    }

    /** Somebody who may do anything in the database went past the triggers. */
    @Test
    void a_text_and_a_step_that_were_altered_are_found() {
        JobId id;
        try (JobStore store = open("shop")) {
            id = store.keep(Histories.job("Leg", 22.5));
            store.edit(id, Folder.log("7", 243.1));
        }
        PostgresServer.shared()
                .sql(
                        address("shop").database(),
                        "SET search_path = turnalike",
                        "ALTER TABLE step DISABLE TRIGGER step_stays",
                        "UPDATE step SET what = 'log piece 8' WHERE number = 2");
        StoreReport report = place("shop").check();
        assertThat(report.faults()).hasSize(2);
        assertThat(report.faults().get(0).what()).contains("tables or triggers are not as they were made");
        assertThat(report.faults().get(1).line()).contains(id.text()).contains("step 2 is not as it was written");
    }
}
