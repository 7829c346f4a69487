package turnalike.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import turnalike.job.edit.JobEdit;
import turnalike.job.edit.ShopTable;
import turnalike.job.edit.TableEdit;
import turnalike.job.kept.JobText;
import turnalike.web.jobs.DemoJob;

/** A job file to try the operations with: the demo's invented order made smaller, with blanks weighed and a time taken. */
final class ExampleJob {
    private ExampleJob() {}

    static JobText text() {
        List<Map<String, String>> blanks = new ArrayList<>();
        for (int i = 1; i <= 8; i++) {
            blanks.add(Map.of("blank", String.valueOf(i), "mass_g", String.valueOf(548 + 2 * i)));
        }
        Map<String, String> time = Map.of("stage", "milling", "minutes", "90", "pieces", "8");
        JobText text = on(DemoJob.text(), new TableEdit(ShopTable.BLANKS, new TableEdit.Add(blanks)));
        text = on(text, new TableEdit(ShopTable.TIMES, new TableEdit.Add(List.of(time))));
        return on(text, JobEdit.fields(Map.of("price.rate", "45", "count", "5", "frame.places", "5")));
    }

    private static JobText on(JobText text, JobEdit edit) {
        return edit.on(text).text().orElseThrow();
    }
}
