package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.job.edit.Starter;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKind;
import turnalike.units.Length;

class PagesTest {
    @TempDir
    private Path folder;

    private Served served;
    private String demo = "";

    @BeforeEach
    void serve() throws Site.PortTaken {
        served = Served.in(folder);
        demo = "/jobs/" + served.demo().text();
    }

    @AfterEach
    void close() {
        served.close();
    }

    private KeptJob kept() {
        return served.store().find(served.demo()).orElseThrow();
    }

    @Test
    void a_new_store_begins_with_the_demo_beside_an_empty_job() throws Exception {
        assertThat(served.get("/").body())
                .contains("Harrowmead")
                .contains("New job")
                .contains("17 pieces logged");
    }

    @Test
    void every_starter_pattern_becomes_a_job_of_the_size_asked_that_can_be_built() throws Exception {
        String page = served.get("/starters?length=900&size=50&units=mm").body();
        for (Starter starter : Starter.values()) {
            assertThat(page).contains("value=\"" + starter.word() + "\"");
            HttpResponse<String> answer =
                    served.post("/starters", "starter=%s&length=900&size=50&units=mm".formatted(starter.word()));
            assertThat(answer.statusCode()).as(starter.word()).isEqualTo(303);
            String job = answer.headers().firstValue("location").orElseThrow();
            assertThat(served.get(job).body())
                    .contains("900 mm", starter.title())
                    .doesNotContain("class=\"problems\"")
                    .doesNotContain("annot be built");
        }
        assertThat(served.get("/starters?length=60&size=50&units=mm").body())
                .contains("is no length for it", "give from")
                .doesNotContain("value=\"vase-baluster\"");
        assertThat(served.post("/starters", "starter=wobble").statusCode()).isEqualTo(422);
        assertThat(served.get("/starters?length=soon").statusCode()).isEqualTo(422);
        // Other units chosen, what was typed stays as long as it was, and the usual blank becomes that of those units.
        assertThat(served.get("/starters?was=in&units=mm&length=16&size=1+3/4").body())
                .contains("value=\"406.4 mm\"", "value=\"45\"", "Start from it");
        assertThat(served.get("/starters?was=mm&units=in&length=&size=2+in").body())
                .contains("value=\"2 in\"");
    }

    @Test
    void the_list_has_pictures_finds_by_title_and_doubles_a_job_without_its_pieces() throws Exception {
        var original = served.demo();
        assertThat(served.get("/").body()).contains("src=\"" + demo + "/picture.svg\"");
        HttpResponse<String> picture = served.get(demo + "/picture.svg");
        assertThat(picture.headers().firstValue("Content-Type").orElse("")).startsWith("image/svg+xml");
        assertThat(picture.body()).contains("Fair wheel spindle as turned");
        assertThat(served.get("/?sought=HARROW").body()).contains("Harrowmead").doesNotContain("<strong>New job");
        assertThat(served.get("/?sought=%3Cb%3E").body())
                .contains("No job", "&lt;b>")
                .doesNotContain("<b>");
        HttpResponse<String> answer = served.post(demo + "/double", "");
        assertThat(answer.statusCode()).isEqualTo(303);
        KeptJob copy = served.store()
                .find(served.job("Harrowmead fair wheel (an invented order) (copy)"))
                .orElseThrow();
        assertThat(copy.pieces()).isEmpty();
        assertThat(copy.text().job().pattern())
                .isEqualTo(
                        served.store().find(original).orElseThrow().text().job().pattern());
        assertThat(served.store().find(original).orElseThrow().pieces()).hasSize(17);
        assertThat(served.post("/jobs/2222-2222-2222/double", "").statusCode()).isEqualTo(404);
    }

    @Test
    void every_view_of_a_job_is_there() throws Exception {
        for (String view : List.of(
                "",
                "?member=99",
                "?member=x",
                "/pieces",
                "/wood",
                "/price",
                "/match",
                "/sheets",
                "/look",
                "/settings",
                "/nudges")) {
            assertThat(served.get(demo + view).statusCode()).as(view).isEqualTo(200);
        }
    }

