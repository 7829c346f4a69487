package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobId;
import turnalike.web.copy.Originals;

/** Walks all pages, of the demo, of an empty job and after a refusal, and reads them as a turner would. */
class WordsOnPagesTest {
    /** What a person writes themself: the job file is shown and sent as it is, and a field's own figures. */
    private static final Pattern UNREAD = Pattern.compile(
            "(?s)<(script|style|svg|textarea)\\b.*?</\\1>|<option\\b.*?</option>|<!--.*?-->|<head>.*?</head>");

    private static final Pattern TAG = Pattern.compile("<[^>]*>");

    private static final List<Pattern> NOT_OURS_TO_SAY = List.of(
            Pattern.compile("\\b[a-z][a-z0-9]*_[a-z0-9_]+"), // a key
            Pattern.compile("\\b(?:turning|frame|stock|wood|match|likeness|settings|pattern)\\.[a-z]\\w*"), // a path
            Pattern.compile("[{}`]|\\bnull\\b|\\bNaN\\b|\\bInfinity\\b|Optional\\[|[A-Za-z]Exception"),
            Pattern.compile("VERIFIED|RECALLED|REDACTED|TODO|\\bS\\d+\\+S\\d+"),
            Pattern.compile(
                    "(?i)\\ba (?:[aeio]|u(?!n?i|se))[a-z]{2,}|\\ban (?:[bcdfgjklmnpqrstvwxyz])[a-z]{2,}"), // the
            // article
            Pattern.compile(
                    "\\b1 (?:pieces|blanks|openings|marks|places|members|settings|sheets|pages|boards)\\b(?! of)"),
            Pattern.compile(
                    "\\bin in\\b|\\bmm mm\\b|\\.\\.(?!\\.)|,,| ,|\\( | ;(?! [a-z0-9])|\\bthe the\\b|\\bof of\\b"),
            Pattern.compile("(?:^|[ (])--[a-z]+"), // an option of the command
            Pattern.compile("\\d\\.\\d{9,}")); // a figure that nobody rounded

    @TempDir
    private Path folder;

    @Test
    void no_page_speaks_as_a_developer_or_with_a_wrong_article() throws Exception {
        try (Served served = Served.in(folder)) {
            List<String> found = new ArrayList<>();
            for (String page : List.of(
                    "/",
                    "/starters",
                    "/bin",
                    "/starters?length=9&size=2",
                    "/starters?length=x",
                    "/copy",
                    "/copy?units=in",
                    "/help",
                    "/nowhere",
                    "/jobs/2222-2222-2222")) {
                read(served, page, found);
            }
            for (JobId job : List.of(served.demo(), served.job("New job"))) {
                String at = "/jobs/" + job.text();
                for (String tab : List.of(
                        "/pieces",
                        "/match",
                        "/turning",
                        "/sheets",
                        "/bench",
                        "/nudges",
                        "/look",
                        "/copy",
                        "/check",
                        "/resize",
                        "/wood",
                        "/price",
                        "/history",
                        "/history/1")) {
                    read(served, at + tab, found);
                }
                int members = served.store()
                        .find(job)
                        .orElseThrow()
                        .text()
                        .job()
                        .pattern()
                        .members()
                        .size();
                for (int member = 1; member <= members; member++) {
                    read(served, at + "?member=" + member, found);
                }
                refusals(served, at, found);
                originals(served, at, found);
                wood(served, at, found);
            }
            assertThat(found).isEmpty();
        }
    }

    /** What is said to somebody who mistypes. */
    private static void refusals(Served served, String at, List<String> found) throws Exception {
        judge(
                at + " size",
                served.post(at + "/member/1", "member=1&length=soon").body(),
                found);
        judge(
                at + " species",
                served.post(at + "/fields", "wood.species=Wishwood").body(),
                found);
        judge(
                at + " weight",
                served.post(at + "/pieces", "piece=9&mass_g=heavy").body(),
                found);
        judge(
                at + " cells",
                served.post(at + "/pieces/table", "cells=stone%2Cload%0A1%2C2").body(),
                found);
        judge(at + " kind", served.post(at + "/member/1/turn", "kind=wobble").body(), found);
    }

