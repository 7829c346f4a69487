package turnalike.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.answer.PlanJson;
import turnalike.job.kept.JobId;
import turnalike.language.Language;
import turnalike.web.Served;
import turnalike.web.Site;

/** Everything that programs may ask, asked by a client that has read nothing but the description. */
class ApiTest {
    @TempDir
    private Path folder;

    private Served served;
    private DescribedClient client;

    @BeforeEach
    void serve() throws Site.PortTaken, IOException, InterruptedException {
        served = Served.in(folder);
        client = new DescribedClient(served.address() + "api", Optional.empty());
    }

    @AfterEach
    void close() {
        served.close();
    }

    private static JsonNode problem(HttpResponse<byte[]> answer) throws IOException {
        assertThat(answer.statusCode()).isBetween(400, 499);
        assertThat(DescribedClient.isJson(answer)).isTrue();
        return DescribedClient.json(answer);
    }

    @Test
    void every_operation_answers_its_own_example_as_described() throws IOException, InterruptedException {
        assertThat(client.description().get("openapi").textValue()).isEqualTo("3.1.0");
        assertThat(client.operations()).hasSizeGreaterThan(25);
        for (DescribedClient.Asked each : client.operations().stream()
                .sorted(java.util.Comparator.comparing((DescribedClient.Asked asked) ->
                        List.of("deleteJob", "restoreJob").indexOf(asked.name())))
                .toList()) {
            if (each.name().equals("takeBackEntry")) {
                String piece = "{\"entry\": \"0123456789abcdef01234567\", \"pieces\": [{\"piece\": \"late\"}]}";
                client.call(client.operation("logPieces"), Map.of(), Optional.of(piece));
            }
            HttpResponse<byte[]> answer = client.call(each);
            Map.Entry<String, JsonNode> reply = DescribedClient.reply(each);
            String said = new String(answer.body(), StandardCharsets.UTF_8);
            assertThat(String.valueOf(answer.statusCode()))
                    .as("%s: %s", each.name(), said)
                    .isEqualTo(reply.getKey());
            Map.Entry<String, JsonNode> content =
                    reply.getValue().get("content").properties().iterator().next();
            assertThat(answer.headers().firstValue("Content-Type").orElse(""))
                    .as(each.name())
                    .startsWith(content.getKey());
            if (DescribedClient.isJson(answer)) {
                assertThat(client.unlike(content.getValue().get("schema"), DescribedClient.json(answer)))
                        .as(each.name())
                        .isEmpty();
            }
            if (each.sends()) {
                JsonNode sent = each.told()
                        .get("requestBody")
                        .get("content")
                        .properties()
                        .iterator()
                        .next()
                        .getValue();
                assertThat(client.unlike(sent.get("schema"), sent.get("example")))
                        .as(each.name())
                        .isEmpty();
            }
        }
    }

    @Test
    void the_docs_name_every_operation() throws IOException {
        String docs = Files.readString(Path.of("docs/api.md"));
        for (DescribedClient.Asked each : client.operations()) {
            assertThat(docs).contains("`" + each.name() + "`");
        }
    }

    @Test
    void what_is_wrong_is_answered_in_the_words_of_the_command_line() throws IOException, InterruptedException {
        JsonNode schema = client.description().get("components").get("schemas").get("Problem");
        client.call(client.operation("makeJob"));
        for (DescribedClient.Asked each : client.operations()) {
            if (each.asks("job")) {
                JsonNode problem = problem(client.call(each, Map.of("job", "0000-0000-0000"), Optional.empty()));
                assertThat(client.unlike(schema, problem)).as(each.name()).isEmpty();
            }
            if (each.asks("version")) {
                HttpResponse<byte[]> late = client.call(each, Map.of("version", "99"), Optional.empty());
                assertThat(late.statusCode()).as(each.name()).isEqualTo(409);
                assertThat(client.call(each, Map.of("version", "soon"), Optional.empty())
                                .statusCode())
                        .as(each.name())
                        .isEqualTo(400);
            }
            if (each.sends()) {
                for (String bad : List.of("", "[1]", "{\"fields\": 3, \"pieces\": [7]", "\u0000")) {
                    boolean mayBeEmpty = each.name().equals("cutBoards");
                    HttpResponse<byte[]> answer = client.call(each, Map.of(), Optional.of(bad));
                    if (!mayBeEmpty || !bad.isEmpty()) {
                        assertThat(client.unlike(schema, problem(answer)))
                                .as("%s: %s", each.name(), bad)
                                .isEmpty();
                    }
                }
            }
        }
        JsonNode negative = problem(client.call(
                client.operation("changeFields"),
                Map.of("version", "1"),
                Optional.of("{\"fields\": {\"count\": -5}}")));
        assertThat(negative.get("error").textValue()).isEqualTo("count: was -5; give a whole number from 1 to 10000");
        assertThat(problem(client.send(HttpRequest.newBuilder(URI.create(served.address() + "api/nothing"))))
                        .get("error")
                        .textValue())
                .contains("read /api/openapi.json");
    }

