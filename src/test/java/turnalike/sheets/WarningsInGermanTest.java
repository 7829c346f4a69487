package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.fields.Json;
import turnalike.job.read.JobReader;
import turnalike.language.Language;

/** That a frame cannot be built, is thin or does not keep its limit is said in German too: orders wrong in many ways. */
class WarningsInGermanTest {
    @Test
    void wheels_that_do_not_fit_together_say_so_in_german() {
        Set<String> missing = new TreeSet<>();
        List<Consumer<ObjectNode>> wheels = List.of(
                wheel -> wheel.put("places", 40).put("hub_radius", 20),
                wheel -> wheel.put("places", 14).put("hub_radius", 60),
                wheel -> wheel.put("places", 14)
                        .put("hub_radius", 95)
                        .put("stagger", 10)
                        .put("hub_length", 40),
                wheel -> wheel.put("places", 14).put("hub_radius", 112),
                wheel -> wheel.put("places", 30).put("hub_radius", 60).put("stagger", 2),
                wheel -> wheel.put("places", 6).put("hub_radius", 60).put("hub_seat", 70),
                wheel -> wheel.put("places", 6).put("hub_radius", 60).put("hub_seat", 60),
                wheel -> wheel.put("places", 6)
                        .put("hub_radius", 60)
                        .put("hub_seat", 40)
                        .put("axle_hole", 36),
                wheel -> wheel.put("places", 6)
                        .put("hub_radius", 60)
                        .put("hub_seat", 40)
                        .put("axle_hole", 45),
                wheel -> wheel.put("places", 6)
                        .put("hub_radius", 90)
                        .put("hub_length", 20)
                        .put("rim_width", 27)
                        .put("rim_thickness", 20),
                wheel -> wheel.put("places", 6)
                        .put("hub_radius", 90)
                        .put("hub_length", 16)
                        .put("rim_width", 18)
                        .put("rim_thickness", 14),
                wheel -> wheel.put("places", 20)
                        .put("hub_radius", 160)
                        .put("rim_width", 40)
                        .put("segments", 19),
                wheel -> wheel.put("places", 8)
                        .put("hub_radius", 160)
                        .put("rim_width", 40)
                        .put("segments", 5));
        for (Consumer<ObjectNode> wheel : wheels) {
            missing.addAll(missing("wheel", wheel, "tenon"));
        }
        missing.addAll(missing(
                "wheel",
                wheel -> wheel.put("places", 6)
                        .put("hub_radius", 90)
                        .put("hub_seat", 20)
                        .put("rim_seat", 20),
                "taper"));
        missing.addAll(missing(
                "wheel",
                wheel -> wheel.put("places", 6)
                        .put("hub_radius", 90)
                        .put("axle_hole", 20)
                        .put("rim_width", 20),
                "taper"));
        assertThat(missing).isEmpty();
    }

    @Test
    void rows_that_do_not_stand_or_keep_their_limit_say_so_in_german() {
        Set<String> missing = new TreeSet<>();
        List<Consumer<ObjectNode>> rows = List.of(
                row -> row.put("places", 14).put("clear", 300),
                row -> row.put("places", 2).put("clear", 400).put("rake_deg", 40),
                row -> row.put("places", 14).put("clear", 1900).put("largest_opening", 90),
                row -> row.put("places", 5).put("clear", 1900).put("end", 10),
                row -> row.put("places", 5).put("clear", 1900).put("end", 300).put("largest_opening", 90),
                row -> row.put("clear", 1900).put("largest_opening", 2).put("rails_apart", 250));
        for (Consumer<ObjectNode> row : rows) {
            missing.addAll(missing("row", row, "tenon"));
        }
        missing.addAll(
                missing("row", row -> row.put("places", 5).put("clear", 900).put("rake_deg", 50), "taper"));
        assertThat(missing).isEmpty();
    }

    @Test
    void legs_that_do_not_reach_say_so_in_german() {
        Set<String> missing = new TreeSet<>();
        for (double thick : new double[] {15, 20, 25.5, 27, 32}) {
            missing.addAll(missing(
                    "legs",
                    legs -> {
                        legs.put("places", 4)
                                .put("rake_deg", 20)
                                .put("splay_deg", 12)
                                .put("height", thick * 20)
                                .put("seat_thickness", thick);
                        legs.putArray("apart").add("20 mm").add("20 mm");
                        legs.putArray("stretchers").add("280 mm");
                    },
                    "tenon"));
        }
        assertThat(missing).isEmpty();
    }

    private static Set<String> missing(String kind, Consumer<ObjectNode> frame, String ends) {
        Set<String> missing = new TreeSet<>();
        Plan plan = Plan.of(JobReader.read(job(kind, frame, ends)).job().orElseThrow(), Effort.ofAsks(200));
        plan.warnings().forEach(warning -> missing.add(warning.sentence()));
        missing.removeIf(Language.GERMAN::knows);
        return missing;
    }

    /** Rods 30 mm thick between ends of 25 mm. */
    private static String job(String kind, Consumer<ObjectNode> frame, String ends) {
        ObjectNode root = Json.object()
                .put("format", "turnalike-job")
                .put("version", 1)
                .put("title", "New job")
                .put("units", "mm");
        ObjectNode pattern = root.putObject("pattern").put("name", "New job");
        pattern.putObject("stock").put("section", "square").put("size", "40 mm").put("length", "350 mm");
        var members = pattern.putArray("members");
        for (String member : List.of(ends, "cylinder", ends)) {
            ObjectNode node = members.addObject().put("kind", member);
            if (member.equals("cylinder")) {
                node.put("length", "300 mm").put("diameter", "30 mm");
            } else if (member.equals("tenon")) {
                node.put("length", "25 mm").put("diameter", "18 mm");
            } else {
                node.put("length", "25 mm").put("from", "15 mm").put("to", "18 mm");
            }
        }
        root.putObject("wood").put("density_kg_m3", 650);
        frame.accept(root.putObject("frame").put("kind", kind));
        return Json.print(root);
    }
}
