package turnalike.release;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;

/** The libraries that are listed with their licences are those of the bill of materials, which is held to what is shipped. */
class LicencesTest {
    private static final Path TABLE = Path.of("src/main/resources/turnalike/release/libraries.tsv");

    private static final Path BILL = Path.of("docs/sbom.json");

    @TempDir
    private Path folder;

    private static String licence(JsonNode component) {
        return StreamSupport.stream(component.path("licenses").spliterator(), false)
                .map(each -> each.path("expression")
                        .asText(each.path("license")
                                .path("id")
                                .asText(each.path("license").path("name").asText())))
                .sorted()
                .collect(Collectors.joining(" OR "));
    }

    private static String address(JsonNode component) {
        return StreamSupport.stream(component.path("externalReferences").spliterator(), false)
                .filter(each ->
                        List.of("website", "vcs").contains(each.path("type").asText()))
                .map(each -> each.path("url").asText())
                .findFirst()
                .orElse("");
    }

    private static String table() throws IOException {
        Map<String, String> lines = new TreeMap<>();
        for (JsonNode each : new ObjectMapper().readTree(BILL.toFile()).get("components")) {
            String name = each.get("name").asText();
            lines.put(name, String.join("\t", name, each.get("version").asText(), licence(each), address(each)));
        }
        return "library\tversion\tlicence\taddress\n" + String.join("\n", lines.values()) + "\n";
    }

    @Test
    void the_list_is_that_of_the_bill_of_materials() throws IOException {
        if (Boolean.getBoolean("turnalike.renew")) {
            Files.writeString(TABLE, table());
        }
        assertThat(Files.readString(TABLE))
                .as("renew with ./check LicencesTest -Dturnalike.renew=true")
                .isEqualTo(table());
    }

    @Test
    void each_library_has_its_licence_in_full() {
        assertThat(Libraries.list()).hasSizeGreaterThan(30).allSatisfy(each -> {
            assertThat(each.licence()).isNotBlank();
            assertThat(LicenceTexts.of(each))
                    .as(each.name())
                    .anySatisfy(text ->
                            assertThat(text.name() + text.text()).matches("(?is).*(licen[cs]e|redistribution).*"))
                    .allSatisfy(text -> assertThat(text.text()).hasSizeGreaterThan(50));
        });
    }

    @Test
    void what_a_library_carries_comes_to_the_letter() {
        Library carrying = Libraries.find("slf4j-api").orElseThrow();
        assertThat(LicenceTexts.of(carrying)).singleElement().satisfies(text -> {
            assertThat(text.name()).isEqualTo("LICENSE.txt");
            assertThat(text.text()).contains("QOS.ch");
        });
        Library bare = Libraries.find("jetty-server").orElseThrow();
        assertThat(LicenceTexts.of(bare)).extracting(LicenceTexts.Text::name).containsExactly("Apache-2.0", "EPL-2.0");
    }

    @Test
    void the_command_lists_shows_and_writes_them() throws IOException {
        assertThat(Ran.here("licences").out()).contains("jetty-server", "Apache-2.0 OR EPL-2.0", "Liberation Sans");
        assertThat(Ran.here("licences", "htmx.org").out()).contains("Zero-Clause BSD");
        Ran none = Ran.here("licences", "nothing");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).hasLineCount(1).contains("'nothing'", "turnalike licences");
        assertThat(Ran.here("licences", "--out", folder.toString()).code()).isZero();
        assertThat(folder.resolve("libraries.txt")).exists();
        assertThat(Files.readString(folder.resolve("kotlin-stdlib.txt"))).contains("Apache License");
    }
}
