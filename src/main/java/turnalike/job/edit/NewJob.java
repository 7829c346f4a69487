package turnalike.job.edit;

import turnalike.job.kept.JobText;
import turnalike.units.UnitSystem;

/** A job nobody has done anything to: a square blank on the bench, nothing turned yet. Its sizes are a place to start from. */
public final class NewJob {
    private NewJob() {}

    /**
     * {@return its text: one square member as long as its blank, of white ash at 8 %; 1 3/4 in by 16 in, or 45 mm by 400 mm}
     *
     * @param units the job's
     */
    public static JobText in(UnitSystem units) {
        boolean inches = units == UnitSystem.INCH;
        String text =
                """
                {
                  "format": "turnalike-job",
                  "version": 1,
                  "title": "New job",
                  "units": "%s",
                  "pattern": {
                    "name": "Spindle",
                    "stock": {"section": "square", "size": "%s", "length": "%s"},
                    "members": [
                      {"kind": "square", "name": "blank", "length": "%s"}
                    ]
                  },
                  "wood": {"species": "White ash", "moisture_pct": 8},
                  "count": 1
                }
                """.formatted(units.symbol(), inches ? "1 3/4" : "45", inches ? "16" : "400", inches ? "16" : "400");
        return JobText.read(text).text().orElseThrow();
    }
}
