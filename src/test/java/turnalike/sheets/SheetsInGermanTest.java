package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.read.JobReader;
import turnalike.language.Language;
import turnalike.language.Speech;

/** Every line of every sheet has its German. */
class SheetsInGermanTest {
    /** What a turner calls a member is said as it was given. */
    private static final Pattern NAMES =
            Pattern.compile("(?<=\\{|,)\\s*\"name\"\\s*:\\s*\"[^\"]*\"\\s*,|,\\s*\"name\"\\s*:\\s*\"[^\"]*\"");

    private static final List<String> ORDERS = List.of(
            "job/good/wheel2",
            "job/good/row",
            "job/good/legs",
            "job/good/post",
            "job/good/every",
            "sheets/finial",
            "sheets/longpost",
            "sheets/wheel24",
            "sheets/row100",
            "sheets/legs8",
            "sheets/orders/balusters",
            "sheets/orders/post",
            "sheets/orders/finial",
            "sheets/orders/spire",
            "sheets/orders/legs",
            "sheets/orders/wheel",
            "sheets/helm12",
            "sheets/finials24",
            "sheets/legs7",
            "sheets/gallery");

    @Test
    void no_line_of_any_sheet_lacks_its_german() throws Exception {
        Set<String> missing = new TreeSet<>();
        for (String order : ORDERS) {
            missing.addAll(Speech.heardIn(() -> sheets(order)));
        }
        missing.removeIf(Language.GERMAN::knows);
        assertThat(missing).isEmpty();
    }

    private static void sheets(String order) {
        Plan plan;
        try {
            String text = NAMES.matcher(Files.readString(Path.of("src/test/resources/turnalike", order + ".job.json")))
                    .replaceAll("")
                    .replaceFirst("(\"(?:title|name)\"\\s*:\\s*)\"[^\"]*\"", "$1\"New job\"");
            plan = Plan.of(JobReader.read(text).job().orElseThrow(), Effort.ofAsks(1000));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        for (PlanSheet kind : PlanSheet.of(plan)) {
            kind.of(plan, Paper.A4);
        }
    }
}
