// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.measured;
import static bandwright.dsl.check.Bench.one;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class PinPairsTest {
    /** The two pins of a gap, as far off the line on either side: twice that less 0.5 mm. */
    @ParameterizedTest
    @CsvSource({"0.249, CAUTION", "0.25, PASSED", "0.27, PASSED"})
    void the_pins_of_a_gap_stand_beside_each_other(double across, Verdict verdict) {
        String text = band(5, 2.2) + Bench.row("around 180 deg  spacing 0.15 mm  sink 0.25 mm")
                + "prongs pins for lights on shank { rise 0.28 mm  diameter 0.5 mm  across " + across + " mm }";

        Finding found = one("pins-apart", text);
        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(2 * across - 0.5, within(1e-6));
    }

    /** Two lines side by side, 2 x across apart: between them pins of both stand, 0.42 mm inside their own line. */
    @ParameterizedTest
    @CsvSource({"0.669, CAUTION", "0.67, PASSED", "0.69, PASSED"})
    void pins_of_two_lines_stand_beside_each_other(double across, Verdict verdict) {
        String text = band(6, 2.2)
                + Bench.row("around full  count 34  sink 0.25 mm  across " + -across + " mm, " + across + " mm")
                + "prongs pins for lights on shank { diameter 0.5 mm  rise 0.28 mm  across 0.42 mm }";

        Finding found = one("pins-apart", text);
        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(2 * across - 1.34, within(1e-6));
    }
}
