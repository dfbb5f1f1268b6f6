// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import bandwright.dsl.quantity.Quantity;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.measured;
import static bandwright.dsl.check.Bench.one;
import static bandwright.dsl.check.Bench.row;
import static bandwright.dsl.check.Bench.verdict;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class PinChecksTest {
    private static String pins(String pins) {
        return band(5, 2.2) + row("around 180 deg  spacing 0.15 mm  sink 0.25 mm")
                + "prongs pins for lights on shank { rise 0.28 mm  " + pins + " }";
    }

    @ParameterizedTest
    @CsvSource({"0.52, FAILED", "0.53, CLOSE", "0.6, PASSED"})
    void pins_are_as_thick_as_their_stones_want(double diameter, Verdict verdict) {
        assertThat(verdict("pin-diameter", pins("across 0.4 mm  diameter " + diameter + " mm")))
                .isEqualTo(verdict);
    }

    /** Half-way between stones of 1.5 mm, 0.15 mm apart, a pin of 0.5 mm touches them at 0.565 mm across. */
    @ParameterizedTest
    @CsvSource({"0.57, FAILED", "0.56, CLOSE", "0.5, PASSED"})
    void pins_touch_their_stones(double across, Verdict verdict) {
        assertThat(verdict("pin-contact", pins("diameter 0.5 mm  across " + across + " mm")))
                .isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"0.16, FAILED", "0.14, CLOSE", "0.12, PASSED"})
    void the_notch_is_a_share_of_the_pin(double reach, Verdict verdict) {
        Finding found = one(
                "pin-notch",
                pins("diameter 0.5 mm  reach " + reach + " mm") + "\nlimit pin-notch 30 % because \"thin pins\"");

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.source()).isEqualTo(Finding.OWN);
        assertThat(measured(found)).isCloseTo(reach / 0.5, within(1e-3));
    }

    /** From girdle to table it is 0.215 x 1.5 mm = 0.3225 mm. */
    @ParameterizedTest
    @CsvSource({"0.095, CAUTION", "0.1, PASSED"})
    void pins_reach_over_the_crown(double reach, Verdict verdict) {
        assertThat(verdict("pin-reach", pins("diameter 0.5 mm  reach " + reach + " mm")))
                .isEqualTo(verdict);
    }

    /** Crown 0.2176 mm over a girdle of 0.045 mm. */
    @ParameterizedTest
    @CsvSource({"0.19, 1", "0.2, 0", "0.217, 0", "0.225, 1"})
    void finished_tips_are_neither_low_nor_high(double height, int failed) {
        assertThat(
                        Bench.of("tip-height", pins("diameter 0.55 mm  across 0.4 mm  set-height " + height + " mm"))
                                .stream()
                                .filter(Finding::failed))
                .hasSize(failed);
    }

    @Test
    void a_tip_nobody_tells_of_is_not_looked_at() {
        assertThat(Bench.of("tip-height", pins("diameter 0.55 mm  across 0.4 mm")))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.NOT_LOOKED_AT);
    }

    /** As cast the tip is rise and half the diameter less the girdle of 0.045 mm; 70 % of the crown of 0.2176 mm is 0.1523 mm. */
    @ParameterizedTest
    @CsvSource({"0.18, FAILED", "0.2, NOT_LOOKED_AT"})
    void pins_too_short_for_their_tips_fail_whatever_the_setter_makes_of_them(double tip, Verdict verdict) {
        String text = pins("diameter 0.1 mm  across 0.4 mm").replace("rise 0.28 mm", "rise " + (tip - 0.05) + " mm");

        assertThat(verdict("tip-height", text)).isEqualTo(verdict);
    }

    /** Stones of 1.5 mm at an angle of 18 degrees, 10 or 11 mm out, are more than 1.5 mm apart. */
    @Test
    void pins_that_no_stone_is_near_to_have_no_notch_and_say_what_helps() {
        String text = band(5, 2.2) + row("around full  count 20  sink 0.25 mm")
                + "prongs pins for lights on shank { rise 0.28 mm  diameter 0.55 mm  across 0.42 mm }";

        Finding contact = one("pin-contact", text);
        // Half-way between two upright stones, seen along the axis of either: R sin 9 deg - 0.75 mm from its girdle,
        // twice.
        double radius = 57 / (2 * Math.PI) + 2.2 - 0.25;
        double gap = 2 * (radius * Math.sin(Math.PI / 20) - 0.75);
        assertThat(contact.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(contact.sentence())
                .startsWith("the stones stand too far apart for pins: their girdles are " + Quantity.millimetres(gap)
                        + " from each other");
        assertThat(contact.advice()).contains("less than 0.55 mm is left between them");
        assertThat(verdict("pin-notch", text)).isEqualTo(Verdict.NOT_LOOKED_AT);
        assertThat(verdict("pin-reach", text)).isEqualTo(Verdict.NOT_LOOKED_AT);
    }

    /** As above: pins of 0.5 mm touch up to 0.565 mm across. */
    @Test
    void pins_too_far_to_the_side_are_told_how_far_they_may_stand() {
        Finding contact = one("pin-contact", pins("diameter 0.5 mm  across 0.7 mm"));

        assertThat(contact.sentence()).contains("they stand 0.7 mm off the row's line, and touch up to 0.56 mm");
        assertThat(contact.advice()).startsWith("Make across at most 0.56 mm");
        assertThat(verdict("pin-contact", pins("diameter 0.5 mm  across 0.56 mm")))
                .isNotEqualTo(Verdict.FAILED);
    }

    private static String twoLines(double across) {
        return band(6, 2.2)
                + row("around full  count 34  sink 0.25 mm  staggered  across " + -across + " mm, " + across + " mm")
                + "prongs pins for lights on shank { diameter 0.5 mm  rise 0.28 mm  across 0.42 mm }";
    }

    /** A pin stands at across - 0.42 mm; the staggered stone beside it is 0.75 mm wide: they touch where 2 x across = 1.42 mm. */
    @ParameterizedTest
    @CsvSource({"0.7, FAILED", "0.712, CLOSE", "0.75, PASSED"})
    void pins_keep_out_of_other_stones_places(double across, Verdict verdict) {
        assertThat(verdict("pin-clearance", twoLines(across))).isEqualTo(verdict);
    }

    @Test
    void a_row_needs_something_that_holds_it() {
        String bare = band(5, 2) + row("around full  count 30  sink 0.2 mm");

        assertThat(verdict("row-held", bare)).isEqualTo(Verdict.FAILED);
        assertThat(verdict("row-held", bare + "limit row-held 0 because \"bead set\""))
                .isEqualTo(Verdict.PASSED);
        assertThat(verdict("row-held", pins("diameter 0.5 mm  across 0.4 mm"))).isEqualTo(Verdict.PASSED);
    }

    @Test
    void a_row_of_one_has_no_pins_to_hold_it() {
        String text = pins("diameter 0.5 mm  across 0.4 mm").replace("spacing 0.15 mm", "count 1");

        assertThat(verdict("row-held", text)).isEqualTo(Verdict.FAILED);
    }

    @Test
    void the_ends_of_an_arc_are_held_on_one_side() {
        String arc = pins("diameter 0.5 mm  across 0.4 mm");

        assertThat(verdict("row-ends", arc)).isEqualTo(Verdict.CAUTION);
        assertThat(Bench.of(
                        "row-ends",
                        arc.replace("around 180 deg", "around full").replace("spacing 0.15 mm", "count 30")))
                .isEmpty();
    }
}
