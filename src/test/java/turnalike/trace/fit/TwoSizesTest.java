package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TwoSizesTest {
    @Test
    void all_shares_at_once_are_each_forms_own() {
        double[] shares = new double[TwoSizes.FORMS.length];
        for (int i = 0; i <= 20; i++) {
            TwoSizes.shares(i / 20.0, shares);
            for (int k = 0; k < shares.length; k++) {
                assertThat(shares[k])
                        .as("%s at %s", TwoSizes.FORMS[k], i / 20.0)
                        .isCloseTo(TwoSizes.FORMS[k].share(i / 20.0), within(1e-12));
            }
        }
        assertThat(TwoSizes.FORMS[TwoSizes.POINT]).isEqualTo(Form.POINT);
    }
}