    /** A pound in a cubic foot is 16.018 46 kg/m³ (NIST SP 811, appendix B.8; from memory): these are 49.951 and 50.049 of them. */
    @ParameterizedTest
    @CsvSource({"800.14,800", "801.71,802"})
    void a_density_is_shown_in_pounds_a_cubic_foot_beside_kilograms_a_cubic_metre(String density, String shown)
            throws Exception {
        var id = served.store().keep(JobText.read("""
                        {"format": "turnalike-job", "version": 1, "title": "Heavy", "units": "mm",
                         "pattern": {"stock": {"section": "round", "size": 30, "length": 100},
                          "members": [{"kind": "cylinder", "length": 100, "diameter": 20}]},
                         "wood": {"density_kg_m3": %s}}
                        """.formatted(density)).text().orElseThrow());
        assertThat(served.get("/jobs/" + id.text()).body())
                .contains(shown + " kg/m³")
                .contains("50.0 lb/ft³");
    }

    @Test
    void what_is_not_there_is_said_to_be_not_there() throws Exception {
        for (String path : List.of(
                "/nowhere",
                "/jobs/nonsense",
                "/jobs/2222-2222-2222",
                demo + "/nowhere",
                demo + "/sheets/other.pdf",
                demo + "/sheets/job.json")) {
            HttpResponse<String> answer = served.get(path);
            assertThat(answer.statusCode()).as(path).isEqualTo(404);
            assertThat(answer.body()).contains("Not done").doesNotContain("Exception");
        }
    }

    @Test
    void help_shows_every_kind_of_member() throws Exception {
        String help = served.get("/help").body();
        for (MemberKind kind : MemberKind.all()) {
            assertThat(help).contains("id=\"" + kind.word() + "\"");
        }
    }

    @Test
    void a_refused_edit_answers_with_what_is_wrong_and_keeps_nothing() throws Exception {
        int steps = kept().times().steps();
        HttpResponse<String> answer = served.post(demo + "/member/3", "crown=1");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("must exceed the root").contains("value=\"1\"");
        assertThat(served.post(demo + "/member/99/remove", "").statusCode()).isEqualTo(422);
        assertThat(served.post(demo + "/member/3/turn", "kind=banana").statusCode())
                .isEqualTo(422);
        assertThat(kept().times().steps()).isEqualTo(steps);
    }

    @Test
    void an_edit_that_changes_nothing_is_no_step() throws Exception {
        int steps = kept().times().steps();
        assertThat(served.post(demo + "/member/3", "crown=1+1%2F2&name=hub+bead&by_eye=")
                        .statusCode())
                .isEqualTo(303);
        assertThat(kept().times().steps()).isEqualTo(steps);
    }

    @Test
    void a_tenons_hole_is_typed_on_the_page() throws Exception {
        assertThat(served.post(demo + "/member/1", "hole=13%2F16").statusCode()).isEqualTo(303);
        assertThat(kept().text().job().pattern().members().get(0).enters())
                .contains(new Member.Hole(Length.ofInches(13 / 16.0), true));
        HttpResponse<String> small = served.post(demo + "/member/1", "hole=0");
        assertThat(small.statusCode()).isEqualTo(422);
        assertThat(small.body()).contains("must be above zero");
        served.post(demo + "/undo", "");
    }

    /** 20 and 20.5 mm from the two ends: half a millimetre makes them one opening. */
    @Test
    void a_nudge_is_listed_taken_with_one_step_and_undone() throws Exception {
        var id = served.store().keep(JobText.read("""
                        {"format": "turnalike-job", "version": 1, "title": "Nearly even", "units": "mm",
                         "tolerances": {"mark": 0.5},
                         "pattern": {"stock": {"section": "round", "size": 40, "length": 130}, "members": [
                          {"kind": "cylinder", "length": 20, "diameter": 30},
                          {"kind": "cylinder", "length": 80, "diameter": 25},
                          {"kind": "cylinder", "length": 20.5, "diameter": 30}]},
                         "wood": {"density_kg_m3": 700}}
                        """).text().orElseThrow());
        String job = "/jobs/" + id.text();
        String list = served.get(job + "/nudges").body();
        assertThat(list)
                .contains("stand 0.5 mm further on, and 1 divider opening does instead of 2")
                .contains("value=\"1:length:0.5\"");
        assertThat(served.post(job + "/nudge", "moves=1%3Alength%3A0.5").statusCode())
                .isEqualTo(303);
        var kept = served.store().find(id).orElseThrow();
        assertThat(kept.undo()).contains("nudge the end of member 1 (cylinder)");
        assertThat(kept.text().job().pattern().marks().get(1).place()).isEqualTo(Length.ofMm(20.5));
        served.post(job + "/undo", "");
        assertThat(served.store()
                        .find(id)
                        .orElseThrow()
                        .text()
                        .job()
                        .pattern()
                        .marks()
                        .get(1)
                        .place())
                .isEqualTo(Length.ofMm(20));
        for (String bad : List.of("", "x", "9%3Alength%3A0.5", "1%3Abanana%3A0.5", "1%3Alength%3A-500")) {
            assertThat(served.post(job + "/nudge", "moves=" + bad).statusCode())
                    .as(bad)
                    .isEqualTo(422);
        }
    }

