package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.read.JobReader;
import turnalike.language.Language;

/** What a slender rod and a small knob bring up beside the lathe has its German, as a sentence of the sheet and as a line of the page. */
class TurningInGermanTest {
    private static final String ROD = """
            {"format": "turnalike-job", "version": 1, "units": "mm",
             "pattern": {"stock": {"section": "square", "size": 18, "length": 905},
              "members": [{"kind": "tenon", "length": 30, "diameter": 10}, {"kind": "taper", "length": 270, "from": 10.5, "to": 12},
               {"kind": "bead", "length": 8, "root": 12, "crown": 15}, {"kind": "cylinder", "length": 204, "diameter": 12},
               {"kind": "bead", "length": 8, "root": 12, "crown": 15}, {"kind": "taper", "length": 355, "from": 12, "to": 9},
               {"kind": "tenon", "length": 25, "diameter": 8}]},
             "wood": {"species": "White ash", "moisture_pct": 7}, "turning": {"speeds": [200, 700, 1100]}}
            """;

    private static final String KNOB = """
            {"format": "turnalike-job", "version": 1, "units": "mm",
             "pattern": {"stock": {"section": "round", "size": 16, "length": 45},
              "members": [{"kind": "half-bead", "length": 8, "from": 1, "to": 8}, {"kind": "half-cove", "length": 9, "from": 4.5, "to": 11},
               {"kind": "groove", "length": 1, "rim": 12, "bottom": 10}, {"kind": "bead", "length": 5, "root": 11, "crown": 14}]},
             "wood": {"density_kg_m3": 950}, "turning": {%s}}
            """;

    /** Thin as a match where it is thinnest, in inches where asked. */
    private static final String FINIAL = """
            {"format": "turnalike-job", "version": 1, "units": "%s",
             "pattern": {"stock": {"section": "square", "size": "9 mm", "length": "55 mm"},
              "members": [{"kind": "tenon", "name": "peg", "length": "8 mm", "diameter": "4 mm", "chamfer": "0.5 mm"},
               {"kind": "bead", "name": "urn", "length": "12 mm", "root": "4.5 mm", "crown": "7.8 mm"},
               {"kind": "swell", "name": "spire", "length": "23 mm", "from": "3 mm", "middle": "3.4 mm", "to": "2 mm"},
               {"kind": "half-bead", "name": "tip", "length": "2 mm", "from": "2.4 mm", "to": "0.4 mm"}]},
             "wood": {"species": "Sugar maple"}, "turning": {"held": "screw", "force_n": %s}}
            """;

    private static final String POMMEL = """
            {"format": "turnalike-job", "version": 1, "units": "mm",
             "pattern": {"stock": {"section": "square", "size": 60, "length": 430},
              "members": [{"kind": "square", "name": "pommel", "length": 110}, {"kind": "half-bead", "length": 10, "from": 56, "to": 40},
               {"kind": "taper", "name": "shank", "length": 310, "from": 46, "to": 30}]},
             "wood": {"species": "American beech"}}
            """;

    private static Set<String> missing(String text) {
        Plan plan = Plan.of(JobReader.read(text).job().orElseThrow(), Effort.ofAsks(2000));
        Set<String> missing = new TreeSet<>();
        plan.turning().cautions().forEach(each -> {
            missing.add(each.what());
            missing.add(each.sentence());
            missing.add(each.where());
        });
        plan.warnings().forEach(each -> missing.add(each.what()));
        plan.turning().cuts().forEach(each -> {
            missing.add(each.what());
            missing.add(each.caution());
            each.why().ifPresent(why -> missing.add("Why here: " + why));
        });
        plan.turning().stages().forEach(each -> missing.add(each.name()));
        plan.turning().offered().ifPresent(speeds -> missing.add(speeds.limit().text()));
        missing.add(plan.job().lathe().held().text());
        assertThat(missing).hasSizeGreaterThan(8);
        missing.removeIf(Language.GERMAN::knows);
        return missing;
    }

    @Test
    void a_slender_rod() {
        assertThat(missing(ROD)).isEmpty();
    }

    /** The plain cut breaks it, a dig would, or neither does. */
    @Test
    void a_tiny_finial_that_a_dig_would_break() {
        Set<String> missing = new TreeSet<>();
        for (String units : new String[] {"mm", "in"}) {
            for (String newtons : new String[] {"20", "12", "90"}) {
                missing.addAll(missing(FINIAL.formatted(units, newtons)));
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void a_leg_with_a_pommel() {
        assertThat(missing(POMMEL)).isEmpty();
    }

    @Test
    void a_small_knob_however_it_is_held() {
        Set<String> missing = new TreeSet<>();
        for (String held : new String[] {"chuck", "screw", "jam"}) {
            missing.addAll(missing(KNOB.formatted("\"held\": \"%s\", \"held_at\": \"end\"".formatted(held))));
        }
        missing.addAll(missing(KNOB.formatted("\"held_at\": \"end\", \"speeds\": [500, 3400]")));
        assertThat(missing).isEmpty();
    }

    /** Where the page sends whoever told where the pieces will live. */
    @Test
    void the_way_to_the_joints() {
        assertThat(Language.GERMAN.say("How each joint stands through the year is told"))
                .isEqualTo("Wie jede Verbindung durch das Jahr sitzt, steht");
        assertThat(Language.GERMAN.say("with the wood")).isEqualTo("beim Holz");
    }
}
