package turnalike.turning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.language.Language;
import turnalike.language.Speech;
import turnalike.outline.Section;
import turnalike.pattern.Bead;
import turnalike.pattern.Cove;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Fillet;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.Samples;
import turnalike.pattern.Stock;
import turnalike.pattern.Swell;
import turnalike.pattern.Taper;
import turnalike.pattern.Tenon;
import turnalike.pattern.Tool;
import turnalike.pattern.Warning;
import turnalike.units.Length;
import turnalike.units.Working;
import turnalike.wood.Rupture;
import turnalike.wood.Stiffness;

/** A piece held by one end: from the tip back, sized as it goes, the tip's support last; and what is said of the hold. */
@Tag("long-sums")
class HeldCutsTest {
    private static final Held CHUCK = new Held(Held.By.CHUCK, Held.At.START, true);

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    /** An invented finial: base, cove, ball, neck, tip. */
    private static Pattern finial(double spareMm, double tipMm, Member... before) {
        List<Member> run = Stream.concat(
                        Stream.of(before),
                        Stream.of(
                                new Fillet(mm(10), mm(40), Details.NONE),
                                new Cove(mm(20), mm(36), mm(24), Details.NONE),
                                new Bead(mm(30), mm(24), mm(38), Details.NONE),
                                new Cylinder(mm(12), mm(9), Details.NONE),
                                new Taper(mm(48), mm(16), mm(tipMm), Details.NONE)))
                .toList();
        double length = run.stream().mapToDouble(each -> each.length().mm()).sum();
        return new Pattern("finial", new Stock(Section.SQUARE, mm(45), mm(length + spareMm)), run);
    }

    private static Turning turning(Pattern pattern, Held held) {
        return Turning.of(Works.of(pattern, Optional.of(Stiffness.given(11_000)), Lathe.USUAL.withHeld(held)));
    }

    private static List<Cut> phase(Turning turning, Phase phase) {
        return turning.cuts().stream().filter(cut -> cut.phase() == phase).toList();
    }

    private static List<Integer> cutMembers(Turning turning) {
        return phase(turning, Phase.FROM_TIP).stream()
                .map(cut -> cut.members().get(0))
                .distinct()
                .toList();
    }

    private static String said(Turning turning) {
        return String.join("\n", turning.cautions().stream().map(Warning::what).toList());
    }

    @Test
    void the_end_is_called_the_far_end_and_no_end_end() {
        for (Held.By by : Held.By.values()) {
            if (by != Held.By.CENTRES) {
                Turning turning = turning(finial(20, 3), new Held(by, Held.At.END, true));
                assertThat(turning.cuts().toString() + turning.cautions())
                        .as("%s", by)
                        .contains("far end")
                        .doesNotContain("end end");
            }
        }
    }

    @Test
    void it_is_turned_from_the_tip_back_each_member_sized_as_its_turn_comes() {
        Turning turning = turning(finial(30, 8), CHUCK);
        assertThat(cutMembers(turning)).containsExactly(4, 3, 2, 1, 0);
        assertThat(cutMembers(turning(finial(30, 8), new Held(Held.By.CHUCK, Held.At.END, true))))
                .containsExactly(0, 1, 2, 3, 4);
        assertThat(Stream.of(Phase.SIZING, Phase.DETAILS, Phase.SLENDER, Phase.TENONS, Phase.THIN))
                .allSatisfy(phase -> assertThat(phase(turning, phase)).isEmpty());
        // The bead: its crown and its root are parted down to, the wider first, and then it is rolled.
        assertThat(phase(turning, Phase.FROM_TIP).stream()
                        .filter(cut -> cut.members().equals(List.of(2)))
                        .toList())
                .satisfiesExactly(
                        cut -> assertThat(cut.setting()).contains(mm(38.8)),
                        cut -> assertThat(cut.setting()).contains(mm(24.8)),
                        cut -> assertThat(cut.what()).startsWith("3 bead: roll"));
    }

