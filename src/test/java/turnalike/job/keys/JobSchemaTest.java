package turnalike.job.keys;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.job.read.JobReader;
import turnalike.job.set.FrameKind;
import turnalike.units.Length;
import turnalike.units.Parsed;
import turnalike.units.UnitSystem;

/** The schema beside the reader, by a validator that knows nothing of us: com.networknt:json-schema-validator. */
class JobSchemaTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Path RESOURCES = Path.of("src/test/resources/turnalike/job");

    /** What a schema cannot say, or not of one value alone: the bad files that it takes, with why. */
    private static final Map<String, String> BEYOND_A_SCHEMA = beyond();

    private static final JsonSchema SCHEMA = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(JobSchema.write(), SchemaValidatorsConfig.builder().build());

    private static final List<String> SCRAPS = List.of(
            "1", "0", "22", "3", "/", "/4", "1/2", " ", "-", ".", ",5", "½", "\"", "'", " in", " mm", "cm", "m", "ft",
            "’", "x", "\u00a0", "⅟", "↉");

    private static Set<ValidationMessage> faults(JsonNode job) {
        return SCHEMA.validate(job);
    }

    @Test
    void every_good_job_validates() throws IOException {
        Map<String, String> jobs = goodJobs();
        assertThat(jobs).hasSizeGreaterThan(8);
        jobs.forEach((where, text) -> {
            assertThat(JobReader.read(text).problems()).as(where).isEmpty();
            assertThat(faults(tree(text))).as(where).isEmpty();
        });
    }

    @Test
    void every_bad_job_is_refused_unless_no_schema_could() throws IOException {
        Set<String> taken = new TreeSet<>();
        try (Stream<Path> files = Files.list(RESOURCES.resolve("bad"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".json")).toList()) {
                String name = file.getFileName().toString();
                JsonNode job;
                try {
                    job = MAPPER.readTree(Files.readString(file));
                } catch (JsonProcessingException notJson) {
                    continue; // no JSON, so no validator is asked
                }
                if (faults(job).isEmpty()) {
                    taken.add(name);
                }
            }
        }
        assertThat(taken).isEqualTo(BEYOND_A_SCHEMA.keySet());
    }

    @Test
    void each_key_refuses_a_value_of_another_type() {
        JsonNode odd = MAPPER.createObjectNode().put("odd", true);
        for (FrameKind kind : FrameKind.values()) {
            String base = kind.word();
            String text = read(RESOURCES.resolve("good/" + base + ".job.json"));
            for (KeyPaths.At at : KeyPaths.asked(base)) {
                String changed = JobTrees.with(text, at.path(), odd);
                assertThat(JobReader.read(changed).problems())
                        .as("%s of %s read", at.path(), base)
                        .isNotEmpty();
                assertThat(faults(tree(changed)))
                        .as("%s of %s", at.path(), base)
                        .isNotEmpty();
            }
        }
    }

    @Test
    void the_pattern_of_lengths_takes_what_the_reader_takes() {
        Pattern any = Pattern.compile(LengthPattern.of(false));
        Pattern aboveZero = Pattern.compile(LengthPattern.of(true));
        AtomicInteger read = new AtomicInteger();
        Seeds.each(40, random -> {
            for (int i = 0; i < 5_000; i++) {
                String typed = typed(random);
                Parsed<Length> parsed = Length.parse(typed, UnitSystem.INCH);
                String refusal = parsed.fold(length -> "", (what, mend) -> what);
                if (!refusal.contains("more than 20 m") && !refusal.contains("not below one")) {
                    assertThat(any.matcher(typed).matches())
                            .as("'%s': %s", typed, refusal)
                            .isEqualTo(parsed.isValue());
                }
                if (parsed.fold(Length::isPositive, (what, mend) -> false)) {
                    read.incrementAndGet();
                    assertThat(aboveZero.matcher(typed).matches())
                            .as("'%s'", typed)
                            .isTrue();
                }
            }
        });
        assertThat(read.get()).as("enough that are lengths at all").isGreaterThan(5_000);
    }

    /** Up to six scraps of what lengths are written with. */
    private static String typed(Random random) {
        StringBuilder out = new StringBuilder();
        for (int k = random.nextInt(6); k >= 0; k--) {
            out.append(SCRAPS.get(random.nextInt(SCRAPS.size())));
        }
        return out.toString();
    }

    private static JsonNode tree(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException notJson) {
            throw new AssertionError(text, notJson);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new AssertionError(file.toString(), unreadable);
        }
    }

    /** By where they stand: the tests' own, the demo's, and those that README and docs print. */
    private static Map<String, String> goodJobs() throws IOException {
        Map<String, String> out = new TreeMap<>();
        for (Path folder : List.of(RESOURCES.resolve("good"), Path.of("src/main/resources/turnalike/demo"))) {
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(each -> each.toString().endsWith(".job.json"))
                        .forEach(each -> out.put(each.toString(), read(each)));
            }
        }
        for (Path page : List.of(Path.of("README.md"), Path.of("docs/job-file.md"))) {
            Matcher fence =
                    Pattern.compile("```json\\n(.*?)```", Pattern.DOTALL).matcher(read(page));
            while (fence.find()) {
                if (fence.group(1).contains("\"turnalike-job\"")) {
                    out.put(page + " at " + fence.start(), fence.group(1));
                }
            }
        }
        return out;
    }

    private static Map<String, String> beyond() {
        Map<String, String> out = new TreeMap<>();
        out.put("frame-stagger-odd.json", "an odd number of places beside a stagger");
        for (String name : List.of("row-no-places", "row-no-clear", "row-end-past-middle", "row-lengths-sum")) {
            out.put(name + ".json", "a row's key beside others of it");
        }
        for (String name : List.of("row-rails-too-far", "row-ball-too-large")) {
            out.put(name + ".json", "a row over its piece");
        }
        for (String name : List.of(
                "feet-and-rake",
                "feet-no-height",
                "stretcher-in-seat",
                "stretcher-nowhere",
                "stretcher-five",
                "stretcher-splayed-three")) {
            out.put("legs-" + name + ".json", "a key of the legs beside others of them");
        }
        for (String name : List.of(
                "bead-crown-low",
                "cove-rim-low",
                "groove-rim-low",
                "vee-flat",
                "swell-bulges",
                "swell-dips",
                "chamfer-past-length",
                "chamfer-past-middle")) {
            out.put(name + ".json", "two sizes of one member");
        }
        for (String name : List.of(
                "blanks-finished-heavier",
                "boards-fault-beyond",
                "boards-fault-half",
                "boards-twice",
                "cut-starts-missing")) {
            out.put(name + ".json", "two values of the shop's tables");
        }
        for (String name : List.of("boards-wood", "times-no-stage")) {
            out.put(name + ".json", "a name in the shop's tables");
        }
        for (String name : List.of("bead-too-wide", "square-too-wide", "stock-short")) {
            out.put(name + ".json", "a member and the blank");
        }
        for (String name : List.of(
                "curve-falls-back",
                "curve-not-from-zero",
                "curve-places-alike",
                "curve-place-least",
                "curve-place-tiny")) {
            out.put(name + ".json", "one point and the one before it");
        }
        out.put("home-swapped.json", "two seasons");
        for (String name : List.of("checks-beyond-the-end")) {
            out.put(name + ".json", "a place and the run's length");
        }
        for (String name : List.of("length-21-m", "length-huge-number")) {
            out.put(name + ".json", "beyond 20 m in the units that stand elsewhere, or in a text");
        }
        for (String name : List.of("likeness-noted-measured")) {
            out.put(name + ".json", "which columns are measured, only the pieces' reader knows");
        }
        for (String name : List.of("mark-limit-below-one-step", "mark-limit-no-plan")) {
            out.put(name + ".json", "what dividers can reach");
        }
        for (String name : List.of(
                "settings-pin-forbidden",
                "settings-pin-too-wide",
                "settings-pin-twice",
                "turning-chart-rises",
                "chart-diameters-alike",
                "turning-speeds-twice",
                "turning-speeds-above-max")) {
            out.put(name + ".json", "two entries of a list, or of two lists");
        }
        for (String name : List.of("settings-stick-end", "settings-stick-no-label", "settings-stick-past-last")) {
            out.put(name + ".json", "which marks the pattern has");
        }
        for (String name : List.of("wood-unknown", "wood-several")) {
            out.put(name + ".json", "how much of a wood's name is enough");
        }
        out.put("turning-tailstock-away.json", "two words of one object");
        for (String name : List.of("stock-size-tiny", "chart-diameter-least")) {
            out.put(name + ".json", "above zero but below anything a tool knows");
        }
        return out;
    }
}
