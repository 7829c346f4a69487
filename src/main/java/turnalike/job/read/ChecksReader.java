package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.job.CheckPlace;
import turnalike.job.fields.Fields;
import turnalike.job.keys.JobKeys;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/** The job's check places from JSON: {@code "checks": [{"name": "upper neck", "at": "3 1/4"}]}. */
final class ChecksReader {
    private static final String MEND = "write it like [{\"name\": \"upper neck\", \"at\": \"3 1/4\"}]";

    private ChecksReader() {}

    static List<CheckPlace> read(Fields job, Optional<Pattern> pattern) {
        if (!job.has(JobKeys.CHECKS)) {
            return List.of();
        }
        List<JsonNode> nodes = job.list(JobKeys.CHECKS, MEND).orElse(List.of());
        if (nodes.size() > JobKeys.CHECKS.type().most()) {
            job.reading()
                    .problem(
                            "checks",
                            "has %d places".formatted(nodes.size()),
                            "check %d places at most"
                                    .formatted(JobKeys.CHECKS.type().most()));
        }
        List<CheckPlace> out = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            String unnamed = "check place %d".formatted(i + 1);
            job.objectAt("checks %d".formatted(i + 1), nodes.get(i), MEND)
                    .flatMap(each -> place(each, unnamed, pattern))
                    .ifPresent(out::add);
        }
        return out;
    }

    private static Optional<CheckPlace> place(Fields fields, String unnamed, Optional<Pattern> pattern) {
        String name = fields.findText(JobKeys.CHECK_NAME).orElse(unnamed);
        Optional<Length> at = fields.size(JobKeys.CHECK_AT);
        fields.refuseUnknown(JobKeys.CHECKS.type().row());
        return at.filter(place -> isOn(pattern, place, fields)).map(place -> new CheckPlace(name, place));
    }

    private static boolean isOn(Optional<Pattern> pattern, Length place, Fields fields) {
        boolean beyond = pattern.map(each -> place.compareTo(each.length()) > 0).orElse(false);
        if (beyond) {
            fields.reading()
                    .problem(
                            fields.at(JobKeys.CHECK_AT.name()),
                            "lies beyond the far end, was %s of %s"
                                    .formatted(
                                            place.formatFinestBoth(fields.units()),
                                            pattern.orElseThrow().length().formatFinestBoth(fields.units())),
                            "measure it from the start end");
        }
        return !beyond;
    }
}
