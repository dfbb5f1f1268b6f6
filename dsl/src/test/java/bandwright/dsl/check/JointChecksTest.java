// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.verdict;
import static org.assertj.core.api.Assertions.assertThat;

class JointChecksTest {
    private static String joined(String rest) {
        return band(5, 2) + "cut trough from shank { width 2 mm  depth 1 mm  keep stripe in red-gold-585  "
                + "let-in from fingertip leaving collar  " + rest + " }";
    }

    @Test
    void something_holds_a_kept_ring() {
        assertThat(verdict("joint", joined(""))).isEqualTo(Verdict.CAUTION);
        assertThat(verdict("joint", joined("joined by press"))).isEqualTo(Verdict.PASSED);
    }

    @ParameterizedTest
    @CsvSource({"0.01, CAUTION", "0.02, PASSED", "0.1, PASSED", "0.11, CAUTION"})
    void solder_wants_a_gap(double fit, Verdict verdict) {
        assertThat(verdict("solder-gap", joined("joined by solder  fit " + fit + " mm")))
                .isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"'', CAUTION", "fit 0.019 mm, CAUTION", "fit 0.02 mm, PASSED", "joined by solder, CAUTION"})
    void a_ring_that_slides_in_wants_room(String rest, Verdict verdict) {
        assertThat(verdict("let-in-room", joined(rest))).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({
        "titanium-grade-5, solder, FAILED",
        "stainless-steel-316l, solder, CAUTION",
        "titanium-grade-5, weld, CAUTION",
    })
    void what_no_torch_joins_is_not_soldered(String metal, String joint, Verdict verdict) {
        String text = joined("joined by " + joint + "  fit 0.05 mm").replace("silver-925", metal);

        assertThat(verdict("joint-metal", text)).isEqualTo(verdict);
    }

    @Test
    void gold_in_silver_may_be_soldered_and_titanium_pressed() {
        assertThat(Bench.of("joint-metal", joined("joined by solder"))).isEmpty();
        assertThat(Bench.of("joint-metal", joined("joined by press").replace("silver-925", "titanium-grade-5")))
                .isEmpty();
    }

    /** Titanium is turned: no caster's limit holds it. */
    @Test
    void a_turned_metal_has_no_wall_as_cast() {
        String text = band(5, 2).replace("silver-925", "titanium-grade-5");

        assertThat(Bench.of("casting-wall", text)).isEmpty();
        assertThat(verdict("bench-wall", text)).isEqualTo(Verdict.PASSED);
    }

    /** A press wants no air, and holds no collar. */
    @Test
    void what_is_pressed_in_wants_no_room_and_its_collar_a_joint() {
        assertThat(verdict("press-fit", joined("joined by press"))).isEqualTo(Verdict.PASSED);
        assertThat(verdict("press-fit", joined("joined by press  fit 0.01 mm"))).isEqualTo(Verdict.FAILED);
        assertThat(verdict("joint-collar", joined("joined by press"))).isEqualTo(Verdict.CAUTION);
        assertThat(Bench.of("joint-collar", joined("joined by solder"))).isEmpty();
    }

    /** A press fit is meant to be tight; halves are laid in. */
    @ParameterizedTest
    @CsvSource({"joined by press, let-in from fingertip leaving collar", "joined by weld, let-in in halves at 90 deg"})
    void what_does_not_slide_wants_none(String joint, String way) {
        assertThat(Bench.of("let-in-room", joined(joint).replace("let-in from fingertip leaving collar", way)))
                .isEmpty();
    }
}
