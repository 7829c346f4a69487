package turnalike.job;

import turnalike.effort.Effort;
import turnalike.job.read.JobReader;

/**
 * A small invented leg in millimetres for tests of the settings. Its marks: 0 start, 1 at 30 (tenon | bead), 2 at 40 (bead crest), 3 at
 * 50, 4 at 60 (cove bottom), 5 at 70, 6 at 170 (taper | fillet), 7 at 180, 8 far end at 210.
 */
public final class InventedLeg {
    private InventedLeg() {}

    /** The job file's text with more keys, each followed by a comma: {@code "\"settings\": {…},"}. */
    public static String text(String moreKeys, String tenonKeys) {
        return """
                {"format": "turnalike-job", "version": 1, "title": "Invented leg", "units": "mm", %s
                 "pattern": {"name": "Leg", "stock": {"section": "round", "size": 50, "length": 220},
                  "members": [
                   {"kind": "tenon", "length": 30, "diameter": 20%s},
                   {"kind": "bead", "name": "bead", "length": 20, "root": 30, "crown": 40},
                   {"kind": "cove", "length": 20, "rim": 36, "bottom": 28},
                   {"kind": "taper", "length": 100, "from": 36, "to": 26},
                   {"kind": "fillet", "length": 10, "diameter": 30.3},
                   {"kind": "tenon", "name": "foot", "length": 30, "diameter": 19}]},
                 "wood": {"density_kg_m3": 700}}
                """.formatted(moreKeys, tenonKeys);
    }

    public static Job.Read read(String moreKeys) {
        return JobReader.read(text(moreKeys, ""));
    }

    public static Plan plan(String moreKeys, String tenonKeys) {
        Job.Read read = JobReader.read(text(moreKeys, tenonKeys));
        return Plan.of(read.job().orElseThrow(() -> new AssertionError(read.problems())), Effort.unlimited());
    }
}
