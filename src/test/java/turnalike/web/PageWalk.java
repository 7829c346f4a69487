package turnalike.web;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import turnalike.job.kept.JobId;
import turnalike.web.copy.Originals;

/** All pages: of the demo, of an empty job and after a refusal. */
final class PageWalk {
    private final Served served;
    private final BiConsumer<String, String> seen;

    /**
     * @param served what is walked
     * @param seen is told where each page stood and its HTML
     */
    PageWalk(Served served, BiConsumer<String, String> seen) {
        this.served = served;
        this.seen = seen;
    }

    void all() throws Exception {
        for (String page : List.of(
                "/",
                "/starters",
                "/bin",
                "/starters?length=9&size=2",
                "/starters?length=x",
                "/copy",
                "/copy?units=in",
                "/licences",
                "/help",
                "/nowhere",
                "/jobs/2222-2222-2222")) {
            read(page);
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
                read(at + tab);
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
                read(at + "?member=" + member);
            }
            refusals(at);
            originals(at);
            wood(at);
        }
        deeds("/jobs/" + served.demo().text());
    }

    /** What hangs on the kind of frame. */
    void frame(String at) throws Exception {
        for (String tab : List.of("", "/match", "/turning", "/pieces", "/sheets", "/wood")) {
            read(at + tab);
        }
    }

    /** What is said to somebody who mistypes. */
    private void refusals(String at) throws Exception {
        seen.accept(
                at + " size",
                served.post(at + "/member/1", "member=1&length=soon").body());
        seen.accept(
                at + " species",
                served.post(at + "/fields", "wood.species=Wishwood").body());
        seen.accept(
                at + " weight",
                served.post(at + "/pieces", "piece=9&mass_g=heavy").body());
        seen.accept(
                at + " cells",
                served.post(at + "/pieces/table", "cells=stone%2Cload%0A1%2C2").body());
        seen.accept(
                at + " kind", served.post(at + "/member/1/turn", "kind=wobble").body());
    }

    /** What is asked and told while the pieces, the pattern and the job itself are worked on. */
    private void deeds(String at) throws Exception {
        done(at + "/pieces", "piece=99&mass_g=1409");
        done(at + "/pieces/table", "cells=piece%2Cmass_g%0A98%2C1408%0A97%2C1407");
        done(at + "/pieces", "sure=yes&piece=99&mass_g=1409&length=15.5");
        done(at + "/pieces/remove", "piece=99");
        done(at + "/pieces/spoiled", "piece=99");
        done(at + "/steps/undo", "tab=/pieces");
        done(at + "/steps/redo", "tab=/pieces");
        for (String asked : List.of("?piece=6", "?piece=8", "?sort=unlike", "?sort=-mass_g", "?column=length")) {
            read(at + "/pieces" + asked);
        }
        done(at + "/resize/scale", "what=all&pct=110&tenons=true");
        done(at + "/resize/scale", "what=all&pct=much");
        done(at + "/resize/stretch", "length=22 in&member=6");
        done(at + "/resize/stretch", "length=3 in&member=6");
        done(at + "/mirror", "x=");
        read(at + "/resize");
        read(at + "/history");
        read(at + "/history/2");
        done(at + "/units", "units=mm");
        done(at + "/fields", "frame.hub_radius=9");
        read(at + "/match");
        done("/tour", "x=");
        for (int step = 2; step <= 5; step++) {
            done(at + "/tour", "step=" + step);
        }
        done(at + "/double", "x=");
        done(at + "/rename", "title=Another");
        done("/jobs/" + served.job("New job").text() + "/bin", "x=");
        read("/bin");
        read("/?sought=nothing");
        read("/?sought=New");
    }

    /** What comes of it: the page it leads to, or the one that says why it cannot be. */
    private void done(String path, String form) throws IOException, InterruptedException {
        HttpResponse<String> answer = served.post(path, form.replace(" ", "+"));
        Optional<String> leads = answer.headers().firstValue("Location");
        if (leads.isPresent()) {
            read(leads.get());
        } else {
            seen.accept(path + " " + form, answer.body());
        }
    }

    /** What is said of an original that was traced, and of ones that were not. */
    private void originals(String at) throws Exception {
        for (String table : List.of(
                "x,diameter%0A0,40%0A60,40%0A120,40%0A120,52%0A200,30%0A300,30",
                "x,diameter%0A0,wide", "stone,load%0A1,2")) {
            for (String form : List.of("/copy", at + "/copy", at + "/check")) {
                for (String known : List.of("units=mm&piece=7", "units=in&piece=7", "units=mm&piece=7&error=0.1")) {
                    var sent = served.post(form, known + "&points=" + table);
                    seen.accept(form + " " + table, Originals.done(served, sent).body());
                }
            }
        }
    }

    /** The shop's tables mistyped, then filled, and what follows from them. */
    private void wood(String at) throws Exception {
        String row = at + "/wood/boards/row";
        seen.accept(
                at + " board",
                served.post(row, "c_board=A&c_thickness=thick&c_width=-1").body());
        seen.accept(
                at + " wood",
                served.post(row, "c_board=A&c_species=Wishwood&c_count=some").body());
        seen.accept(
                at + " blank",
                served.post(at + "/wood/blanks/row", "c_blank=1&c_mass_g=9999").body());
        seen.accept(
                at + " lost",
                served.post(at + "/wood/blanks/row", "c_blank=1&c_mass_g=&c_lost=perhaps")
                        .body());
        seen.accept(
                at + " time",
                served.post(at + "/wood/times/row", "c_stage=&c_minutes=long").body());
        seen.accept(
                at + " paste",
                served.post(at + "/wood/blanks/paste", "cells=stone%2Cload%0A1%2C2")
                        .body());
        seen.accept(
                at + " rate",
                served.post(at + "/price", "rate=dear&others=wood&tax_pct=900").body());
        served.post(
                at + "/wood/boards/paste",
                "cells=board%2Cthickness%2Cwidth%2Clength%0AA%2C60+mm%2C200+mm%2C1500+mm%0AB%2C1%2F4+in%2C3+in%2C1+m");
        served.post(at + "/wood/blanks/paste", "cells=blank%2Cmass_g%0A1%2C560%0A20%2C555%0A21%2C5%0A");
        served.post(at + "/wood/times/paste", "cells=stage%2Cminutes%0Aturning%2C40%0Amilling%2C9%0A");
        served.post(at + "/price", "rate=45&markup_pct=10&tax_pct=20&currency=EUR&others=wood+%3B+9");
        served.post(at + "/wood/cut", "seconds=0");
        served.post(at + "/wood/stop", "x=");
        read(at + "/wood");
        read(at + "/price");
        read(at + "/history");
        read(at + "/history/1"); // beside how it stands now
    }

    private void read(String page) throws IOException, InterruptedException {
        seen.accept(page, served.get(page).body());
    }
}
