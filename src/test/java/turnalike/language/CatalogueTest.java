package turnalike.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CatalogueTest {
    private static final Catalogue SMALL = new Catalogue("""
            // a remark
            # pieces
            \t# Stück

            # of # kept
            \tvon #2 sind # da
            *, # in
            \t*, # Zoll
            give the * of *
            \t*2: * angeben
            bead
            \tRundstab
            length
            \tLänge
            it turns
            \tes dreht sich
            in
            \tZoll
            bore # in (# mm) deep
            \t# Zoll (# mm) tief bohren
            strikes # in
            \treißt # Zoll an
            # in long, weighs # g
            \t# Zoll lang, wiegt # g
            Balance, g
            \tGewicht, g
            # g·mm left
            \t# g·mm bleiben
            strikes #
            \treißt # an
            off by # in (# mm), at worst # in (# mm)
            \tum # Zoll (# mm), höchstens # Zoll (# mm) daneben
            # *, # in
            \t# *, # Zoll
            spokes
            \tSpeichen
            # mm
            \t# mm
            from the end
            \tvom Ende an
            spokes: # in (# mm) apart, # in (# mm) from the end
            \tSpeichen: # Zoll (# mm) auseinander, # Zoll (# mm) vom Ende
            shafts under # mm
            \tWellen unter # mm
            under
            \tunter
            """);

    @Test
    void figures_are_put_back_with_a_comma() {
        assertThat(SMALL.say("1,234.5 pieces")).isEqualTo("1.234,5 Stück");
        assertThat(SMALL.say("0.5")).isEqualTo("0,5");
        assertThat(SMALL.say("1 3/8 pieces")).isEqualTo("1 3/8 Stück");
        assertThat(SMALL.say("0.1.0, 1.5")).as("a version").isEqualTo("0.1.0, 1,5");
        assertThat(Language.GERMAN.say("This is Turnalike 0.1.0 of 29 November 2026."))
                .contains(" 0.1.0 ");
        assertThat(SMALL.say("12 of 14.5 kept")).isEqualTo("von 14,5 sind 12 da");
    }

    @Test
    void one_entry_serves_grams_and_ounces() {
        assertThat(SMALL.say("3 in long, weighs 8.4 oz")).isEqualTo("3 Zoll lang, wiegt 8,4 oz");
        assertThat(SMALL.say("76 mm long, weighs 8.4 oz")).isEqualTo("76 mm lang, wiegt 8,4 oz");
        assertThat(SMALL.say("Balance, oz")).isEqualTo("Gewicht, oz");
        assertThat(SMALL.say("540 g·mm left")).isEqualTo("540 g·mm bleiben");
    }

    @Test
    void words_in_a_line_are_looked_up_and_may_change_places() {
        assertThat(SMALL.say("bead, 1 1/2 in")).isEqualTo("Rundstab, 1 1/2 Zoll");
        assertThat(SMALL.say("hub bead 7, 1.5 in")).isEqualTo("hub bead 7, 1,5 Zoll");
        assertThat(SMALL.say("give the length of bead")).isEqualTo("Rundstab: Länge angeben");
    }

    /** The history heads each day with its date; a list of some days would fail on the others. */
    @Test
    void every_day_of_the_year_has_its_german() {
        DateTimeFormatter english = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
        DateTimeFormatter german = DateTimeFormatter.ofPattern("EEEE, d. MMMM yyyy", Locale.GERMAN);
        LocalDate first = LocalDate.of(2028, 1, 1);
        for (int day = 0; day < 366; day++) {
            LocalDate date = first.plusDays(day);
            assertThat(Language.GERMAN.say(english.format(date))).isEqualTo(german.format(date));
        }
    }

    @Test
    void a_line_is_put_together_of_its_sentences() {
        assertThat(SMALL.say("It turns; 12.5 pieces (bead). 3 of 4 kept"))
                .isEqualTo("Es dreht sich; 12,5 Stück (Rundstab). von 4 sind 3 da");
    }

    @Test
    void an_entry_serves_the_other_unit_as_well() {
        assertThat(SMALL.say("bore 5/8 in (15.9 mm) deep")).isEqualTo("5/8 Zoll (15,9 mm) tief bohren");
        assertThat(SMALL.say("bore 15.9 mm (5/8 in) deep")).isEqualTo("15,9 mm (5/8 Zoll) tief bohren");
        assertThat(SMALL.say("bead, 12.5 mm")).isEqualTo("Rundstab, 12,5 mm");
        assertThat(SMALL.say("peg 3 mm wide, 12.5 mm")).isEqualTo("peg 3 mm wide, 12,5 mm");
    }

    @Test
    void an_entry_serves_what_is_under_a_figure() {
        assertThat(SMALL.say("off by under 0.001 in (0.01 mm), at worst 0.02 in (0.5 mm)"))
                .isEqualTo("um unter 0,001 Zoll (0,01 mm), höchstens 0,02 Zoll (0,5 mm) daneben");
        assertThat(SMALL.say("off by under 0.01 mm (0.001 in), at worst under 0.01 mm (0.001 in)"))
                .isEqualTo("um unter 0,01 mm (0,001 Zoll), höchstens unter 0,01 mm (0,001 Zoll) daneben");
        assertThat(SMALL.say("shafts under 1.5 mm")).as("its own entry first").isEqualTo("Wellen unter 1,5 mm");
        assertThat(SMALL.say("nobody knows under 1.5")).isEqualTo("nobody knows under 1,5");
    }

    /** "# *, # in" fits a part of it, any words in it. */
    @Test
    void a_line_with_a_stop_is_its_entry_before_it_is_clauses() {
        String line = "spokes: 7/8 in (22.2 mm) apart, 2 in (50.8 mm) from the end";
        String german = "Speichen: 7/8 Zoll (22,2 mm) auseinander, 2 Zoll (50,8 mm) vom Ende";
        assertThat(SMALL.say(line)).isEqualTo(german);
        assertThat(SMALL.say(line + ".")).isEqualTo(german + ".");
        assertThat(SMALL.say(line + ";")).isEqualTo(german + ";");
    }

    @Test
    void an_entry_serves_lists_of_figures() {
        assertThat(SMALL.say("strikes 1.5, 2.5, 3 mm")).isEqualTo("reißt 1,5, 2,5, 3 mm an");
        assertThat(SMALL.say("strikes 1 1/2 in, 2 in, 3 5/8 in")).isEqualTo("reißt 1 1/2 Zoll, 2 Zoll, 3 5/8 Zoll an");
        assertThat(SMALL.say("strikes 0 → 2, 17 → 15")).isEqualTo("reißt 0 → 2, 17 → 15 an");
    }

    @Test
    void what_is_not_known_stays() {
        assertThat(SMALL.say("nobody knows 1.5: it turns; 1.5 pieces"))
                .isEqualTo("nobody knows 1,5: es dreht sich; 1,5 Stück");
        assertThat(SMALL.find("It turns; nobody knows")).isEmpty();
        assertThat(SMALL.find(" 12.25 – 3 ")).isEqualTo(Optional.of(" 12,25 – 3 "));
        assertThat(SMALL.say("")).isEmpty();
        assertThat(SMALL.say("#")).isEqualTo("#");
    }

    /** A board is called "1#2", a job whatever its turner likes. */
    @Test
    void signs_of_its_own_in_a_line_are_no_slots() {
        assertThat(SMALL.say("# 1.5 of 2 kept: 3 # * 4 *")).isEqualTo("# 1,5 of 2 kept: 3 # * 4 *");
        assertThat(SMALL.say("bead, 1#2")).isEqualTo("Rundstab, 1#2");
        assertThat(SMALL.say("it turns #1; 1.5 \uE001 #\uE009 pieces *")).isNotEmpty();
        assertThat(Language.GERMAN.say("Board 1#2: 2 in x 8 in x 96 in, 19.5"))
                .isEqualTo("Brett 1#2: 2 Zoll x 8 Zoll x 96 Zoll, 19,5");
        for (String odd : List.of("#", "##", "#1", "*", "#*", "#\uE001", "\uE000", "\uF8FF", "a # b #2 c *1")) {
            assertThatCode(() -> Language.GERMAN.say(odd + ": 5 pieces, " + odd + " 1.5"))
                    .doesNotThrowAnyException();
        }
    }

    /** What was misspelt in a file would show only where it is said. */
    @Test
    void every_entry_of_every_language_uses_the_slots_of_its_english() {
        for (Language language : List.of(Language.GERMAN)) {
            Catalogue catalogue = Catalogue.of(language);
            for (String english : catalogue.english()) {
                String said = catalogue.exactly(english).orElseThrow();
                assertThat(slots(said)).as(english).isEqualTo(slots(english));
                assertThatCode(() -> catalogue.say(english.replace("#", "1.5").replace("*", "xyz")))
                        .as(english)
                        .doesNotThrowAnyException();
            }
        }
    }

    private static List<Long> slots(String line) {
        return List.of(
                line.chars().filter(each -> each == '#').count(),
                line.chars().filter(each -> each == '*').count());
    }

    @Test
    void a_long_line_of_nothing_known_ends() {
        String line = "wholly unknown, and again; ".repeat(400);
        assertThat(SMALL.say(line)).isEqualTo(line);
    }

    @Test
    void the_crest_of_a_member_with_a_name_of_its_own_is_said_in_german_too() {
        assertThat(Language.GERMAN.say("4 urn crest")).isEqualTo("4 urn, Scheitel");
        assertThat(Language.GERMAN.say("4 bead crest")).isEqualTo("4 Rundstab, Scheitel");
        assertThat(Language.GERMAN.say("2 neck bottom")).isEqualTo("2 neck, Grund");
    }
}
