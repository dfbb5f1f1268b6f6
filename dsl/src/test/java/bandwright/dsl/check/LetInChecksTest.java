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

class LetInChecksTest {
    private static String groove(String rest) {
        return band(5, 2) + "cut trough from shank { depth 1 mm  keep stripe in red-gold-585  " + rest + " }\n";
    }

    /** The groove's floor lies 1 mm deep, so the ring is 18.144 + 2 = 20.144 mm wide inside, and the shoulders 22.144 mm. */
    @Test
    void a_closed_ring_passes_no_shoulder() {
        Finding found = one("let-in", groove("width 2 mm"));

        assertThat(found.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(found.sentence()).contains("inner diameter of 20.144 mm", "outer diameter of 22.144 mm");
    }

    @ParameterizedTest
    @CsvSource({"let-in from fingertip leaving collar", "let-in from hand leaving collar", "let-in in halves at 9 deg"})
    void each_way_in_is_a_way(String way) {
        assertThat(verdict("let-in", groove("width 2 mm  " + way))).isEqualTo(Verdict.PASSED);
    }

    /** A shoulder on one side alone: the ring comes from the other. */
    @Test
    void a_groove_at_the_edge_is_open_to_its_ring() {
        assertThat(verdict("let-in", groove("width 2 mm  across 1.5 mm"))).isEqualTo(Verdict.PASSED);
    }

    @ParameterizedTest
    @CsvSource({"0.001, FAILED", "0, PASSED"})
    void the_least_shoulder_counts(double higher, Verdict verdict) {
        String text = band(5, 2) + "cut step from shank { width 1 mm  depth " + (1 - higher) + " mm  across 2 mm }\n"
                + "cut trough from shank { width 1.5 mm  depth 1 mm  across 0.75 mm  keep stripe in red-gold-585 }";

        assertThat(verdict("let-in", text)).isEqualTo(verdict);
    }

    @Test
    void on_the_inner_wall_it_is_the_other_way_round() {
        Finding found = one("let-in", groove("width 2 mm  inside"));

        assertThat(found.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(found.sentence()).contains("outer diameter of 20.144 mm", "inner diameter of 18.144 mm");
    }

    /** A half is 20.144 mm long and the bore 18.144 mm wide; a collar leaves the way free. */
    @Test
    void halves_do_not_come_through_the_bore() {
        Finding found = one("let-in", groove("width 2 mm  inside  let-in in halves at 9 deg"));

        assertThat(found.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(found.sentence()).contains("outer diameter of 20.144 mm", "inner diameter of 18.144 mm");
        assertThat(verdict("let-in", groove("width 2 mm  inside  let-in from hand leaving collar")))
                .isEqualTo(Verdict.PASSED);
    }

    /** 2 x 10.072 mm x sin 45 deg against 2 x 9.072 mm x sin 45 deg. */
    @Test
    void an_arc_on_the_inner_wall_is_longer_than_its_opening() {
        Finding found = one("let-in", groove("width 2 mm  inside  around 90 deg"));

        assertThat(found.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(measured(found)).isCloseTo(14.244, within(0.001));
        assertThat(found.limit()).isEqualTo("at most 12.829 mm");
    }

    @ParameterizedTest
    @CsvSource({"181, FAILED", "180, PASSED"})
    void an_arc_goes_in_up_to_half_the_round(int degrees, Verdict verdict) {
        assertThat(verdict("let-in", groove("width 2 mm  around " + degrees + " deg")))
                .isEqualTo(verdict);
    }

    /** Forty stones: pins at 4.5 deg and every 9 deg on. */
    @ParameterizedTest
    @CsvSource({"4.5, FAILED", "0, PASSED"})
    void a_seam_keeps_clear_of_pins(double degrees, Verdict verdict) {
        String text = groove("width 2 mm  let-in in halves at " + degrees + " deg")
                + "stone-row lights on stripe { stone round diamond 1.5 mm  around full  count 40  sink 0.25 mm }\n"
                + "prongs pins for lights on stripe { diameter 0.55 mm  rise 0.28 mm  root 0.5 mm  across 0.42 mm }";

        assertThat(verdict("seam-distance", text)).isEqualTo(verdict);
    }

    @Test
    void the_diameters_are_measured() {
        assertThat(measured(one("let-in", groove("width 2 mm")))).isCloseTo(20.144, within(1e-3));
    }

    /**
     * Silver begins to melt before red gold or platinum flows; red gold flows far below where platinum melts, rose gold close below where red gold does.
     */
    @ParameterizedTest
    @CsvSource({
        "silver-925, red-gold-585, FAILED",
        "silver-925, platinum-950-ru, FAILED",
        "platinum-950-ru, red-gold-585, PASSED",
        "red-gold-585, rose-gold-585, CAUTION",
        "silver-925, titanium-grade-2, NOT_LOOKED_AT"
    })
    void what_is_poured_in_flows_before_the_other_melts(String into, String poured, Verdict verdict) {
        String text = groove("width 2 mm  let-in cast")
                .replace("red-gold-585", poured)
                .replace("silver-925", into);

        assertThat(verdict("let-in", text)).isEqualTo(verdict);
    }

    private static String keptInKept(String way) {
        return band(8, 3)
                + "cut a from shank { width 5 mm  depth 1.6 mm  keep broad in red-gold-585  let-in from fingertip leaving collar }\n"
                + "cut b from broad { width 2 mm  depth 0.8 mm  keep narrow in silver-925 " + way + " }\n";
    }

    @ParameterizedTest
    @CsvSource({"'', FAILED", "across 1.5 mm, PASSED"})
    void a_kept_ring_that_is_let_into_stands(String way, Verdict verdict) {
        assertThat(Bench.of("let-in", keptInKept(way)))
                .filteredOn(finding -> finding.subjects().contains("narrow"))
                .extracting(Finding::verdict)
                .containsExactly(verdict);
    }

    /** Floors of the same groove: one rises to both sides, one to the hand alone. */
    @ParameterizedTest
    @CsvSource({"'0 mm, 0 mm', 1.2, FAILED", "'1.5 mm, 0 mm', 0.01, PASSED", "'-1.5 mm, 0 mm', 0.01, FAILED"})
    void a_floor_that_rises_on_the_way_stops_the_ring(String lowest, double other, Verdict verdict) {
        double right = lowest.startsWith("1.5") ? other : 1.2;
        double left = lowest.startsWith("-") ? other : 1.2;
        String text = band(6, 3)
                + "profile v = outline { start (-1.5 mm, " + left + " mm)\n line to (" + lowest
                + ")\n line to (1.5 mm, "
                + right + " mm)\n line to (0 mm, 1.3 mm)\n line to (-1.5 mm, " + left + " mm) }\n"
                + "cut trough from shank { profile v  depth 1.2 mm  keep stripe in red-gold-585  let-in from fingertip leaving collar }";

        Finding found = one("let-in", text);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.advice()).doesNotContain("leaving collar");
    }

    @Test
    void rims_of_a_groove_right_through_are_put_on() {
        String text = band(8, 3)
                + "cut a from shank { width 3 mm  depth through  keep mid in red-gold-585  leaving lower, upper }";

        assertThat(verdict("let-in", text)).isEqualTo(Verdict.PASSED);
    }

    @Test
    void a_long_arc_goes_in_from_the_side_where_its_collar_is_off() {
        assertThat(verdict("let-in", groove("width 2 mm  around 200 deg  let-in from fingertip leaving collar")))
                .isEqualTo(Verdict.PASSED);
    }

    @Test
    void a_row_of_one_has_no_pins_for_a_seam_to_meet() {
        String text = groove("width 2 mm  let-in in halves at 9 deg")
                + "stone-row lights on stripe { stone round diamond 1.5 mm  around 60 deg  count 1  sink 0.25 mm }\n"
                + "prongs pins for lights on stripe { diameter 0.55 mm  rise 0.28 mm  root 0.5 mm  across 0.42 mm }";

        assertThat(Bench.of("seam-distance", text)).isEmpty();
    }
}