    @Test
    void edits_can_be_undone_and_redone() throws Exception {
        served.post(demo + "/member/3", "crown=1+3%2F8");
        assertThat(kept().undo()).contains("hub bead 3 thinner at the crown: 1 1/2 → 1 3/8 in");
        served.post(demo + "/undo", "");
        assertThat(kept().redo()).contains("hub bead 3 thinner at the crown: 1 1/2 → 1 3/8 in");
        served.post(demo + "/redo", "");
        assertThat(kept().text().job().pattern().members().get(2).diameters())
                .anySatisfy(each -> assertThat(each.size()).isEqualTo(Length.ofInches(1.375)));
    }

    private static String table(int from, int to) {
        StringBuilder out = new StringBuilder("piece,mass_g,note\n");
        for (int i = from; i <= to; i++) {
            out.append(i).append(",14.").append(i % 7).append(",a note of some length and no knot\n");
        }
        return "sure=yes&cells=" + URLEncoder.encode(out.toString(), StandardCharsets.UTF_8);
    }

    private static List<String> shown(String page) {
        return Pattern.compile("aria-label=\"Take out piece (\\d+)\"")
                .matcher(page)
                .results()
                .map(each -> each.group(1))
                .toList();
    }

    @Test
    void a_long_table_is_shown_in_parts() throws Exception {
        assertThat(served.get(demo + "/pieces").body()).doesNotContain("Parts of the table");
        served.post(demo + "/pieces/table", table(18, 300));
        int lettersFor300 = served.get(demo + "/pieces").body().length();
        assertThat(served.post(demo + "/pieces/table", table(18, 6000)).statusCode())
                .as("more than 200,000 letters pasted")
                .isEqualTo(303);
        String last = served.get(demo + "/pieces").body();
        assertThat(shown(last)).hasSize(100).startsWith("5901").endsWith("6000");
        assertThat(last)
                .contains("5901 to 6000 of 6000", "last 200 of 6000", "The 20 most unlike of 6000")
                .doesNotContain("rel=\"next\"");
        String first = served.get(demo + "/pieces?from=1").body();
        assertThat(shown(first)).hasSize(100).startsWith("1").endsWith("100");
        assertThat(first).contains("?from=101&amp;column=mass_g#all-h").doesNotContain("rel=\"prev\"");
        assertThat(shown(served.get(demo + "/pieces?piece=250").body()))
                .startsWith("201")
                .endsWith("300");
        assertThat(shown(served.get(demo + "/pieces?from=99999").body())).endsWith("6000");
        assertThat(shown(served.get(demo + "/pieces?from=x").body())).endsWith("6000");
        HttpResponse<String> out = served.post(demo + "/pieces/remove", "piece=250&from=201");
        assertThat(out.headers().firstValue("location").orElse("")).endsWith("/pieces?from=201#all-h");
        assertThat(shown(served.get(demo + "/pieces?from=201").body()))
                .hasSize(100)
                .doesNotContain("250")
                .endsWith("301");
        assertThat(last.length()).as("as long as for 300").isLessThan(lettersFor300 * 6 / 5);
    }

    @Test
    void a_job_carried_away_comes_back_with_its_pieces_and_history() throws Exception {
        String whole = served.get(demo + "/whole.json").body();
        assertThat(turnalike.job.kept.GivenJob.read(whole).job()).hasValueSatisfying(job -> {
            assertThat(job.kept().pieces()).hasSize(17);
            assertThat(job.kept().text()).isEqualTo(kept().text());
        });
        String file = served.get(demo + "/job.json").body();
        assertThat(JobText.read(file).text()).contains(kept().text());
    }

