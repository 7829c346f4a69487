package turnalike.job.kept;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.units.Problem;

class KeptSummaryTest {
    private static final Problem NOTE = new Problem("shop.db", "has no backup", "make one");

    /** Made as one tree, which takes all of the history at once. */
    private static String asTree(GivenJob given, List<Problem> notes) {
        KeptJob kept = given.kept();
        ObjectNode tree = KeptJson.object()
                .put("job", given.id().text())
                .put("title", kept.text().job().title())
                .put("pieces", kept.pieces().size());
        tree.set("stored", KeptJson.object(given.format()));
        var array = tree.putArray("notes");
        notes.forEach(each -> array.addObject()
                .put("where", each.where())
                .put("what", each.what())
                .put("mend", each.mend()));
        return KeptJson.page(tree);
    }

    /** In portions of that many letters. */
    private static void write(String text, Writer out, IntUnaryOperator portion) {
        try {
            for (int from = 0; from < text.length(); ) {
                int length = Math.min(text.length() - from, Math.max(1, portion.applyAsInt(from)));
                if (length == 1) {
                    out.write(text.charAt(from));
                } else {
                    out.write(text, from, length);
                }
                from += length;
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    @Test
    void what_is_written_step_by_step_is_to_the_letter_what_one_tree_would_be() {
        Seeds.each(3, random -> {
            GivenJob given = new GivenJob(JobId.of(new int[12]), Histories.draw(random, 20));
            List<Problem> notes = random.nextBoolean() ? List.of() : List.of(NOTE);
            StringWriter out = new StringWriter();
            KeptSummary.kept(
                    out, given.kept(), to -> write(given.format(), to, from -> random.nextInt(60)), () -> notes);
            assertThat(out).hasToString(asTree(given, notes));
        });
    }

    /** Giving may tell of damage that was not known before. */
    @Test
    void notes_are_asked_for_after_the_job_was_given() {
        GivenJob given = new GivenJob(JobId.of(new int[12]), Histories.draw(new Random(1), 5));
        StringWriter out = new StringWriter();
        String[] told = {""};
        KeptSummary.kept(
                out,
                given.kept(),
                to -> {
                    write(given.format(), to, from -> given.format().length());
                    told[0] = "is damaged";
                },
                () -> List.of(new Problem("shop.db", told[0], "look at it")));
        assertThat(out.toString()).contains("\"what\" : \"is damaged\"");
    }
}
