// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.measured;
import static bandwright.dsl.check.Bench.one;
import static bandwright.dsl.check.Bench.row;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class StonePlacesTest {
    /** Of the reference stone, 1.5 mm wide: 0.75 mm x tan 40.7 deg. */
    private static final double PAVILION = 0.75 * Math.tan(Math.toRadians(40.75));

    /** Pins alone: the stone's table stands 0.06 mm out of metal in which nothing is cut. */
    @Test
    void stones_in_uncut_metal_have_no_place() {
        String text = band(5, 2.2) + row("around 180 deg  spacing 0.15 mm  sink 0.2 mm")
                + "prongs pins for lights on shank { rise 0.28 mm  diameter 0.55 mm  across 0.4 mm }\n";

        Finding found = one("stone-place", text);
        assertThat(found.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(measured(found)).isCloseTo(PAVILION + 0.2, within(0.01));
        assertThat(found.sentence()).startsWith("nothing is cut for the stones of lights: they stand");
        assertThat(Bench.verdict(
                        "stone-place", text + "cut seats for lights from shank { hole 0.8 mm  clearance 0.01 mm }"))
                .isEqualTo(Verdict.PASSED);
        assertThat(Bench.verdict("stone-place", text + "limit stone-place 2 mm because \"cut by eye\""))
                .isEqualTo(Verdict.PASSED);
    }

    private static String stripe(double depth, String from) {
        return band(5, 2.5) + "cut trough from shank { width 3 mm  depth " + depth
                + " mm  keep stripe in red-gold-585  let-in in halves at 0 deg  joined by solder }\n"
                + "stone-row lights on stripe { stone round diamond 1.5 mm  around full  count 30  sink 0.2 mm }\n"
                + "cut seats for lights from " + from + " { hole 0.8 mm  clearance 0.01 mm }";
    }

    /** A culet lies its pavilion and 0.2 mm below the surface: 0.846 mm. */
    @ParameterizedTest
    @CsvSource({"0.84, FAILED", "0.85, PASSED", "0.7, FAILED"})
    void a_culet_that_reaches_below_its_part_needs_a_place_there(double depth, Verdict verdict) {
        Finding found = one("stone-place", stripe(depth, "stripe"));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(Math.max(0, PAVILION + 0.2 - depth), within(0.003));
        assertThat(Bench.verdict("stone-place", stripe(depth, "stripe, shank"))).isEqualTo(Verdict.PASSED);
    }

    @Test
    void girdles_wider_than_their_part_stand_in_its_neighbour() {
        String text = stripe(1.2, "stripe")
                .replace("width 3 mm", "width 1.6 mm")
                .replace("sink 0.2 mm", "sink 0.2 mm  across 0.1 mm");

        Finding found = one("stone-place", text);
        assertThat(found.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(found.sentence()).contains("deep in shank, from which no seats are cut for them");
    }

    /** Holes that end over the shank's floor have no edge at the finger, and leave the floor behind the row. */
    @Test
    void holes_that_do_not_come_out_at_the_finger_have_no_edge_there() {
        assertThat(Bench.of("hole-deburr", stripe(1, "stripe"))).isEmpty();
        assertThat(measured(one("behind-row", stripe(1, "stripe")))).isCloseTo(1.5, within(1e-3));
        assertThat(Bench.of("hole-deburr", stripe(1, "stripe, shank"))).hasSize(1);
        assertThat(Bench.verdict("behind-row", stripe(1, "stripe, shank"))).isEqualTo(Verdict.NOT_LOOKED_AT);
    }

    /** On an arc the groove carves the shank: the same stripe, the same depth. */
    @Test
    void a_part_that_is_carved_is_seen_too() {
        String text = stripe(0.7, "stripe")
                .replace("depth 0.7 mm", "depth 0.7 mm  around 120 deg")
                .replace("let-in in halves at 0 deg", "")
                .replace("around full  count 30", "around 60 deg  count 5");

        assertThat(measured(one("stone-place", text))).isCloseTo(PAVILION - 0.5, within(0.01));
    }
}