    /** Parted on both sides it would be rolled on a neck: the side toward the hold is parted when the half toward the tip is done. */
    @Test
    void a_ball_is_parted_on_the_tips_side_rolled_there_and_then_parted_on_the_other() {
        for (Held.At at : Held.At.values()) {
            Turning turning = turning(finial(30, 8), new Held(Held.By.CHUCK, at, true));
            List<Cut> ball = phase(turning, Phase.FROM_TIP).stream()
                    .filter(cut -> cut.members().equals(List.of(2)))
                    .toList();
            double tipSide = at == Held.At.START ? 60 : 30;
            assertThat(ball.get(1).places()).containsExactly(mm(tipSide));
            assertThat(ball.get(2).what())
                    .isEqualTo(
                            "3 bead: roll from the crown down to the line toward the tip first; then part the other side"
                                    + " down to the calipers at %.0f mm and roll that half".formatted(90 - tipSide));
            assertThat(ball.get(2).setting()).contains(mm(24.8));
        }
        // Between centres both sides are sized beforehand: what is thick drives it.
        Turning between = turning(finial(0, 12), Held.BETWEEN_CENTRES);
        assertThat(between.cuts()).noneMatch(cut -> cut.what().contains("that half"));
    }

    @Test
    void a_joint_of_one_size_is_parted_once_and_told_of_both_members() {
        Pattern urn = new Pattern(
                "urn",
                new Stock(Section.SQUARE, mm(45), mm(150)),
                List.of(
                        new Bead(mm(20), mm(24), mm(38), Details.NONE),
                        new Fillet(mm(6), mm(24), Details.NONE),
                        new Bead(mm(20), mm(24), mm(38), Details.NONE),
                        new Taper(mm(48), mm(24), mm(12), Details.NONE)));
        Function<Held, List<String>> said = held -> phase(turning(urn, held), Phase.FROM_TIP).stream()
                .map(cut -> cut.what().replaceFirst("(part down|the cylinder).*: ", "- "))
                .map(what -> what.startsWith("- ") ? what : what.substring(0, what.indexOf(':')))
                .toList();
        // The joint of bead and taper with the taper; the flat at the bead's joint, so that neither the flat nor the
        // next bead's root that meets it is parted again.
        assertThat(said.apply(CHUCK))
                .containsExactly(
                        "- 3 bead | 4 taper at 46 mm",
                        "- 4 taper at 94 mm",
                        "4 taper",
                        "- 3 bead at 36 mm",
                        "3 bead",
                        "2 fillet",
                        "- 1 bead at 10 mm",
                        "1 bead");
        assertThat(said.apply(new Held(Held.By.CHUCK, Held.At.END, true)))
                .containsExactly(
                        "- 1 bead at 10 mm",
                        "- 1 bead at 0 mm",
                        "1 bead",
                        "2 fillet",
                        "- 3 bead at 36 mm",
                        "3 bead",
                        "- 4 taper at 94 mm",
                        "4 taper");
    }

    @Test
    void no_two_sizing_cuts_from_the_tip_back_part_one_place_to_one_size() {
        Seeds.each(40, random -> {
            Pattern pattern = Samples.pattern(1 + random.nextInt(12), random);
            for (Held.At at : Held.At.values()) {
                Turning turning = turning(pattern, new Held(Held.By.CHUCK, at, random.nextBoolean()));
                assertThat(phase(turning, Phase.FROM_TIP).stream()
                                .filter(cut -> cut.what().matches("(part down|the cylinder).*"))
                                .flatMap(cut -> cut.places().stream()
                                        .map(place ->
                                                cut.setting().orElseThrow().mm() + " at "
                                                        + Math.round(place.mm() * 1e5))))
                        .doesNotHaveDuplicates();
            }
        });
    }

    @Test
    void nothing_toward_the_tip_is_cut_after_what_stands_nearer_the_hold() {
        Seeds.each(20, random -> {
            Pattern pattern = Samples.pattern(1 + random.nextInt(12), random);
            for (Held.At at : Held.At.values()) {
                Turning turning = turning(pattern, new Held(Held.By.CHUCK, at, random.nextBoolean()));
                Comparator<Cut> place =
                        Comparator.comparing(cut -> cut.members().get(0));
                assertThat(phase(turning, Phase.FROM_TIP))
                        .isSortedAccordingTo(at == Held.At.START ? place.reversed() : place);
                assertThat(turning.cuts()).isSortedAccordingTo(Comparator.comparing(Cut::phase));
            }
        });
    }

