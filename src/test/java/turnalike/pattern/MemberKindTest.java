package turnalike.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static turnalike.pattern.Samples.mm;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.outline.Section;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

class MemberKindTest {
    @Test
    void a_member_made_of_its_own_sizes_is_the_same_member() {
        Seeds.each(20, random -> {
            for (int kind = 0; kind < Samples.KINDS; kind++) {
                Member member = Samples.member(kind, random);
                assertThat(member.kind().faults(member.sizes())).isEmpty();
                assertThat(member.kind().make(member.sizes())).isEqualTo(member);
            }
        });
        Tenon tenon = new Tenon(mm(20), mm(12), mm(1), Optional.of(mm(12.2)), Details.named("peg"));
        assertThat(tenon.kind().make(tenon.sizes())).isEqualTo(tenon);
    }

    @Test
    void every_kind_is_found_by_its_word_and_tells_of_itself() {
        for (MemberKind kind : MemberKind.all()) {
            assertThat(MemberKind.find(kind.word())).contains(kind);
            assertThat(kind.toString()).isEqualTo(kind.word());
            assertThat(kind.words()).isNotBlank();
            assertThat(kind.shape()).isNotBlank();
            assertThat(kind.keys()).isNotEmpty().allSatisfy(key -> {
                assertThat(key.label()).isNotBlank();
                assertThat(key.hint().isEmpty()).isEqualTo(key.isNeeded());
                assertThat(kind.find(key.type(), key.name())).contains(key);
            });
            assertThat(kind.find(MemberKey.Type.LENGTH, "nonsense")).isEmpty();
            assertThat(kind.example().kind()).isEqualTo(kind);
        }
        assertThat(MemberKind.find("nonsense")).isEmpty();
        assertThat(Bead.KIND.find(MemberKey.Type.POINTS, "crown")).isEmpty();
        assertThat(MemberKind.all().stream().filter(MemberKind::isNarrow).map(MemberKind::word))
                .containsExactly("fillet", "vee", "groove");
    }

    @Test
    void an_example_stands_between_parts_of_thirty_in_a_blank_of_forty_two() {
        for (MemberKind kind : MemberKind.all()) {
            Cylinder beside = new Cylinder(mm(20), mm(30), Details.NONE);
            List<Member> run = List.of(beside, kind.example(), beside);
            Stock stock = new Stock(Section.SQUARE, mm(42), mm(500));
            assertThat(Pattern.problems(stock, run, UnitSystem.METRIC))
                    .as(kind.word())
                    .isEmpty();
        }
    }

    @Test
    void what_may_be_left_out_has_something_that_counts_instead() {
        MemberKey side = Square.KIND.find(MemberKey.Type.LENGTH, "side").orElseThrow();
        assertThat(side.otherwise().apply(mm(45))).contains(mm(45));
        MemberKey chamfer = Tenon.KIND.find(MemberKey.Type.LENGTH, "chamfer").orElseThrow();
        assertThat(chamfer.otherwise().apply(mm(45))).contains(Length.ZERO);
        MemberKey hole = Tenon.KIND.find(MemberKey.Type.LENGTH, "hole").orElseThrow();
        assertThat(hole.otherwise().apply(mm(45))).isEmpty();
        assertThat(hole.note()).contains("the tenon's own if left out");
        assertThat(Bead.KIND
                        .find(MemberKey.Type.LENGTH, "crown")
                        .orElseThrow()
                        .otherwise()
                        .apply(mm(45)))
                .isEmpty();
    }

    /** The tool and what to beware of; common practice, no source. */
    @Test
    void each_kind_is_cut_with_its_tool_and_its_caution() {
        String skew = "keep the bevel rubbing";
        Map<String, List<String>> ways = Map.ofEntries(
                Map.entry("square", List.of("skew chisel", "keep hands away from the turning corners")),
                Map.entry("tenon", List.of("parting tool", "stop the lathe before you try the wrench")),
                Map.entry("bead", List.of("skew chisel", skew)),
                Map.entry("half-bead", List.of("skew chisel", skew)),
                Map.entry("cove", List.of("spindle gouge", "never cut uphill past the bottom")),
                Map.entry("taper", List.of("skew chisel", skew)),
                Map.entry("swell", List.of("skew chisel", skew)),
                Map.entry("vee", List.of("skew chisel", skew)),
                Map.entry("fillet", List.of("parting tool", "")),
                Map.entry("groove", List.of("parting tool", "")));
        for (MemberKind kind : MemberKind.all()) {
            var way = kind.example().way();
            assertThat(way.what()).isNotBlank();
            if (ways.containsKey(kind.word())) {
                assertThat(way.tool().text()).isEqualTo(ways.get(kind.word()).get(0));
                assertThat(way.caution())
                        .as(kind.word())
                        .startsWith(ways.get(kind.word()).get(1));
            }
        }
    }