    @Test
    void a_slip_is_asked_about_and_kept_only_when_it_is_meant() throws Exception {
        HttpResponse<String> asked = served.post(demo + "/pieces", "piece=18&mass_g=14.15&had_mass_g=");
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body()).contains("Is this right?");
        assertThat(kept().find("18")).isEmpty();
        assertThat(served.post(demo + "/pieces", "piece=18&mass_g=14.15&had_mass_g=&sure=yes")
                        .statusCode())
                .isEqualTo(303);
        assertThat(kept().find("18").orElseThrow().piece().mass().orElseThrow().grams())
                .isEqualTo(14.15);
    }

    @Test
    void a_diameter_is_held_against_the_pattern_before_any_other_was_measured() throws Exception {
        for (KeptPiece piece : kept().pieces()) {
            served.post(demo + "/pieces/remove", "piece=" + piece.label());
        }
        HttpResponse<String> asked = served.post(demo + "/pieces", "piece=1&d1=10&had_d1=");
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body()).contains("1 in meant?");
    }

    @Test
    void pasted_ounces_are_asked_about_in_ounces() throws Exception {
        HttpResponse<String> asked = served.post(demo + "/pieces/table", "cells=piece%2Cmass_oz%0A18%2C0.5%0A19%2C5");
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body()).contains("0.5 oz", "<strong>piece 18</strong>").doesNotContain("column mass_oz");
    }

    @Test
    void a_measure_that_cannot_be_read_is_told_at_its_field() throws Exception {
        HttpResponse<String> answer = served.post(demo + "/pieces", "piece=18&mass_g=heavy&had_mass_g=");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("value=\"heavy\"").contains("aria-invalid=\"true\"");
    }

    @Test
    void pasted_cells_with_something_wrong_keep_nothing_and_stay_to_be_mended() throws Exception {
        HttpResponse<String> answer = served.post(demo + "/pieces/table", "cells=piece%2Cmass_g%0A18%2Cx");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("piece,mass_g");
        assertThat(kept().pieces()).hasSize(17);
    }

    @Test
    void further_columns_of_pasted_cells_are_kept_with_a_piece_that_is_there() throws Exception {
        served.post(demo + "/pieces/table", "cells=piece%2Ccolour%2Cgrain%0A7%2Cpale%2Cplain&sure=yes");
        served.post(demo + "/pieces/table", "cells=piece%2Ccolour%0A7%2Cdark&sure=yes");
        assertThat(kept().find("7").orElseThrow().piece().extra())
                .containsEntry("colour", "dark")
                .containsEntry("grain", "plain");
        assertThat(kept().find("7").orElseThrow().piece().mass()).isPresent();
    }

    @Test
    void what_is_judged_by_eye_gets_a_weight_a_field_and_a_column() throws Exception {
        assertThat(served.get(demo + "/pieces").body()).doesNotContain("judged by eye");
        assertThat(served.post(demo + "/fields", "likeness.noted=colour%3B0.5%0Agrain+%3B+2")
                        .statusCode())
                .isEqualTo(303);
        assertThat(kept().text().job().likeness().noted())
                .containsEntry("colour", 0.5)
                .containsEntry("grain", 2.0);
        served.post(demo + "/pieces", "piece=7&noted.colour=+pale+&had_noted.colour=&sure=yes");
        served.post(demo + "/pieces", "piece=8&noted.colour=dark&had_noted.colour=&sure=yes");
        assertThat(kept().find("7").orElseThrow().piece().extra()).containsEntry("colour", "pale");
        String page = served.get(demo + "/pieces?piece=7").body();
        assertThat(page)
                .contains("name=\"noted.colour\" value=\"pale\"")
                .contains("name=\"noted.colour\" value=\"dark\"");
        served.post(demo + "/pieces", "piece=7&noted.colour=&had_noted.colour=pale&sure=yes");
        assertThat(kept().find("7").orElseThrow().piece().extra()).isEmpty();
        HttpResponse<String> odd =
                served.post(demo + "/pieces", "piece=8&noted.colour=a%0Ab&had_noted.colour=&sure=yes");
        assertThat(odd.statusCode()).isEqualTo(422);
        assertThat(odd.body()).contains("is more than one line of letters");
    }

    @Test
    void a_piece_with_the_longest_label_a_table_may_have_is_weighed_on_the_page() throws Exception {
        String label = "x".repeat(64);
        served.post(demo + "/pieces/table", "cells=piece%2Clength%0A" + label + "%2C15&sure=yes");
        assertThat(served.post(demo + "/pieces", "piece=" + label + "&mass_g=141&had_mass_g=&sure=yes")
                        .statusCode())
                .isEqualTo(303);
        assertThat(kept().find(label).orElseThrow().piece().mass()).isPresent();
        assertThat(served.post(demo + "/pieces", "piece=" + label + "x&mass_g=141&had_mass_g=&sure=yes")
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void a_piece_taken_out_is_gone_and_comes_back_by_undo() throws Exception {
        served.post(demo + "/pieces/remove", "piece=7");
        assertThat(kept().find("7")).isEmpty();
        served.post(demo + "/undo", "");
        assertThat(kept().find("7")).isPresent();
    }

    /** The page once its search has ended: it answers before that where the machine is busy. */
    private String found() throws Exception {
        long last = System.nanoTime() + TimeUnit.SECONDS.toNanos(120);
        String body = served.get(demo + "/match").body();
        while (body.contains("id=\"stop\"") && System.nanoTime() < last) {
            Thread.sleep(100);
            body = served.get(demo + "/match").body();
        }
        return body;
    }

    @Test
    void the_set_is_found_and_a_longer_search_can_be_stopped() throws Exception {
        assertThat(found()).contains("Unbalance").contains("Which goes where");
        assertThat(served.post(demo + "/match", "seconds=600&strict=true").statusCode())
                .isEqualTo(303);
        HttpResponse<String> progress = served.get(demo + "/match");
        if (progress.body().contains("id=\"stop\"")) {
            assertThat(progress.body()).contains("of 600 s");
            assertThat(served.post(demo + "/match/stop", "").statusCode()).isEqualTo(303);
        }
        assertThat(found()).contains("Unbalance").doesNotContain("id=\"stop\"");
        var listening = served.request(demo + "/match/progress")
                .header("Accept", "text/event-stream")
                .GET()
                .build();
        String told = java.net.http.HttpClient.newHttpClient()
                .send(listening, HttpResponse.BodyHandlers.ofString())
                .body();
        assertThat(told).contains("event: done");
    }

    @Test
    void chart_and_record_are_handed_out_as_pdf() throws Exception {
        found();
        for (String file : List.of(
                "/pieces/control-chart/a4.pdf?column=mass_g",
                "/pieces/control-chart/letter.pdf?column=length",
                "/match/set-record-a4.pdf",
                "/match/set-record-us-letter.pdf")) {
            HttpResponse<String> answer = served.get(demo + file);
            assertThat(answer.statusCode()).as(file).isEqualTo(200);
            assertThat(answer.body()).startsWith("%PDF-");
        }
        assertThat(served.get(demo + "/pieces/control-chart/a5.pdf").statusCode())
                .isEqualTo(404);
        assertThat(served.get(demo + "/pieces/control-chart/a4.pdf?column=d9").statusCode())
                .isEqualTo(404);
    }

    @Test
    void the_chart_carries_the_unit_of_its_column() throws Exception {
        served.post(demo + "/pieces/table", "cells=piece%2Cshade%0A1%2C3%0A2%2C4%0A3%2C3%0A4%2C4%0A5%2C3&sure=yes");
        assertThat(chart("mass_g")).contains(", g").contains("Weights");
        assertThat(served.get(demo + "/pieces").body()).contains(">weight</option>");
        assertThat(chart("mass_oz")).contains(", oz").doesNotContain(", g");
        assertThat(chart("length")).contains(", in");
        assertThat(chart("shade")).doesNotContain(", mm");
    }

    private String chart(String column) throws Exception {
        String page = served.get(demo + "/pieces?column=" + column).body();
        return page.substring(page.indexOf("aria-label=\"Control chart\""), page.indexOf("The chart on A4"));
    }

    @Test
    void a_heavy_piece_is_told_how_it_comes_to_weight() throws Exception {
        String much = served.get(demo + "/pieces?piece=6").body();
        assertThat(much)
                .contains("Bring it to weight")
                .contains("Piece 6 weighs 148.9 g")
                .contains("Turn another");
        assertThat(served.get(demo + "/pieces?piece=12").body()).contains("Weigh between cuts");
    }

    @Test
    void a_light_piece_is_told_the_ways_there_are() throws Exception {
        assertThat(served.get(demo + "/pieces?piece=8").body())
                .contains("it lacks 3.5 g")
                .contains("bring the others down to it, each by so much: 1 (0.5 g)")
                .contains("2.5 % heavier");
    }

    @Test
    void a_job_without_a_frame_says_what_is_in_the_way() throws Exception {
        String page =
                served.get("/jobs/" + served.job("New job").text() + "/match").body();
        assertThat(page).contains("no frame");
    }
}