    @Test
    void every_round_member_is_brought_to_its_shape_once_whatever_the_hold() {
        Seeds.each(20, random -> {
            Pattern pattern = Samples.pattern(1 + random.nextInt(12), random);
            for (Held.By by : Held.By.values()) {
                List<Cut> cuts =
                        turning(pattern, new Held(by, Held.At.START, true)).cuts();
                for (int i = 0; i < pattern.members().size(); i++) {
                    int index = i;
                    String beginning = pattern.placed().get(i).caption() + ": ";
                    boolean turned = pattern.members().get(i).section() == Section.ROUND;
                    boolean gripped = cuts.get(0).what().contains("bring the start tenon") && i == 0;
                    assertThat(cuts.stream()
                                    .filter(cut -> cut.phase().cutsMembers()
                                            && cut.members().equals(List.of(index))
                                            && cut.what().startsWith(beginning)))
                            .hasSize(turned && !gripped ? 1 : 0);
                }
            }
        });
    }

    @Test
    void the_tips_support_goes_last_and_then_it_is_parted_at_the_held_end() {
        Turning turning = turning(finial(30, 8), CHUCK);
        List<Cut> cuts = turning.cuts();
        assertThat(cuts.get(0).phase()).isEqualTo(Phase.HOLDING);
        assertThat(cuts.get(0).what())
                .contains("grip the start end in the jaws by its spare length, 30 mm", "tailstock's cup");
        assertThat(cuts.get(0).caution()).contains("key out of the chuck");
        assertThat(cuts.get(cuts.size() - 2).what()).startsWith("take the tailstock's cup or pad away, last of all");
        Cut off = cuts.get(cuts.size() - 1);
        assertThat(off.phase()).isEqualTo(Phase.PARTING);
        assertThat(off.from()).isEqualTo(Length.ZERO);
        assertThat(off.caution()).startsWith("never part right through");
        Turning free = turning(finial(30, 8), new Held(Held.By.CHUCK, Held.At.START, false));
        assertThat(phase(free, Phase.TIP)).isEmpty();
        assertThat(free.cuts().get(0).what()).contains("nothing bears the tip");
    }

    @Test
    void a_tenon_of_its_own_goes_into_the_jam_chuck_and_is_turned_before() {
        Tenon tenon = new Tenon(mm(20), mm(18), mm(2), Details.NONE);
        Turning turning = turning(finial(15, 8, tenon), new Held(Held.By.JAM, Held.At.START, true));
        assertThat(turning.cuts().get(0).what())
                .contains(
                        "between centres, bring the start tenon to its size",
                        "bored on the lathe with the tenon's own bit");
        assertThat(cutMembers(turning)).containsExactly(5, 4, 3, 2, 1);
        // The spare length then stands at the tip.
        assertThat(phase(turning, Phase.PARTING)).isEmpty();
        assertThat(phase(turning, Phase.TIP).get(0).what()).contains("cut the spare length away");
        Turning plain = turning(finial(15, 8), new Held(Held.By.JAM, Held.At.START, true));
        assertThat(plain.cuts().get(0).what()).contains("turn the spare length at the start end to a tenon");
        assertThat(phase(plain, Phase.PARTING)).hasSize(1);
    }

    /** A screw reaches through the spare length into the piece: a parting tool on the line would meet it. */
    @Test
    void what_a_screw_holds_is_sawn_off_on_the_bench() {
        for (Held.At at : Held.At.values()) {
            List<Cut> off = phase(turning(rod(60, 40), new Held(Held.By.SCREW, at, true)), Phase.PARTING);
            assertThat(off).hasSize(1);
            assertThat(off.get(0).tool()).isEqualTo(Tool.SAW);
            assertThat(off.get(0).what())
                    .startsWith("wind the piece off the screw, with the lathe stopped")
                    .endsWith("on the bench");
            assertThat(off.get(0).caution()).contains("the screw stands there");
        }
        assertThat(phase(turning(rod(60, 40), CHUCK), Phase.PARTING).get(0).what())
                .startsWith("part down at");
    }

    @Test
    void a_thin_end_that_a_screw_stands_in_is_told() {
        Held screw = new Held(Held.By.SCREW, Held.At.START, true);
        assertThat(said(turning(rod(60, 19), screw)))
                .contains("its start end is only 19 mm (3/4 in) thick, and the screw stands in it");
        assertThat(said(turning(rod(60, 20), screw))).doesNotContain("the screw stands in it");
        assertThat(said(turning(rod(60, 19), CHUCK))).doesNotContain("the screw stands in it");
        Pattern spared = new Pattern(
                "spared",
                new Stock(Section.ROUND, mm(22), mm(90)),
                List.of(new Cylinder(mm(60), mm(12), Details.NONE)));
        assertThat(said(turning(spared, screw))).doesNotContain("the screw stands in it");
    }

