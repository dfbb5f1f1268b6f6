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

    /** An edge of radius 0.2 mm stands back by r - sqrt(r^2 - (r - sink)^2) at the girdle's level. */
    @ParameterizedTest
    @CsvSource({"0.05", "0.1", "0.15"})
    void a_rounded_edge_stands_back_at_the_girdle(double sink) {
        Finding found = one(
                "girdle-edge",
                band(3, 2).replace("height: 2.0 mm", "height: 2 mm, edge: 0.2 mm")
                        + row("around full  count 30  sink " + sink + " mm  across 0.7 mm"));
        double back = 0.2 - Math.sqrt(0.04 - (0.2 - sink) * (0.2 - sink));

        assertThat(measured(found)).isCloseTo(0.05 - back, within(0.002));
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

    /** A girdle of 0.045 mm and a crown of 0.2176 mm. */
    @ParameterizedTest
    @CsvSource({"0.264, CAUTION", "0.262, PASSED"})
    void a_table_lies_level_with_the_surface_or_above_it(double sink, Verdict verdict) {
        String text = sunk(2, sink) + "cut seats for lights from shank { hole 0.8 mm  clearance 0.01 mm }";

        Finding found = one("table-surface", text);
        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(0.2626 - sink, within(1e-4));
        assertThat(verdict("table-surface", text + "\nlimit table-surface -0.1 mm because \"gipsy set, deep\""))
                .isEqualTo(Verdict.PASSED);
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

    /**
     * A roof with flanks at 60 degrees, 4 mm long. A stone square to one of them in its middle has the crease 2 mm up and the part's end 2 mm
     * down the slope; 0.5 mm along the finger from there is 1 mm of slope.
     */
    @ParameterizedTest
    @CsvSource({"2, 1.25, PASSED", "1.5, 0.25, PASSED", "2.4, 0.45, PASSED", "1.35, -0.05, FAILED"})
    void a_slope_is_no_edge_but_its_crease_is(double across, double left, Verdict verdict) {
        Finding found = one(
                "girdle-edge",
                "profile roof = outline { start (-3 mm, 0 mm)  line to (3 mm, 0 mm)  line to (1 mm, 3.4641016151 mm)"
                        + "  line to (-1 mm, 3.4641016151 mm) }\n"
                        + "band shank { finger ISO 57  profile roof  metal silver-925 }\n"
                        + row("around full  count 30  sink 0.02 mm  across " + across + " mm"));

        // Below the surface the girdle's plane leaves the metal a little beyond the crease.
        assertThat(measured(found)).isCloseTo(left, within(0.025));
        assertThat(found.verdict()).isEqualTo(verdict);
    }

    @Test
    void where_a_hole_goes_through_there_is_no_metal_behind_the_row() {
        String seats = "cut seats for lights from shank { hole 0.8 mm  clearance 0.01 mm }";
        Finding open = one("behind-row", sunk(2, 0.2) + seats);

        assertThat(open.verdict()).isEqualTo(Verdict.NOT_LOOKED_AT);
        assertThat(open.sentence()).contains("the holes of seats go through to the finger");
    }

    @ParameterizedTest
    @CsvSource({"floor 0.7 mm, FAILED", "floor 0.9 mm, PASSED", "floor 0.9 mm  bars every 3, NOT_LOOKED_AT"})
    void behind_a_channel_its_floor_counts_unless_bars_stand_for_it(String floor, Verdict verdict) {
        assertThat(verdict(
                        "behind-row",
                        band(5, 2.4) + row("around full  count 36  sink 0.4 mm")
                                + "cut slot for lights from shank { clearance 0.01 mm  channel { width 90 %  notch 0.1 mm  lip 0.1 mm  "
                                + floor + " } }"))
                .isEqualTo(verdict);
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
