package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
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
            String where = "checks %d".formatted(i + 1);
            if (nodes.get(i) instanceof ObjectNode object) {
                Fields each = new Fields(where, object, job.reading());
                String name = each.findText(JobKeys.CHECK_NAME).orElse("check place %d".formatted(i + 1));
                Optional<Length> at = each.size(JobKeys.CHECK_AT);
                each.refuseUnknown(JobKeys.CHECKS.type().row());
                at.filter(place -> isOn(pattern, place, each)).ifPresent(place -> out.add(new CheckPlace(name, place)));
            } else {
                job.reading().problem(where, "is no object, was " + Fields.excerpt(nodes.get(i)), MEND);
            }
        }
        return out;
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