    @Test
    void nothing_thinner_than_a_pencil_is_parted_down_to() {
        Pattern neck = new Pattern(
                "neck",
                new Stock(Section.SQUARE, mm(45), mm(130)),
                List.of(
                        new Fillet(mm(60), mm(40), Details.NONE),
                        new Fillet(mm(6), mm(5), Details.NONE),
                        new Fillet(mm(34), mm(7), Details.NONE)));
        for (Held held : List.of(CHUCK, Held.BETWEEN_CENTRES)) {
            List<Cut> cuts = turning(neck, held).cuts();
            assertThat(cuts.stream()
                            .filter(cut -> cut.tool() == Tool.PARTING_TOOL
                                    && cut.members().contains(1)))
                    .as("5 mm")
                    .isEmpty();
            assertThat(cuts.stream().filter(cut -> cut.what().startsWith("2 fillet: ")))
                    .singleElement()
                    .satisfies(cut -> {
                        assertThat(cut.tool()).isEqualTo(Tool.SKEW);
                        assertThat(cut.what()).endsWith("thinner than a pencil, it bears no parting tool");
                    });
            assertThat(cuts.stream()
                            .filter(cut -> cut.tool() == Tool.PARTING_TOOL
                                    && cut.members().contains(2)))
                    .as("7 mm")
                    .isNotEmpty();
        }
        // The far end of a piece between centres is sawn off where it is so thin, else parted down.
        assertThat(phase(turning(finial(30, 6.9), Held.BETWEEN_CENTRES), Phase.PARTING)
                        .get(0))
                .satisfies(cut -> assertThat(cut.tool()).isEqualTo(Tool.SAW))
                .satisfies(cut -> assertThat(cut.what()).startsWith("stop the lathe and saw it off"));
        assertThat(phase(turning(finial(30, 7), Held.BETWEEN_CENTRES), Phase.PARTING)
                        .get(0)
                        .what())
                .startsWith("part down at the far end's line to a pencil's thickness");
    }

    @Test
    void a_tenons_chamfer_makes_it_no_thinner_than_a_pencil() {
        Tenon stout = new Tenon(mm(20), mm(9.5), mm(1.6), Details.NONE);
        Tenon thin = new Tenon(mm(20), mm(6.9), mm(0.5), Details.NONE);
        assertThat(tenonCut(stout)).doesNotContain("pencil");
        assertThat(tenonCut(thin)).contains("thinner than a pencil, it bears no parting tool");
    }

    private static String tenonCut(Tenon tenon) {
        return phase(turning(finial(15, 8, tenon), Held.BETWEEN_CENTRES), Phase.TENONS)
                .get(0)
                .what();
    }

    @Test
    void a_thin_tip_stays_thick_while_the_tailstock_bears_it() {
        String thick = "leave the tip itself a pencil thick";
        assertThat(turning(finial(30, 6.9), CHUCK).cuts().stream()
                        .filter(cut -> cut.what().contains(thick)))
                .singleElement()
                .satisfies(cut -> assertThat(cut.members()).containsExactly(4))
                // Set to the taper's thick end: calipers set to the tip would bid to cut what is to stay thick.
                .satisfies(cut -> assertThat(cut.setting()).contains(mm(16.8)));
        assertThat(turning(finial(30, 7), CHUCK).cuts().toString()).doesNotContain(thick);
        assertThat(turning(finial(30, 6.9), new Held(Held.By.CHUCK, Held.At.START, false))
                        .cuts()
                        .toString())
                .doesNotContain(thick);
    }