    private static Room room(double before, double after, double stock) {
        return new Room(mm(20), mm(before), mm(after), mm(stock), UnitSystem.METRIC);
    }

    /** Nine tenths of the blank leave no wood to rise into: then the foot is four fifths of it. */
    @Test
    void a_new_member_stands_on_the_thinner_neighbour_unless_that_fills_the_blank() {
        assertThat(room(30, 34, 40).foot()).isEqualTo(mm(30));
        assertThat(room(34, 30, 40).foot()).isEqualTo(mm(30));
        assertThat(room(34, 30, 40).smaller()).isEqualTo(mm(30));
        assertThat(room(34, 30, 40).larger()).isEqualTo(mm(34));
        assertThat(room(30, 34, 40).larger()).isEqualTo(mm(34));
        assertThat(room(36, 40, 40).foot()).isEqualTo(mm(36));
        assertThat(room(36.1, 40, 40).foot()).isEqualTo(mm(32));
    }

    @Test
    void a_new_member_rises_three_tenths_sinks_a_quarter_and_swells_a_tenth_within_its_blank() {
        assertThat(room(20, 30, 60).risen()).isEqualTo(mm(26));
        assertThat(room(36, 36, 40).risen()).isEqualTo(mm(40));
        assertThat(room(0.5, 0.5, 40).risen().mm()).isCloseTo(0.75, within(1e-12));
        assertThat(room(20, 30, 60).sunk()).isEqualTo(mm(22.5));
        assertThat(room(0.5, 0.5, 40).sunk().mm()).isCloseTo(0.45, within(1e-12));
        assertThat(room(20, 30, 60).swollen()).isEqualTo(mm(22));
        assertThat(room(39, 39, 40).swollen()).isEqualTo(mm(40));
        assertThat(room(2.1, 2.1, 40).swollen()).isEqualTo(mm(2.5));
        assertThat(room(2.2, 2.2, 40).swollen()).isEqualTo(mm(2.5));
        assertThat(room(2.3, 2.3, 40).swollen()).isEqualTo(mm(2.5));
    }

    @Test
    void a_size_nobody_gave_is_tidy() {
        assertThat(Room.tidy(mm(12.3), UnitSystem.METRIC)).isEqualTo(mm(12.5));
        assertThat(Room.tidy(mm(12.2), UnitSystem.METRIC)).isEqualTo(mm(12));
        assertThat(Room.tidy(mm(0.1), UnitSystem.METRIC)).isEqualTo(mm(0.5));
        assertThat(Room.tidy(Length.ofInches(5 / 32.0 + 0.001), UnitSystem.INCH).inches())
                .isCloseTo(3 / 16.0, within(1e-12));
        assertThat(Room.tidy(Length.ofInches(5 / 32.0 - 0.001), UnitSystem.INCH).inches())
                .isCloseTo(1 / 8.0, within(1e-12));
        assertThat(Room.tidy(Length.ofInches(0.001), UnitSystem.INCH).inches()).isCloseTo(1 / 16.0, within(1e-12));
    }