    @Test
    void the_figures_are_the_commands_own_and_an_edit_is_one_step_that_undo_takes_back()
            throws IOException, InterruptedException {
        JobId id = served.demo();
        HttpResponse<byte[]> plan = client.call(client.operation("plan"), Map.of("job", id.text()), Optional.empty());
        assertThat(new String(plan.body(), StandardCharsets.UTF_8))
                .isEqualTo(PlanJson.print(
                        Plan.of(served.store().find(id).orElseThrow().text().job(), Effort.usual())));

        int before = served.store().find(id).orElseThrow().times().steps();
        Map<String, String> at = Map.of("job", id.text(), "version", String.valueOf(before));
        HttpResponse<byte[]> changed = client.call(client.operation("changeFields"), at, Optional.empty());
        assertThat(DescribedClient.json(changed).get("version").intValue()).isEqualTo(before + 1);
        assertThat(served.store().find(id).orElseThrow().text().job().count()).isEqualTo(6);
        assertThat(client.call(client.operation("changeFields"), at, Optional.empty())
                        .statusCode())
                .as("the version that was seen is no longer the job's")
                .isEqualTo(409);
        Map<String, String> now = Map.of("job", id.text(), "version", String.valueOf(before + 1));
        HttpResponse<byte[]> again = client.call(client.operation("changeFields"), now, Optional.empty());
        assertThat(DescribedClient.json(again).get("changed").booleanValue()).isFalse();
        client.call(client.operation("undo"), now, Optional.empty());
        assertThat(served.store().find(id).orElseThrow().text().job().count()).isEqualTo(14);
    }

    @Test
    void another_page_may_ask_nothing_and_a_rebound_name_neither() throws IOException, InterruptedException {
        String id = served.demo().text();
        URI job = URI.create(served.address() + "api/jobs/" + id + "?version=2");
        for (String[] header : List.of(
                new String[] {"Origin", "http://elsewhere.example"},
                new String[] {"Origin", "null"},
                new String[] {"Sec-Fetch-Site", "cross-site"},
                new String[] {"Sec-Fetch-Site", "same-site"})) {
            assertThat(client.send(HttpRequest.newBuilder(job).DELETE().header(header[0], header[1]))
                            .statusCode())
                    .as("%s: %s", header[0], header[1])
                    .isEqualTo(403);
            assertThat(client.send(HttpRequest.newBuilder(job).header(header[0], header[1]))
                            .statusCode())
                    .isEqualTo(403);
        }
        HttpResponse<byte[]> own = client.send(
                HttpRequest.newBuilder(job).header("Origin", served.address().replaceAll("/$", "")));
        assertThat(own.statusCode()).isEqualTo(200);
        assertThat(own.headers().firstValue("Access-Control-Allow-Origin")).isEmpty();
        assertThat(client.send(HttpRequest.newBuilder(job).method("OPTIONS", HttpRequest.BodyPublishers.noBody()))
                        .statusCode())
                .isEqualTo(405);
        HttpRequest.Builder page = HttpRequest.newBuilder(URI.create(served.address() + "jobs/" + id));
        assertThat(client.send(page.DELETE()).statusCode())
                .as("the page knows no such verb")
                .isEqualTo(405);
    }