    /** A spire of 75 mm, 4.5 mm thick and down to 1 mm: the tailstock bears it no more, and it is done while all behind it is thick. */
    @Test
    void a_long_thin_point_is_turned_first_and_off_the_tailstock() {
        Turning spire = turning(spire(75), CHUCK);
        List<Cut> fromTip = phase(spire, Phase.FROM_TIP);
        assertThat(fromTip.get(0).what())
                .startsWith("3 taper: ")
                .endsWith("each stretch done and sanded before the wood behind it is thinned");
        Cut away = phase(spire, Phase.AWAY).get(0);
        assertThat(away.what())
                .startsWith("take the tailstock's cup or pad away: nothing bears so long and thin a point");
        assertThat(spire.cuts().get(away.order())).isEqualTo(fromTip.get(0));
        assertThat(phase(spire, Phase.TIP)).isEmpty();
        assertThat(spire.cuts().toString()).doesNotContain("leave the tip itself a pencil thick");
        assertThat(spire.whip().orElseThrow().ends()).isEqualTo(Supports.CHUCK);
        // Until it is round and laid out the tailstock is up and presses; from then on nothing does.
        assertThat(spire.stages().get(1).thrust()).isPresent();
        assertThat(spire.stages().subList(2, spire.stages().size()))
                .allSatisfy(stage -> assertThat(stage.thrust()).isEmpty());
        assertThat(spire.steady()).isEmpty();
        assertThat(said(spire))
                .doesNotContain("steady")
                .contains("once the tailstock is away for the point it stands out", "go back to nothing");
        String german = Speech.in(Language.GERMAN, () -> Stream.concat(
                        Stream.of(fromTip.get(0).what(), away.what()),
                        said(spire).lines())
                .map(Speech::of)
                .collect(Collectors.joining("\n")));
        assertThat(german)
                .contains(
                        "den Ring oder Druckteller",
                        "zu nichts Fertigem zurückgehen",
                        "ist der Reitstock für die Spitze weg")
                .doesNotContain("tailstock", "sanded", "go back");
        // Three pencils' thickness of it is a stub, left on until the tailstock goes.
        Turning stub = turning(spire(20), CHUCK);
        assertThat(phase(stub, Phase.TIP)).hasSize(1);
        assertThat(stub.whip().orElseThrow().ends()).isEqualTo(Supports.CHUCK_AND_TAILSTOCK);
        assertThat(turning(spire(75), new Held(Held.By.CHUCK, Held.At.START, false))
                        .cuts()
                        .toString())
                .doesNotContain("cup or pad");
        assertThat(phase(stub, Phase.AWAY)).isEmpty();
        // So the heading does not promise the tailstock to the end.
        assertThat(spire.heldText()).isEqualTo("in the chuck by its start, with the tailstock until the point");
        assertThat(stub.heldText()).isEqualTo("in the chuck by its start, with the tailstock");
        assertThat(Language.GERMAN.say(spire.heldText()))
                .isEqualTo("am Kopfende im Futter, bis zur Spitze mit dem Reitstock");
    }

    /** "20 N at 0 mm" is no place that anybody points at. */
    @Test
    void a_point_at_the_start_is_told_by_its_name() {
        Turning turned = Turning.of(Works.of(
                spire(75).mirrored(),
                Optional.of(Stiffness.given(11_000)),
                Optional.of(new Rupture(106, new Working("Strength", "as printed", "table", "average"))),
                Lathe.USUAL.withHeld(new Held(Held.By.CHUCK, Held.At.END, true))));
        assertThat(said(turned))
                .contains("20 N at its start end in cut ", "it would give way at its start end further")
                .doesNotContain("at 0 mm");
        String german = Speech.in(
                Language.GERMAN, () -> said(turned).lines().map(Speech::of).collect(Collectors.joining()));
        assertThat(german).contains("20 N an seinem Kopfende in Schnitt").doesNotContain("start end");
    }

    private static Pattern spire(double pointMm) {
        return new Pattern(
                "spire",
                new Stock(Section.SQUARE, mm(20), mm(105 + pointMm)),
                List.of(
                        new Cylinder(mm(30), mm(14), Details.NONE),
                        new Swell(mm(40), mm(8), mm(13.5), mm(6), Details.NONE),
                        new Taper(mm(pointMm), mm(4.5), mm(1), Details.NONE)));
    }

    @Test
    void a_short_piece_is_told_of_no_steady_rest() {
        // 120 mm and 40 mm thick: three diameters.
        Turning turning = turning(finial(30, 3), CHUCK);
        assertThat(turning.whip()).isPresent();
        assertThat(turning.steady()).isEmpty();
        assertThat(said(turning)).doesNotContain("steady");
        assertThat(turning(rod(160, 20), CHUCK).steady()).as("eight diameters").isPresent();
        assertThat(turning(rod(159, 20), CHUCK).steady()).isEmpty();
    }