    @Test
    void a_new_member_of_any_kind_can_exist_in_any_room() {
        Seeds.each(200, random -> {
            double stock = 10 + 90 * random.nextDouble();
            Room room = new Room(
                    mm(5 + 50 * random.nextDouble()),
                    mm(stock * (0.1 + 0.9 * random.nextDouble())),
                    mm(stock * (0.1 + 0.9 * random.nextDouble())),
                    mm(stock),
                    random.nextBoolean() ? UnitSystem.INCH : UnitSystem.METRIC);
            for (MemberKind kind : MemberKind.all()) {
                Sizes sizes = kind.blank(room);
                for (MemberKey key : kind.keys()) {
                    if (!key.isNeeded()) {
                        assertThat(sizes.find(key.name())).isEmpty();
                        Optional<Length> counts = key.otherwise().apply(room.stock());
                        if (counts.isPresent()) {
                            sizes = sizes.with(key.name(), counts.get());
                        }
                    }
                }
                assertThat(kind.faults(sizes)).as("%s in %s", kind, room).isEmpty();
                Member made = kind.make(sizes);
                assertThat(made.length().mm()).isCloseTo(room.length().mm(), within(1e-9));
                assertThat(Pattern.problems(
                                new Stock(Section.SQUARE, room.stock(), mm(500)), List.of(made), UnitSystem.METRIC))
                        .as("%s in %s", kind, room)
                        .isEmpty();
            }
        });
    }

    @Test
    void sizes_that_are_missing_are_our_own_fault() {
        assertThatThrownBy(() -> Bead.KIND.make(Sizes.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no size");
        Sizes named = Sizes.NONE.with("crown", mm(5)).with(Details.named("ring"));
        assertThat(named.find("crown")).contains(mm(5));
        assertThat(named.find("root")).isEmpty();
        assertThat(named.details()).isEqualTo(Details.named("ring"));
    }

    /** Of each example: what is sized, where from its start, to which diameter, all in millimetres. */
    @Test
    void the_diameters_of_each_kind_are_sized_where_a_caliper_is_set() {
        Map<String, String> sized = Map.ofEntries(
                Map.entry("square", ""),
                Map.entry("cylinder", "diameter 17: 22"),
                Map.entry("fillet", "diameter 2.5: 38"),
                Map.entry("tenon", "diameter 17: 20"),
                Map.entry("taper", "from 0: 30, to 34: 20"),
                Map.entry("swell", "from 0: 30, middle 17: 33, to 34: 30"),
                Map.entry("bead", "root 0: 30, crown 17: 39, root 34: 30"),
                Map.entry("half-bead", "from 0: 30, to 34: 20"),
                Map.entry("cove", "rim 0: 30, bottom 17: 22.5, rim 34: 30"),
                Map.entry("half-cove", "from 0: 30, to 34: 20"),
                Map.entry("ogee", "from 0: 30, to 34: 20"),
                Map.entry("reverse-ogee", "from 0: 30, to 34: 20"),
                Map.entry("vee", "rim 0: 30, bottom 17: 22.5, rim 34: 30"),
                Map.entry("groove", "bottom 4: 22.5"),
                Map.entry("curve", "point 1 0: 30, point 2 17: 25.5, point 3 34: 30"));
        for (MemberKind kind : MemberKind.all()) {
            List<String> told = kind.example().diameters().stream()
                    .map(each -> "%s %s: %s".formatted(each.key(), mmText(each.place()), mmText(each.size())))
                    .toList();
            assertThat(sized).as("sizes of the kind's example").containsEntry(kind.word(), String.join(", ", told));
        }
    }

    private static String mmText(Length length) {
        return length.format(UnitSystem.METRIC).replace(" mm", "");
    }

    @Test
    void a_size_of_nothing_is_a_fault_of_its_key_in_every_kind() {
        for (MemberKind kind : MemberKind.all()) {
            Sizes sizes = kind.example().sizes();
            for (String key : sizes.lengths().keySet()) {
                if (!key.equals("chamfer")) {
                    assertThat(kind.faults(sizes.with(key, Length.ZERO)).stream()
                                    .map(Fault::key))
                            .as("%s %s", kind, key)
                            .contains(key);
                }
            }
        }
        assertThat(FreeCurve.KIND.faults(Sizes.NONE)).isNotEmpty();
        Sizes loose = new Tenon(mm(20), mm(12), Length.ZERO, Details.NONE).sizes();
        assertThat(Tenon.KIND.faults(loose.with("hole", mm(11))))
                .as("a hole smaller than its tenon makes a snug joint")
                .isEmpty();
        assertThat(Tenon.KIND.faults(loose.with("hole", Length.ZERO)).stream().map(Fault::key))
                .containsExactly("hole");
        assertThat(Tenon.KIND.faults(loose.with("chamfer", mm(11)).with("hole", Length.ZERO)).stream()
                        .map(Fault::key))
                .containsExactly("chamfer", "chamfer");
    }
}