    @Test
    void a_table_that_is_sent_stands_in_place_of_the_job_s_own() throws IOException, InterruptedException {
        client.call(client.operation("makeJob"));
        DescribedClient.Asked blanks = client.operation("forecastBlanks");
        JsonNode forecast = DescribedClient.json(client.call(blanks));
        assertThat(forecast.get("blanks").findValuesAsText("blank")).containsExactly("a", "b", "c");
        String headless = "{\"blanks\": \"a,520\\n\"}";
        assertThat(problem(client.call(blanks, Map.of(), Optional.of(headless)))
                        .get("error")
                        .textValue())
                .contains("'blank'");

        DescribedClient.Asked price = client.operation("priceTimes");
        String times = "{\"times\": \"stage,minutes\\nturning,40\\nturning,40\\nturning,40\\n\"}";
        JsonNode longer = DescribedClient.json(client.call(price, Map.of(), Optional.of(times)));
        JsonNode shorter = DescribedClient.json(client.call(price, Map.of(), Optional.of(times.replace("40", "20"))));
        assertThat(shorter.get("total_minutes").doubleValue())
                .isPositive()
                .isLessThan(longer.get("total_minutes").doubleValue());
        assertThat(problem(client.call(price, Map.of(), Optional.of("{}")))
                        .get("where")
                        .textValue())
                .isEqualTo("times");
    }

    @Test
    void a_finished_piece_is_held_against_a_kept_job() throws IOException, InterruptedException {
        JobId id = served.demo();
        DescribedClient.Asked trace = client.operation("trace");
        assertThat(DescribedClient.json(client.call(trace)).has("against")).isFalse();
        String table = "x,diameter\n0,19\n20,19\n60,30\n120,25\n200,24\n300,22\n380,19\n";
        JsonNode found = DescribedClient.json(client.call(trace, Map.of(), Optional.of(form(table, id.text()))));
        assertThat(found.get("against").isObject()).isTrue();
        assertThat(problem(client.call(trace, Map.of(), Optional.of(form(table, "0000-0000-0000"))))
                        .get("where")
                        .textValue())
                .isEqualTo("job");
    }

    private static String form(String table, String job) {
        return String.join(
                "\r\n",
                "--edge",
                "Content-Disposition: form-data; name=\"source\"; filename=\"a.csv\"",
                "Content-Type: text/csv",
                "",
                table,
                "--edge",
                "Content-Disposition: form-data; name=\"against\"",
                "",
                job,
                "--edge--",
                "");
    }

    @Test
    void what_is_wrong_is_told_in_german_where_that_is_asked_for() throws IOException, InterruptedException {
        client.call(client.operation("makeJob"));
        Set<String> untold = new TreeSet<>();
        for (DescribedClient.Asked each : client.operations()) {
            List<HttpResponse<byte[]>> wrong = new ArrayList<>();
            if (each.asks("job")) {
                wrong.add(client.call(each, Map.of("job", "0000-0000-0000"), Optional.empty()));
                wrong.add(client.call(each, Map.of("job", "the wheel"), Optional.empty()));
            }
            if (each.asks("version")) {
                wrong.add(client.call(each, Map.of("version", "99"), Optional.empty()));
                wrong.add(client.call(each, Map.of("version", "soon"), Optional.empty()));
            }
            if (each.sends()) {
                wrong.add(client.call(each, Map.of(), Optional.of("{\"fields\": 3, \"pieces\": [7]}")));
            }
            for (HttpResponse<byte[]> answer : wrong) {
                if (answer.statusCode() >= 400) {
                    JsonNode told = problem(answer);
                    untold.add(told.get("what").textValue());
                    untold.add(told.get("mend").textValue());
                }
            }
        }
        untold.removeIf(Language.GERMAN::knows);
        assertThat(untold).isEmpty();

        client.speak("de-AT,de;q=0.9,en;q=0.8");
        JsonNode german =
                problem(client.call(client.operation("plan"), Map.of("job", "0000-0000-0000"), Optional.empty()));
        assertThat(german.get("error").textValue())
                .isEqualTo("Auftrag: Auftrag 0000-0000-0000 ist nicht in dieser Ablage; die Kennung prüfen");
    }
}
