// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.measured;
import static bandwright.dsl.check.Bench.one;
import static bandwright.dsl.check.Bench.row;
import static bandwright.dsl.check.Bench.verdict;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class EdgeChecksTest {
    private static String sunk(double height, double sink) {
        return band(4, height) + row("around full  count 30  sink " + sink + " mm");
    }

    @ParameterizedTest
    @CsvSource({"0.76, FAILED", "0.749, CLOSE", "0.7, PASSED"})
    void a_girdle_stays_on_its_part(double across, Verdict verdict) {
        Finding found =
                one("girdle-edge", band(3, 2) + row("around full  count 30  sink 0.2 mm  across " + across + " mm"));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(0.75 - across, within(1e-9));
    }

    /** The pavilion of a stone of 1.5 mm is 0.645 mm deep. */
    @ParameterizedTest
    @CsvSource({"0.26, FAILED", "0.25, CLOSE", "0.1, PASSED"})
    void the_culet_keeps_from_the_finger(double sink, Verdict verdict) {
        assertThat(verdict("culet-to-finger", sunk(1.9, sink))).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"1.04, FAILED", "1.06, CLOSE", "1.2, PASSED"})
    void metal_is_left_behind_the_row(double height, Verdict verdict) {
        assertThat(verdict("behind-row", sunk(height, 0.25))).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"0.04, CAUTION", "0.05, PASSED"})
    void a_flush_girdle_lies_below_the_surface(double sink, Verdict verdict) {
        assertThat(verdict(
                        "girdle-sink",
                        sunk(2, sink) + "cut seats for lights from shank { hole 0.8 mm  clearance 0.01 mm }"))
                .isEqualTo(verdict);
    }

    /** A groove 1 mm wide in the middle has its wall 0.5 mm across: a stone of 1.5 mm at 1 mm across hangs 0.25 mm over it. */
    @ParameterizedTest
    @CsvSource({"1, FAILED, -0.25", "1.4, PASSED, 0.15"})
    void a_girdle_stays_off_a_groove(double across, Verdict verdict, double left) {
        Finding found = one(
                "girdle-edge",
                band(8, 3) + "cut gr from shank { width 1 mm  depth 1.5 mm }\n"
                        + row("around full  count 30  sink 0.1 mm  across " + across + " mm"));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(left, within(0.02));
    }

    @Test
    void a_groove_at_the_finger_is_no_metal_behind_the_row() {
        Finding found = one(
                "behind-row",
                band(4, 3.4) + "cut inn from shank { width 3 mm  depth 2.1 mm  inside }\n"
                        + row("around full  count 30  sink 0.6 mm"));

        assertThat(found.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(measured(found)).isCloseTo(0.7, within(1e-6));
    }
}
