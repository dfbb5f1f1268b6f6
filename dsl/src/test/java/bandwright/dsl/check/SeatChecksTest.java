// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.measured;
import static bandwright.dsl.check.Bench.row;
import static bandwright.dsl.check.Bench.verdict;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class SeatChecksTest {
    private static String seats(String spacing, String seat) {
        return band(4, 2) + row("around 180 deg  spacing " + spacing + "  sink 0.25 mm")
                + "cut seats for lights from shank { hole 0.8 mm  " + seat + " }";
    }

    /** From the girdle to where a stone of 1.5 mm is 0.8 mm wide: 0.35 mm x tan 40.7 deg = 0.301 mm. */
    @ParameterizedTest
    @CsvSource({"0.299, FAILED", "0.3, FAILED", "0.301, CLOSE", "0.303, CLOSE", "0.35, PASSED"})
    void a_bearing_is_as_deep_as_its_stone(double bearing, Verdict verdict) {
        assertThat(verdict("seat-depth", seats("0.5 mm", "bearing " + bearing + " mm  clearance 0.01 mm")))
                .isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"0.03, CAUTION", "0.02, PASSED"})
    void a_wide_seat_is_a_caution(double clearance, Verdict verdict) {
        assertThat(verdict("seat-width", seats("0.5 mm", "clearance " + clearance + " mm")))
                .isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"0.31, FAILED", "0.325, CLOSE", "0.4, PASSED"})
    void skins_between_bores_are_cast_or_not(double spacing, Verdict verdict) {
        List<Finding> found = Bench.of("bore-skin", seats(spacing + " mm", "clearance 0.01 mm"));

        assertThat(found).anySatisfy(finding -> {
            assertThat(finding.verdict()).isEqualTo(verdict);
            assertThat(measured(finding)).isCloseTo(spacing - 0.02, within(1e-6));
        });
    }

    @ParameterizedTest
    @CsvSource({"2.1, FAILED", "2.15, CLOSE", "2.4, PASSED"})
    void skins_beside_bores_are_cast_or_not(double width, Verdict verdict) {
        String text = seats("0.6 mm", "clearance 0.01 mm").replace("width: 4.0 mm", "width: " + width + " mm");

        assertThat(Bench.of("bore-skin", text)).anySatisfy(finding -> {
            assertThat(finding.verdict()).isEqualTo(verdict);
            assertThat(measured(finding)).isCloseTo(width / 2 - 0.76, within(1e-3));
        });
    }

    @Test
    void bores_that_are_cast_into_each_other_leave_no_skin() {
        assertThat(Bench.of("bore-skin", seats("0.01 mm", "clearance 0.01 mm")))
                .extracting(Finding::sentence)
                .contains("the bores of lights are cast into each other");
    }

    @Test
    void seats_made_at_the_bench_cast_no_skins() {
        assertThat(Bench.of("bore-skin", seats("0.1 mm", "clearance 0.01 mm  made at bench")))
                .isEmpty();
    }

    /** A web bears nothing: one that is cut through is a caution. */
    @ParameterizedTest
    @CsvSource({"0.119, CAUTION", "0.121, PASSED"})
    void webs_between_bores_cut_at_the_bench_are_left_standing(double spacing, Verdict verdict) {
        Finding found = Bench.one("bore-web", seats(spacing + " mm", "clearance 0.01 mm  made at bench"));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(spacing - 0.02, within(1e-6));
    }

    /** Its limit is taken from another case, a channel's wall: a caution. */
    @ParameterizedTest
    @CsvSource({"2.2, CAUTION", "2.24, PASSED", "2.4, PASSED"})
    void walls_beside_bores_cut_at_the_bench_bear_the_setting(double width, Verdict verdict) {
        String text =
                seats("0.6 mm", "clearance 0.01 mm  made at bench").replace("width: 4.0 mm", "width: " + width + " mm");

        Finding found = Bench.one("bore-side", text);
        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(width / 2 - 0.76, within(1e-3));
    }

    /** What is let in is joined before its seats are cut: the wall goes on over the joint, as far as the band. */
    @Test
    void beside_bores_in_a_kept_ring_the_band_stands() {
        String text = band(4, 2)
                + "cut trough from shank { width 1.9 mm  depth 1 mm  keep stripe in red-gold-585  let-in in halves at 90 deg"
                + "  joined by solder  fit 0.05 mm }\n"
                + "stone-row lights on stripe { stone round diamond 1.5 mm  around full  count 30  sink 0.25 mm }\n"
                + "cut seats for lights from stripe, shank { hole 0.8 mm  clearance 0.01 mm  made at bench }";

        assertThat(measured(Bench.one("bore-side", text))).isCloseTo(2 - 0.76, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({"'', 0.67", "joined by solder, 1.24"})
    void a_gap_that_nothing_fills_is_no_wall(String joint, double wall) {
        String text = band(4, 2)
                + "cut trough from shank { width 2.86 mm  depth 1 mm  keep stripe in red-gold-585  let-in in halves at 90 deg  "
                + (joint == null ? "" : joint) + "  fit 0.05 mm }\n"
                + "cut line from shank { width 0.3 mm  depth 0.1 mm  across 1.8 mm }\n"
                + "stone-row lights on stripe { stone round diamond 1.5 mm  around full  count 30  sink 0.25 mm }\n"
                + "cut seats for lights from stripe, shank { hole 0.8 mm  clearance 0.01 mm  made at bench }";

        assertThat(measured(Bench.one("bore-side", text))).isCloseTo(wall, within(0.06));
    }

    @Test
    void the_edge_of_a_hole_at_the_finger_is_broken() {
        assertThat(verdict("hole-deburr", seats("0.5 mm", "clearance 0.01 mm"))).isEqualTo(Verdict.CAUTION);
        assertThat(verdict("hole-deburr", seats("0.5 mm", "clearance 0.01 mm  deburr 0.1 mm")))
                .isEqualTo(Verdict.PASSED);
    }

    @Test
    void a_bore_that_breaks_through_the_side_has_no_skin() {
        String text = seats("0.6 mm", "clearance 0.01 mm").replace("sink 0.25 mm", "sink 0.25 mm  across 1.3 mm");

        assertThat(Bench.of("bore-skin", text)).anySatisfy(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.FAILED);
            assertThat(measured(finding)).isCloseTo(0.7 - 0.76, within(1e-3));
            assertThat(finding.sentence()).isEqualTo("the bores of lights are cast open at the side");
        });
    }

    @ParameterizedTest
    @CsvSource({"1.36, 0.05, FAILED", "1.34, 0.05, CLOSE", "1.49, 0, FAILED", "0.8, 0.05, PASSED"})
    void the_smallest_stone_does_not_fall_through(double hole, double within, Verdict verdict) {
        String text = seats("0.5 mm", "clearance 0.01 mm")
                .replace("hole 0.8 mm", "hole " + hole + " mm")
                .replace("diamond 1.5 mm", "diamond 1.5 mm" + (within > 0 ? " within " + within + " mm" : ""));

        assertThat(verdict("seat-ledge", text)).isEqualTo(verdict);
    }

    /** An oval of 3 by 6 mm is as narrow as a hole of 2.4 mm where its longer side is: 1.5 mm x tan 40.7 deg x (1 - 2.4 / 6) = 0.774 mm. */
    @ParameterizedTest
    @CsvSource({"0.3, FAILED", "0.77, FAILED", "0.78, CLOSE"})
    void a_bearing_for_an_oval_is_as_deep_as_its_longer_side_wants(double bearing, Verdict verdict) {
        String text = band(8, 3)
                + "stone-row lights on shank { stone oval sapphire 3 mm by 6 mm  around 180 deg  spacing 0.3 mm  sink 0.1 mm }\n"
                + "cut seats for lights from shank { hole 2.4 mm  bearing " + bearing + " mm  clearance 0.01 mm }";

        assertThat(verdict("seat-depth", text)).isEqualTo(verdict);
    }

    /** What is kept by a cut at the bench is no casting: its seats are cut there too, whatever is said of them. */
    @ParameterizedTest
    @CsvSource({"''", "made at bench"})
    void seats_in_a_part_that_the_bench_makes_are_looked_at(String made) {
        String text = band(5, 2.5)
                + "cut trough from shank { width 2.5 mm  depth 1.2 mm  keep stripe in red-gold-585  let-in in halves at 0 deg"
                + "  joined by solder  made at bench }\n"
                + "stone-row lights on stripe { stone round diamond 1.5 mm  around full  spacing 0.16 mm  sink 0.2 mm }\n"
                + "cut seats for lights from stripe, shank { hole 0.6 mm  clearance 0.05 mm  " + made + " }";

        assertThat(measured(Bench.one("bore-web", text))).isCloseTo(0.06, within(0.01));
        assertThat(Bench.of("bore-side", text)).hasSize(1);
        assertThat(Bench.of("bore-skin", text)).isEmpty();
    }
}
