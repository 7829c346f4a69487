package turnalike.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ArticleTest {
    @Test
    void a_figure_takes_the_article_it_is_read_with() {
        for (String figure :
                new String[] {"8 mm", "8.5 mm", "80 mm", "85", "800", "8000", "11 mm", "11/16 in", "18 mm", "11000"}) {
            assertThat(Article.with(figure)).isEqualTo("an " + figure);
        }
        for (String figure :
                new String[] {"1 in", "1 1/8 in", "110 mm", "180 mm", "1800 rpm", "7/8 in", "3 mm", "100", "17"}) {
            assertThat(Article.with(figure)).isEqualTo("a " + figure);
        }
    }

    @Test
    void a_word_takes_an_before_a_vowel() {
        assertThat(Article.with("ogee")).isEqualTo("an ogee");
        assertThat(Article.with("bead")).isEqualTo("a bead");
    }

    @Test
    void one_is_told_without_an_s() {
        assertThat(Article.count(1, "group")).isEqualTo("1 group");
        assertThat(Article.count(0, "group")).isEqualTo("0 groups");
        assertThat(Article.count(2, "group")).isEqualTo("2 groups");
    }

    @Test
    void ordinals_end_as_they_are_spoken() {
        assertThat(IntStream.of(1, 2, 3, 4, 11, 12, 13, 21, 32, 43, 111, 112).mapToObj(Article::ordinal))
                .containsExactly(
                        "1st", "2nd", "3rd", "4th", "11th", "12th", "13th", "21st", "32nd", "43rd", "111th", "112th");
    }
}
