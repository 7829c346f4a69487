package turnalike.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import turnalike.language.Language;

/** What reads like a slip is asked about in German too: where it stands, each kind of question, in either unit. */
class SlipsInGermanTest {
    private static final List<String> ASKED = List.of(
            "piece 3, column mass_g",
            "piece 3, columns d1 and m1",
            "columns d1 and m1",
            "column mass_g",
            "line 1, column weight",
            "14.2 g is 127 g from the usual 141 g: did the decimal point slip, and is 142 g meant?",
            "14.2 g is -127 g from the usual 141 g: did the decimal point slip, and is 142 g meant?",
            "124.2 g is -17.1 g from the usual 141.3 g: did two digits change places, and is 142.4 g meant?",
            "124.2 g is -17.1 g from the usual 141.3 g: is there a digit too many, and is 142.4 g meant?",
            "124.2 g is -17.1 g from the usual 141.3 g: is one digit wrong, and is 142.4 g meant?",
            "5 g is -136 g from the usual 141 g: is it in ounces, and is 141.7 g meant?",
            "0.3 g is -140 g from the usual 141 g: is it in pounds, and is 141.7 g meant?",
            "0.1 g is -140 g from the usual 141 g: is it in kilograms, and is 141.7 g meant?",
            "141 oz is 136 oz from the usual 5 oz: is it in grams, and is 5 oz meant?",
            "15 mm is -366 mm from the usual 381 mm: is it in inches, and is 381 mm meant?",
            "0.59 in is -14.4 in from the usual 15 in: is it in centimetres, and is 15 in meant?",
            "381 in is 366 in from the usual 15 in: is it in millimetres, and is 15 in meant?",
            "124.2 g is -17.1 g from the usual 141.3 g: is it right?",
            "did 15 in and 1.1 in change places?",
            "its middle figure is 5 g where the pattern has 141 g: is it in ounces?",
            "its middle figure is 0.3 g where the pattern has 141 g: is it in pounds?",
            "its middle figure is 0.1 g where the pattern has 141 g: is it in kilograms?",
            "its middle figure is 141 oz where the pattern has 5 oz: is it in grams?",
            "its middle figure is 15 mm where the pattern has 381 mm: is it in inches?",
            "its middle figure is 38 mm where the pattern has 381 mm: is it in centimetres?",
            "its middle figure is 381 in where the pattern has 15 in: is it in millimetres?",
            "its middle figure is 15 mm where the pattern has 381 mm: is it measured as the pattern is?",
            "do they stand under each other's names?",
            "is it the same as piece 03?",
            "all its figures are those of piece 4: was it entered twice?",
            "16 in lies past the end at 15 in: is it measured from the start end?",
            "16 in is near none of the lengths: is it one of B (15 in)? It is taken as one",
            "is this the mass? It is ignored unless it is named mass_g or mass_oz",
            "is this a measure? It is ignored unless it is named like d1 for a diameter or m1 for a mark",
            "every weight is a whole gram: does your scale show no tenths? Then set what the scale shows, among the tolerances, to 1 g; as"
                    + " it is, the balance is thought surer than it is");

    @Test
    void every_kind_of_question_has_its_german() {
        assertThat(ASKED).allSatisfy(each -> {
            assertThat(Language.GERMAN.knows(each)).as(each).isTrue();
            assertThat(Language.GERMAN.say(each))
                    .doesNotContain(" in from", " lies ", " is ", " the ", "usual", "column ", "piece ")
                    .doesNotContain(
                            "ounces",
                            "pounds",
                            "kilograms",
                            "grams,",
                            "inches",
                            "metres",
                            "Millimeter ",
                            "Millimeter?");
        });
    }

    @Test
    void every_question_that_the_sources_put_is_among_them() throws IOException {
        Map<String, String> words = SlipTexts.inSources();
        assertThat(words)
                .containsEntry("is it the same as piece", "Slips.java")
                .containsEntry("from the usual", "OddFigures.java")
                .containsEntry("is there a digit too many", "LikelyCorrection.java")
                .containsEntry("centimetres", "LikelyCorrection.java")
                .containsEntry("is near none of the lengths: is it one of", "LengthsOfPieces.java");
        words.keySet().removeIf(each -> ASKED.stream().anyMatch(asked -> asked.contains(each)));
        assertThat(words).isEmpty();
    }
}
