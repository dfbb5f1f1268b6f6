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
    @CsvSource({
        "let-in from fingertip leaving collar",
        "let-in from hand leaving collar",
        "let-in in halves at 9 deg",
        "let-in cast"
    })
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
}
