package turnalike.web.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import turnalike.drawing.frame.FrameElevation;
import turnalike.drawing.frame.PlacesDrawing;
import turnalike.drawing.svg.Svg;
import turnalike.job.Job;
import turnalike.job.kept.KeptJob;
import turnalike.job.set.SetMatch;
import turnalike.job.set.Verdict;
import turnalike.sheets.SetPicture;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.SentenceCase;
import turnalike.units.Working;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.JobSteps;

/**
 * The set as the page shows it.
 *
 * @param kept the job
 * @param problems why there can be no set yet
 * @param search for it
 */
public record MatchView(KeptJob kept, List<Problem> problems, Optional<SetSearch> search) {
    private static final Length FRAME_WIDTH = Length.ofMm(200);
    private static final Length CURVE_WIDTH = Length.ofMm(150);
    private static final Length CURVE_HEIGHT = Length.ofMm(90);

    public MatchView {
        problems = List.copyOf(problems);
    }

    public String address() {
        return JobAddress.address(kept.id());
    }

    /** What can be taken back here. */
    public JobSteps steps() {
        return JobSteps.of(kept);
    }

    public String title() {
        return kept.text().job().title();
    }

    /** Whether it is still being looked for. */
    public boolean isRunning() {
        return search.isPresent() && !search.get().isDone();
    }

    public String progress() {
        return search.map(SetSearch::progress).orElse("");
    }

    /** The frame as it will stand, with the places ringed where it cannot; empty for one that can be built. */
    public String unbuildable() {
        Job job = kept.text().job();
        return job.frame()
                .flatMap(frame -> frame.fit(job.pattern(), job.wood().density(), job.units()))
                .filter(fit -> !fit.buildable())
                .map(fit -> fit.match(new FrameElevation(job.pattern(), FRAME_WIDTH.mm()))
                        .inline())
                .orElse("");
    }

    /** What was found, as it is shown. */
    public Optional<Shown> shown() {
        return search.flatMap(SetSearch::found).map(this::shown);
    }

    private Shown shown(SetMatch set) {
        SetPicture picture = SetPicture.of(set);
        Optional<Svg> frame = picture.frame(kept.text().job().pattern(), FRAME_WIDTH);
        return new Shown(
                frame.map(Svg::inline).orElse(""),
                picture.places().svg(picture.width()).inline(),
                picture.curve(CURVE_WIDTH, CURVE_HEIGHT).map(Svg::inline).orElse(""),
                picture.places().places(),
                statements(set),
                set.spareLabels(),
                set.warnings(),
                set.workings());
    }

    private static List<String> statements(SetMatch set) {
        Verdict verdict = set.verdict();
        List<String> judged = new ArrayList<>(verdict.sentences());
        judged.set(0, verdict.measure() + ": " + judged.get(0));
        return Stream.of(set.groupsInWords(), judged, set.remarks())
                .flatMap(List::stream)
                .map(each -> SentenceCase.capital(each) + ".")
                .toList();
    }

    /**
     * A set in words and pictures.
     *
     * @param frame as it will look; empty when it has too many pieces to be seen
     * @param picture of the places with their pieces
     * @param curve balance against roundness; empty without one
     * @param places each with its piece
     * @param statements how good it is, a sentence each
     * @param spares the pieces left over
     * @param notes what to know before believing it
     */
    public record Shown(
            String frame,
            String picture,
            String curve,
            List<PlacesDrawing.Place> places,
            List<String> statements,
            List<String> spares,
            List<String> notes,
            List<Working> workings) {
        public Shown {
            places = List.copyOf(places);
            statements = List.copyOf(statements);
            spares = List.copyOf(spares);
            notes = List.copyOf(notes);
            workings = List.copyOf(workings);
        }
    }
}