    private static Pattern rod(double lengthMm, double diameterMm) {
        return new Pattern(
                "rod",
                new Stock(Section.ROUND, mm(diameterMm + 2), mm(lengthMm + 20)),
                List.of(new Cylinder(mm(lengthMm), mm(diameterMm), Details.NONE)));
    }

    @Test
    void each_hold_is_told_its_own_caution() {
        assertThat(said(turning(rod(60, 20), CHUCK))).contains("tighten again after roughing");
        assertThat(said(turning(rod(60, 20), new Held(Held.By.SCREW, Held.At.START, true))))
                .contains("a screw up the grain holds less", "keep the tool off it");
        assertThat(said(turning(rod(60, 20), new Held(Held.By.JAM, Held.At.START, true))))
                .contains("friction alone holds it");
        assertThat(said(turning(rod(60, 20), Held.BETWEEN_CENTRES))).doesNotContain("jaws", "screw", "friction");
    }

    @Test
    void standing_far_out_without_the_tailstock_and_nothing_to_hold_it_by_are_told() {
        Held free = new Held(Held.By.CHUCK, Held.At.START, false);
        assertThat(said(turning(rod(81, 20), free)))
                .contains("stands out 4.1 times its greatest diameter with nothing at the tip, more than the 4.0");
        assertThat(said(turning(rod(80, 20), free))).doesNotContain("stands out");
        assertThat(said(turning(rod(81, 20), CHUCK))).doesNotContain("stands out");
        Pattern bare = new Pattern(
                "bare", new Stock(Section.ROUND, mm(22), mm(60)), List.of(new Cylinder(mm(60), mm(20), Details.NONE)));
        assertThat(said(turning(bare, CHUCK))).contains("no spare length and no tenon at the start end to hold it by");
        assertThat(said(turning(bare, new Held(Held.By.SCREW, Held.At.START, true))))
                .doesNotContain("no spare length");
        assertThat(said(turning(rod(60, 20), CHUCK))).doesNotContain("no spare length");
    }

    @Test
    void what_is_thinner_than_a_tenth_of_its_distance_to_the_nearer_support_is_cut_last() {
        assertThat(thin(Held.BETWEEN_CENTRES, 150, 14.9)).containsExactly(1);
        assertThat(thin(Held.BETWEEN_CENTRES, 150, 15.1)).isEmpty();
        // Free at the end, its distance is that from the hold alone.
        Held free = new Held(Held.By.CHUCK, Held.At.START, false);
        assertThat(thin(free, 250, 15.1)).containsExactly(1);
        assertThat(thin(Held.BETWEEN_CENTRES, 250, 15.1)).isEmpty();
    }

    /** A short neck that ends at a place of a 300 mm piece. */
    private static List<Integer> thin(Held held, double endMm, double diameterMm) {
        Pattern pattern = new Pattern(
                "any",
                new Stock(Section.ROUND, mm(45), mm(330)),
                List.of(
                        new Cylinder(mm(endMm - 4), mm(40), Details.NONE),
                        new Cylinder(mm(4), mm(diameterMm), Details.NONE),
                        new Cylinder(mm(300 - endMm), mm(40), Details.NONE)));
        TurningProblem work = Works.of(pattern, Optional.empty(), Lathe.USUAL.withHeld(held));
        return ThinParts.of(work, SlenderMembers.of(work));
    }

    @Test
    void of_several_thin_ones_the_thinnest_for_its_distance_is_cut_last() {
        Pattern pattern = new Pattern(
                "two necks",
                new Stock(Section.ROUND, mm(45), mm(400)),
                List.of(
                        new Cylinder(mm(150), mm(40), Details.NONE),
                        new Cylinder(mm(4), mm(9), Details.NONE),
                        new Cylinder(mm(92), mm(40), Details.NONE),
                        new Cylinder(mm(4), mm(12), Details.NONE),
                        new Cylinder(mm(150), mm(40), Details.NONE)));
        List<Cut> cuts = Turning.of(Works.stiff(pattern)).cuts();
        assertThat(cuts.stream()
                        .filter(cut -> cut.phase() == Phase.THIN && !cut.sizes())
                        .map(cut -> cut.members().get(0)))
                .containsExactly(3, 1);
        assertThat(cuts.stream()
                        .filter(cut -> cut.phase().cutsMembers())
                        .reduce((a, b) -> b)
                        .orElseThrow()
                        .members())
                .containsExactly(1);
    }
}
