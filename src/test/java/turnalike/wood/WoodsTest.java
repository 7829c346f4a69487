package turnalike.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.units.Parsed;

class WoodsTest {
    private static final Map<String, Function<Species, OptionalDouble>> NUMBERS = new TreeMap<>(Map.of(
            "sg_12", species -> species.gravity().atTwelve(),
            "moe_12_mpa", species -> species.strength().moeMpa(),
            "mor_12_mpa", species -> species.strength().morMpa(),
            "hardness_n", species -> species.strength().hardnessN(),
            "shrink_radial_pct", species -> species.shrinkage().radialPct(),
            "shrink_tangential_pct", species -> species.shrinkage().tangentialPct(),
            "shrink_volumetric_pct", species -> species.shrinkage().volumetricPct(),
            "coef_radial", species -> species.coefficients().radial(),
            "coef_tangential", species -> species.coefficients().tangential()));

    @Test
    void has_the_fifty_four_woods_each_with_a_basic_specific_gravity() {
        assertThat(Woods.shipped().list())
                .hasSize(54)
                .allSatisfy(species -> assertThat(species.gravity().basic()).isBetween(0.25, 1.0));
    }

    /** The table has no quoted cells, so splitting at commas reads it without the library the program uses. */
    @Test
    void every_cell_is_the_one_in_the_file_and_every_blank_is_empty() {
        List<String> lines = shippedLines();
        List<String> header = List.of(lines.get(0).split(",", -1));
        int blanks = 0;
        for (int row = 1; row < lines.size(); row++) {
            List<String> cells = List.of(lines.get(row).split(",", -1));
            Species species = Woods.shipped().list().get(row - 1);
            assertThat(species.name()).isEqualTo(cells.get(header.indexOf("species_common")));
            assertThat(species.latin()).isEqualTo(cells.get(header.indexOf("species_latin")));
            assertThat(species.provenance().status()).isEqualTo(cells.get(header.indexOf("status")));
            assertThat(species.gravity().basic()).isEqualTo(Double.parseDouble(cells.get(header.indexOf("sg_basic"))));
            for (Map.Entry<String, Function<Species, OptionalDouble>> number : NUMBERS.entrySet()) {
                String cell = cells.get(header.indexOf(number.getKey()));
                OptionalDouble expected =
                        cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
                blanks += cell.isEmpty() ? 1 : 0;
                assertThat(number.getValue().apply(species))
                        .as("%s of %s", number.getKey(), species.name())
                        .isEqualTo(expected);
            }
        }
        // Counted in the original file with a text tool: a cell lost or filled in later shows here.
        assertThat(blanks).isEqualTo(38);
    }

    @Test
    void every_source_key_is_explained_once() {
        List<String> explained =
                Woods.shipped().listSources().stream().map(Source::key).toList();
        Set<String> used = new HashSet<>();
        Woods.shipped()
                .list()
                .forEach(species -> species.provenance().keys().values().forEach(used::addAll));
        assertThat(explained).doesNotHaveDuplicates().containsAll(used).contains("S1", "S17");
        assertThat(Woods.shipped().listSources())
                .allSatisfy(source -> assertThat(source.what()).isNotBlank());
    }

    @Test
    void facts_have_sources_exactly_where_there_are_facts() {
        assertThat(Woods.shipped().list()).allSatisfy(species -> {
            Set<FactGroup> sourced = species.provenance().keys().keySet();
            assertThat(sourced).contains(FactGroup.GRAVITY);
            assertThat(sourced.contains(FactGroup.STRENGTH))
                    .isEqualTo(species.strength().moeMpa().isPresent());
            assertThat(sourced.contains(FactGroup.SHRINKAGE))
                    .isEqualTo(species.shrinkage().volumetricPct().isPresent());
            assertThat(sourced.contains(FactGroup.COEFFICIENTS))
                    .isEqualTo(species.coefficients().radial().isPresent());
        });
    }

    @Test
    void doubtful_rows_say_what_is_doubtful() {
        assertThat(species("Black cherry").provenance().note()).isEmpty();
        assertThat(species("Baldcypress").provenance().note())
                .hasValueSatisfying(note -> assertThat(note).contains("FROM MEMORY"));
        assertThat(species("White ash").provenance().note())
                .hasValueSatisfying(note -> assertThat(note).contains("CONFLICT"));
    }

