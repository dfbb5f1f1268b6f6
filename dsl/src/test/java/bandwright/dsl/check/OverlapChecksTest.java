// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.measured;
import static bandwright.dsl.check.Bench.one;
import static bandwright.dsl.check.Bench.verdict;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class OverlapChecksTest {
    private static String two(String size, double height) {
        return band(4, 2) + "profile inner-slab = flat(width: 3 mm, height: " + height + " mm)\n"
                + "band liner { finger " + size + "  profile inner-slab  metal red-gold-585 }\n";
    }

    /** The liner's outer radius is 50 mm / 2 pi + height; the shank begins at 57 mm / 2 pi = 9.072 mm. */
    @ParameterizedTest
    @CsvSource({"1.13, FAILED", "1.11, PASSED"})
    void two_bands_do_not_share_a_place(double height, Verdict verdict) {
        assertThat(verdict("bands-overlap", two("ISO 50", height))).isEqualTo(verdict);
    }

    @Test
    void the_shared_area_is_told() {
        assertThat(measured(one("bands-overlap", two("ISO 57", 1)))).isCloseTo(3, within(0.3));
        assertThat(Bench.of("bands-overlap", band(4, 2))).isEmpty();
    }
}