    /** What is said of an original that was traced, and of ones that were not. */
    private static void originals(Served served, String at, List<String> found) throws Exception {
        for (String table : List.of(
                "x,diameter%0A0,40%0A60,40%0A120,40%0A120,52%0A200,30%0A300,30",
                "x,diameter%0A0,wide", "stone,load%0A1,2")) {
            for (String form : List.of("/copy", at + "/copy", at + "/check")) {
                for (String known : List.of("units=mm&piece=7", "units=in&piece=7", "units=mm&piece=7&error=0.1")) {
                    var sent = served.post(form, known + "&points=" + table);
                    judge(form + " " + table, Originals.done(served, sent).body(), found);
                }
            }
        }
    }

    /** The shop's tables mistyped, then filled, and what follows from them. */
    private static void wood(Served served, String at, List<String> found) throws Exception {
        String row = at + "/wood/boards/row";
        judge(
                at + " board",
                served.post(row, "c_board=A&c_thickness=thick&c_width=-1").body(),
                found);
        judge(
                at + " wood",
                served.post(row, "c_board=A&c_species=Wishwood&c_count=some").body(),
                found);
        judge(
                at + " blank",
                served.post(at + "/wood/blanks/row", "c_blank=1&c_mass_g=9999").body(),
                found);
        judge(
                at + " lost",
                served.post(at + "/wood/blanks/row", "c_blank=1&c_mass_g=&c_lost=perhaps")
                        .body(),
                found);
        judge(
                at + " time",
                served.post(at + "/wood/times/row", "c_stage=&c_minutes=long").body(),
                found);
        judge(
                at + " paste",
                served.post(at + "/wood/blanks/paste", "cells=stone%2Cload%0A1%2C2")
                        .body(),
                found);
        judge(
                at + " rate",
                served.post(at + "/price", "rate=dear&others=wood&tax_pct=900").body(),
                found);
        served.post(
                at + "/wood/boards/paste",
                "cells=board%2Cthickness%2Cwidth%2Clength%0AA%2C60+mm%2C200+mm%2C1500+mm%0AB%2C1%2F4+in%2C3+in%2C1+m");
        served.post(at + "/wood/blanks/paste", "cells=blank%2Cmass_g%0A1%2C560%0A20%2C555%0A21%2C5%0A");
        served.post(at + "/wood/times/paste", "cells=stage%2Cminutes%0Aturning%2C40%0Amilling%2C9%0A");
        served.post(at + "/price", "rate=45&markup_pct=10&tax_pct=20&currency=EUR&others=wood+%3B+9");
        served.post(at + "/wood/cut", "seconds=0");
        served.post(at + "/wood/stop", "x=");
        read(served, at + "/wood", found);
        read(served, at + "/price", found);
    }

    private static void read(Served served, String page, List<String> found) throws IOException, InterruptedException {
        judge(page, served.get(page).body(), found);
    }

    private static void judge(String page, String html, List<String> found) {
        for (String line : words(html)) {
            for (Pattern each : NOT_OURS_TO_SAY) {
                var hit = each.matcher(line);
                if (hit.find()) {
                    found.add("%s: «%s» in: %s".formatted(page, hit.group(), line));
                }
            }
        }
    }

    private static List<String> words(String html) {
        String text = TAG.matcher(UNREAD.matcher(html).replaceAll("\n")).replaceAll("\n");
        return text.lines()
                .map(line -> line.replace("&quot;", "\"")
                        .replace("&#39;", "'")
                        .replace("&amp;", "&")
                        .replace("&lt;", "<"))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .distinct()
                .toList();
    }

    @Test
    void the_reader_sees_what_it_looks_for() {
        List<String> found = new ArrayList<>();
        for (String bad : List.of(
                "What is a ogee?",
                "column mass_g",
                "set turning.force_n",
                "add {…}",
                "(VERIFIED, S3)",
                "1 pieces logged",
                "now in in",
                "range 2.812500000000007",
                "an bead")) {
            judge("sample", "<p>" + bad + "</p>", found);
        }
        assertThat(found).hasSize(10);
        judge("sample", "<p>a useful unit, a union, an hour, 1 piece, 2.81 g</p><textarea>mass_g</textarea>", found);
        assertThat(found).hasSize(10);
    }
}