    @Test
    void a_name_is_found_only_as_it_is_written() {
        assertThat(Woods.shipped().find("Black cherry")).isPresent();
        assertThat(Woods.shipped().find("black cherry")).isEmpty();
        assertThat(Woods.shipped().find("")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "black cherry, Black cherry",
        "CHERRY, Black cherry",
        "sugar maple, Sugar maple (hard maple)",
        "hard maple, Sugar maple (hard maple)",
        "Maple hard, Sugar maple (hard maple)",
        "walnut, Black walnut",
        "red oak, Northern red oak",
        "Osage orange, Osage-orange",
        "poplar, Yellow-poplar",
        "redwood, Redwood (old-growth)",
        "khaya, African mahogany (khaya)",
        "beech, American beech",
        "gum, Sweetgum",
    })
    void as_much_of_a_name_as_one_wood_has_is_enough(String said, String meant) {
        assertThat(Woods.shipped().read(said).get().name()).isEqualTo(meant);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "oak | Northern red oak, White oak",
                "Ash | White ash, Black ash",
                "maple | Sugar maple (hard maple), Red maple, Silver maple, Bigleaf maple",
                "sugar | Sugar maple (hard maple), Sugar pine",
                "mahogany | African mahogany (khaya), True mahogany (Honduran)",
                "cedar | Western redcedar, Eastern redcedar, Spanish-cedar",
                "locust | Black locust, Honeylocust",
                "southern pine | Loblolly pine (southern pine), Longleaf pine (southern pine), Shortleaf pine (southern pine), "
                        + "Slash pine (southern pine)",
            })
    void a_word_of_several_woods_lists_them(String said, String meant) {
        Parsed<Species> refused = Woods.shipped().read(said);
        assertThat(refused.isValue()).isFalse();
        assertThat(mend(said)).isEqualTo("name the one it is: " + meant);
    }

    /** What is another wood's name must not be taken for the only one in the table that shares a word with it. */
    @Test
    void a_wood_that_is_not_in_the_table_is_refused_with_the_nearest_names() {
        assertThat(mend("walnutt")).contains("Black walnut");
        assertThat(mend("english walnut")).contains("Black walnut");
        assertThat(mend("soft maple")).contains("Red maple").contains("Silver maple");
        assertThat(mend("mahogony")).contains("African mahogany (khaya)").contains("True mahogany (Honduran)");
        assertThat(mend("tulip poplar")).contains("Yellow-poplar");
        assertThat(mend("zzz")).isEqualTo("choose a wood from the table, or give a density");
        assertThat(mend("ak")).startsWith("did you mean");
        assertThat(mend("  ")).isEqualTo("choose a wood from the table, or give a density");
    }

    @Test
    void every_wood_is_found_by_its_own_name_in_small_letters() {
        assertThat(Woods.shipped().list())
                .allSatisfy(species -> assertThat(species(species.name().toLowerCase(Locale.ROOT)))
                        .isEqualTo(species));
    }

    @Test
    void every_wood_is_the_first_offer_for_its_own_name_in_small_letters() {
        assertThat(Woods.shipped().list())
                .allSatisfy(species -> assertThat(NearNames.of(species.name().toLowerCase(Locale.ROOT), names())
                                .get(0))
                        .isEqualTo(species.name()));
    }

    @Test
    void two_woods_of_one_name_are_refused() {
        Species twice = species("Teak");
        assertThatThrownBy(() -> new Woods(List.of(twice, twice), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Teak");
    }

    static Species species(String name) {
        return Woods.shipped().read(name).get();
    }

    private static List<String> names() {
        return Woods.shipped().list().stream().map(Species::name).toList();
    }

    private static String mend(String name) {
        Parsed<Species> refused = Woods.shipped().read(name);
        assertThat(refused.isValue()).isFalse();
        return ((Parsed.Refused<Species>) refused).mend();
    }

    private static List<String> shippedLines() {
        try (InputStream bytes = Woods.class.getResourceAsStream("wood.csv")) {
            if (bytes == null) {
                throw new AssertionError("wood.csv is not on the class path");
            }
            return new ArrayList<>(new String(bytes.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
