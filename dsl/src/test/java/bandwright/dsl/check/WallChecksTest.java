// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.Objects;

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

class WallChecksTest {
    @ParameterizedTest
    @CsvSource({"0.59, FAILED", "0.61, CLOSE", "0.67, PASSED"})
    void a_band_is_held_against_what_a_caster_wants(double height, Verdict verdict) {
        assertThat(verdict("casting-wall", band(4, height))).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"0.79, FAILED", "0.81, CLOSE", "0.9, PASSED"})
    void platinum_wants_more(double height, Verdict verdict) {
        assertThat(verdict("casting-wall", band(4, height).replace("silver-925", "platinum-950-ru")))
                .isEqualTo(verdict);
    }

    @Test
    void a_thin_place_is_told_with_its_place() {
        String text = band(5, 2) + "cut line from shank { width 0.5 mm  depth 1.6 mm  across 1 mm }";

        Finding found = one("casting-wall", text);

        assertThat(measured(found)).isCloseTo(0.4, within(0.003));
        RingPlace place = Objects.requireNonNull(found.place());
        assertThat(place.acrossMm()).isBetween(0.75, 1.25);
        assertThat(place.outMm()).isBetween(0.1, 0.3);
    }

    /** A pin is no wall, and the skin between two bores has a check of its own. */
    @Test
    void pins_and_bores_are_left_to_their_own_checks() {
        String text = band(5, 2) + row("around full  count 36  sink 0.3 mm")
                + "prongs pins for lights on shank { diameter 0.4 mm  rise 0.3 mm  across 0.4 mm }\n";

        assertThat(measured(one("casting-wall", text))).isCloseTo(2, within(0.005));
        assertThat(measured(one(
                        "casting-wall", text + "cut seats for lights from shank { hole 0.6 mm  clearance 0.02 mm }")))
                .isGreaterThan(0.6);
    }

    @Test
    void what_is_cut_at_the_bench_is_not_cast_but_looked_at_as_finished() {
        String text = band(5, 2) + "cut line from shank { width 0.5 mm  depth 1.6 mm  made at bench }";

        assertThat(measured(one("casting-wall", text))).isCloseTo(2, within(0.003));
        assertThat(measured(one("bench-wall", text))).isCloseTo(0.4, within(0.003));
        assertThat(Bench.of("bench-wall", text.replace("at bench", "in pattern")))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0.49, FAILED", "0.51, CLOSE", "0.6, PASSED"})
    void a_part_that_only_the_bench_makes_has_walls_too(double depth, Verdict verdict) {
        Finding found = Bench.of(
                        "bench-wall",
                        band(5, 2.5) + "cut trough from shank { width 2 mm  depth " + depth
                                + " mm  keep stripe in red-gold-585  made at bench  let-in cast }")
                .stream()
                .filter(each -> each.subjects().contains("stripe"))
                .findFirst()
                .orElseThrow();

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(depth, within(0.003));
    }

    /** Inside and dome meet in two sharp edges, so that nothing bounds the search for a wall: it ends all the same, and says so. */
    @Test
    void a_part_that_runs_out_to_nothing_has_no_wall_to_look_at() {
        Finding found = Bench.one(
                "casting-wall",
                "profile dome = half-round(width: 5 mm, height: 0.9 mm)\n"
                        + "band shank { finger US 7  profile dome  metal white-gold-585-pd }");

        assertThat(found.verdict()).isEqualTo(Verdict.NOT_LOOKED_AT);
        assertThat(found.sentence()).contains("meet in sharp edges");
    }

    /** Lips are meant to be thin. A channel all round is cut from the section, one on an arc from the body: both leave its floor. */
    @ParameterizedTest
    @CsvSource({"full", "120 deg"})
    void lips_are_no_walls(String around) {
        String text = "profile slim = flat(width: 4.6 mm, height: 2.8 mm, edge: 0.2 mm)\n"
                + "band shank { finger ISO 56  profile slim  metal white-gold-585-pd }\n"
                + "stone-row one on shank { stone round diamond 2 mm  around " + around
                + "  spacing 0.15 mm  sink 0.6 mm }\n"
                + "cut slot for one from shank { channel { width 90 %  notch 0.2 mm  lip 0.3 mm  floor 1 mm }"
                + "  clearance 0.02 mm }";

        assertThat(measured(one("casting-wall", text))).isCloseTo(1, within(0.003));
    }
}
