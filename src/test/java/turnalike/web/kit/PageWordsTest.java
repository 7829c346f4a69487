package turnalike.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.job.keys.KeyPaths;

class PageWordsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "set least_gap of the frame|set “Least between spokes” of the frame",
                "unless the job gives turning.force_n|unless the job gives “Tool pushes with, N”",
                "set it in turning.rules.strength_margin. Compression|set it in “strength margin” in the job file. Compression",
                "more than mass_pct says|more than “Weights of a set, %” says",
                "frame: none; add \"frame\": {\"kind\": \"wheel\", …}|frame: none; choose one in the field “Goes into”",
                "name it mass_g, or mass_oz for ounces|name it “Weight, g”, or “Weight, oz” for ounces",
                "Table 5-13 (VERIFIED, S3)|Table 5-13 (seen)",
                "4-9; VERIFIED in FPL-GTR-282 (S3)|4-9; seen in FPL-GTR-282",
                "footnote c (VERIFIED, S1); White ash: facts strength S1+S2+S3|footnote c (seen); White ash: its strength",
                "specific gravity G = G12 (1 - S12/100)|specific gravity G = G12 (1 - S12/100)",
                "a wood frame. It stands|a wood frame. It stands",
                "8 5/8 oz, 1.5 in; see the pieces.|8 5/8 oz, 1.5 in; see the pieces.",
            })
    void what_names_a_key_names_the_field_that_asks_for_it(String domain, String page) {
        assertThat(PageWords.of(domain)).isEqualTo(page);
    }

    @Test
    void no_key_of_the_file_is_named_by_its_key() {
        for (KeyPaths.At at : KeyPaths.all()) {
            assertThat(PageWords.of("give %s, else".formatted(at.path())).replaceAll("“[^”]*”", ""))
                    .as(at.path())
                    .doesNotContain("_");
        }
    }
}
