// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.measured;
import static bandwright.dsl.check.Bench.one;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class RowChecksTest {
    private static String two(double across) {
        String rest = "{ stone round diamond 1.5 mm  around full  count 30  sink 0.2 mm  across ";
        return band(6, 2) + "stone-row left on shank " + rest + -across + " mm }\n" + "stone-row right on shank " + rest
                + across + " mm }\n";
    }

    /** Two lines side by side: from line to line less a stone. */
    @ParameterizedTest
    @CsvSource({"0.774, FAILED", "0.7755, CLOSE", "0.8, PASSED"})
    void two_rows_side_by_side_need_room(double across, Verdict verdict) {
        Finding found = one("rows-apart", two(across));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(2 * across - 1.5, within(1e-3));
    }

    @Test
    void two_rows_in_one_place_meet() {
        Finding found = one("rows-apart", two(0.1));

        assertThat(found.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(measured(found)).isZero();
    }
}
