package turnalike.web.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import turnalike.drawing.frame.FrameElevation;
import turnalike.drawing.frame.FrameView;
import turnalike.drawing.frame.PlacesDrawing;
import turnalike.drawing.svg.Svg;
import turnalike.job.Job;
import turnalike.job.kept.KeptJob;
import turnalike.job.set.ByHand;
import turnalike.job.set.LegsSet;
import turnalike.job.set.Misfit;
import turnalike.job.set.OnWheel;
import turnalike.job.set.SetMatch;
import turnalike.job.set.Verdict;
import turnalike.sheets.SetPicture;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.SentenceCase;
import turnalike.units.Working;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.JobSteps;
import turnalike.web.kit.TablePart;

/**
 * The set as the page shows it.
 *
 * @param kept the job
 * @param problems why there can be no set yet
 * @param search for it
 * @param rest the search round what is held by hand, if one was asked for
 * @param left which of the pieces left over is the first shown, from 1
 */
public record MatchView(
        KeptJob kept, List<Problem> problems, Optional<SetSearch> search, Optional<SetSearch> rest, int left) {
    /** Drawn so small, and shown as wide as a telephone, its lettering is read at arm's length. */
    private static final Length NARROW_WIDTH = Length.ofMm(64);

    private static final Length FRAME_WIDTH = Length.ofMm(200);
    private static final Length CURVE_WIDTH = Length.ofMm(150);
    private static final Length CURVE_HEIGHT = Length.ofMm(90);

    /** Of the frame and the curve for a telephone, which need more room than the places. */
    private static final Length NARROW_FRAME_WIDTH = Length.ofMm(88);

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

    /** Whether the frame turns. */
    public boolean isWheel() {
        return kept.text().job().frame().filter(OnWheel.class::isInstance).isPresent();
    }

    /** Whether it is still being looked for. */
    public boolean isRunning() {
        return search.isPresent() && !search.get().isDone();
    }

    /** Whether what is not held is being searched again. */
    public boolean isRestRunning() {
        return rest.isPresent() && !rest.get().isDone();
    }

    /** Whether anything is settled by hand. */
    public boolean isByHand() {
        return kept.text().job().byHand().isAny();
    }

    /** Whether the set is told as it was placed by hand. */
    public boolean stands() {
        return kept.text().job().byHand().stands();
    }

    /** How many are held. */
    public int held() {
        return kept.text().job().byHand().held().size();
    }

    /** What the search of the rest came to, once it is done. */
    public Optional<RestFound> restFound() {
        return rest.filter(SetSearch::isDone).flatMap(SetSearch::found).flatMap(found -> search.flatMap(
                        SetSearch::found)
                .map(now -> RestFound.of(now, found, kept.text().job().units())));
    }

    public String progress() {
        return search.filter(each -> !each.isDone())
                .or(() -> rest)
                .map(SetSearch::progress)
                .orElse("");
    }

    /** The frame as it will stand, with the places ringed where it cannot; empty for one that can be built. */
    public String unbuildable() {
        return unbuildable(FRAME_WIDTH);
    }

    /** The same for a telephone. */
    public String narrowUnbuildable() {
        return unbuildable(NARROW_FRAME_WIDTH);
    }

    private String unbuildable(Length width) {
        Job job = kept.text().job();
        return job.frame()
                .flatMap(frame -> frame.fit(job.pattern(), job.wood().density(), job.units()))
                .filter(fit -> !fit.buildable())
                .map(fit ->
                        fit.match(new FrameElevation(job.pattern(), width.mm())).inline())
                .orElse("");
    }

    /** Why it cannot, a sentence each, to be said before all else; none for one that can be built. */
    public List<String> forbids() {
        Job job = kept.text().job();
        return job.frame()
                .flatMap(frame -> frame.fit(job.pattern(), job.wood().density(), job.units()))
                .map(fit -> fit.misfits().stream()
                        .filter(Misfit::forbids)
                        .map(Misfit::sentence)
                        .toList())
                .orElse(List.of());
    }

    /**
     * The frame as it will look, with that set in it; empty when it has too many pieces to be seen.
     *
     * @param narrow whether it is for a telephone
     */
    Optional<String> frame(SetMatch set, boolean narrow) {
        return SetPicture.of(set)
                .frame(kept.text().job().pattern(), narrow ? NARROW_FRAME_WIDTH : FRAME_WIDTH)
                .map(Svg::screenFile);
    }

    /** What was found, as it is shown. */
    public Optional<Shown> shown() {
        return search.flatMap(SetSearch::found).map(this::shown);
    }

    private Shown shown(SetMatch set) {
        SetPicture picture = SetPicture.of(set);
        return new Shown(
                set.order().size() <= FrameView.MOST_PIECES
                        ? "%s/match/frame.svg?of=%08x"
                                .formatted(
                                        address(),
                                        31 * set.order().hashCode()
                                                + kept.text().hashCode())
                        : "",
                picture.places().svg(picture.width()).inline(),
                picture.places().svg(NARROW_WIDTH).inline(),
                picture.curve(CURVE_WIDTH, CURVE_HEIGHT).map(Svg::inline).orElse(""),
                picture.curve(NARROW_FRAME_WIDTH, CURVE_HEIGHT).map(Svg::inline).orElse(""),
                rows(set, picture.places()),
                HandFigures.of(set, Optional.empty(), kept.text().job().units()),
                set.unlike().isEmpty() ? "" : set instanceof LegsSet ? "Unlike its group" : "Unlike the next",
                set.order(),
                statements(set),
                TablePart.from(left, set.spareLabels().size()),
                set.spareLabels(),
                set.otherWarnings().stream().map(SentenceCase::sentence).toList(),
                set.workings());
    }

    private List<Row> rows(SetMatch set, PlacesDrawing drawing) {
        ByHand hand = kept.text().job().byHand();
        List<Row> out = new ArrayList<>();
        for (PlacesDrawing.Place place : drawing.places()) {
            int index = place.number() - 1;
            String label = set.order().get(index);
            String unlike = index < set.unlike().size()
                    ? String.format(Locale.ROOT, "%.2f", set.unlike().get(index))
                    : "";
            out.add(new Row(
                    place,
                    drawing.numberText(place),
                    label,
                    unlike,
                    hand.placeOf(label).orElse(0) == place.number()));
        }
        return out;
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
     * A place of the table.
     *
     * @param place with its piece as it is lettered
     * @param number as it is lettered
     * @param label the piece's own
     * @param unlike how much it differs from the next or its group; empty where it does not count
     * @param held whether it is held there
     */
    public record Row(PlacesDrawing.Place place, String number, String label, String unlike, boolean held) {}

    /**
     * A set in words and pictures.
     *
     * @param frame where the picture of how it will look is; empty when it has too many pieces to be seen
     * @param picture of the places with their pieces
     * @param narrow the same for a telephone
     * @param curve balance against roundness; empty without one
     * @param narrowCurve the same for a telephone
     * @param places each with its piece
     * @param figures those watched while placing by hand
     * @param unlikeIs what a place's difference is called; empty on a wheel
     * @param order the label at each place
     * @param statements how good it is, a sentence each
     * @param part of the pieces left over that the table shows
     * @param leftOver all of them
     * @param notes what to know before believing it
     */
    public record Shown(
            String frame,
            String picture,
            String narrow,
            String curve,
            String narrowCurve,
            List<Row> places,
            HandFigures figures,
            String unlikeIs,
            List<String> order,
            List<String> statements,
            TablePart part,
            List<String> leftOver,
            List<String> notes,
            List<Working> workings) {
        public Shown {
            places = List.copyOf(places);
            order = List.copyOf(order);
            statements = List.copyOf(statements);
            leftOver = List.copyOf(leftOver);
            notes = List.copyOf(notes);
            workings = List.copyOf(workings);
        }

        /** Of the pieces left over those shown. */
        public List<String> spares() {
            return part.of(leftOver);
        }
    }
}
