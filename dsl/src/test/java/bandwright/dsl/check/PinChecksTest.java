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
    @CsvSource({"0.08, FAILED", "0.07, CLOSE", "0.06, PASSED"})
    void the_notch_is_a_share_of_the_pin(double reach, Verdict verdict) {
        Finding found = one(
                "pin-notch",
                pins("diameter 0.5 mm  reach " + reach + " mm") + "\nlimit pin-notch 15 % because \"thin pins\"");

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

    /** 70 to 80 % of the crown: 0.1974 to 0.2191 mm. */
    @ParameterizedTest
    @CsvSource({"0.2, at least 70 %", "0.217, at most 80 %"})
    void a_tip_is_told_against_the_limit_it_is_nearer_to(double height, String limit) {
        assertThat(one("tip-height", pins("diameter 0.55 mm  across 0.4 mm  set-height " + height + " mm"))
                        .limit())
                .isEqualTo(limit);
    }

    /** As cast the tip is 0.28 mm and half of 0.5 mm high. */
    @ParameterizedTest
    @CsvSource({"0.531, FAILED", "0.53, CLOSE", "0.52, PASSED"})
    void a_tip_as_cast_is_as_high_as_it_is_to_be_set(double height, Verdict verdict) {
        Finding found = one("tip-reached", pins("diameter 0.5 mm  across 0.4 mm  set-height " + height + " mm"));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(0.53 - height, within(1e-9));
    }

    /**
     * Pins of 0.5 mm that touch their stones and cover nothing. To 30 % of the 0.3225 mm from girdle to table, under a tip of 0.2 mm over a girdle of 0.045 mm, two strips
     * of 0.5 mm take 0.01182 mm^3: a cap of the half-sphere 0.1356 mm high, so that it is to begin at 0.0856 mm.
     */
    @ParameterizedTest
    @CsvSource({"0.08, CAUTION", "0.09, PASSED"})
    void metal_above_the_finished_tip_covers_the_stones(double rise, Verdict verdict) {
        String text = pins("diameter 0.5 mm  reach 0.0001 mm  set-height 0.2 mm")
                .replace("rise 0.28 mm", "rise " + rise + " mm");

        Finding found = one("tip-metal", text);
        double to = 0.3 * 0.3225;
        double slope = Math.tan(Math.toRadians(34));
        double wanted = 2 * 0.5 * (0.155 * (to - 1e-4) - slope / 2 * (to * to - 1e-8));
        double cap = rise + 0.25 - 0.2;
        double above = Math.PI * cap * cap * (0.75 - cap) / 3;
        assertThat(measured(found)).isCloseTo((above - wanted) / (Math.PI * 0.0625), within(1e-4));
        assertThat(found.verdict()).isEqualTo(verdict);
    }

    @Test
    void pins_that_reach_far_enough_as_cast_want_no_metal_pushed_over() {
        Finding found = one("tip-metal", pins("diameter 0.5 mm  reach 0.12 mm  set-height 0.2 mm"));

        // Shank of 0.08 mm and the half-sphere, which is two thirds as high as its radius when it is as wide as the
        // pin.
        assertThat(measured(found)).isCloseTo(0.08 + 2 * 0.25 / 3, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0.249, CAUTION", "0.25, PASSED"})
    void finished_tips_stand_over_the_surface(double height, Verdict verdict) {
        assertThat(verdict("tip-surface", pins("diameter 0.55 mm  across 0.4 mm  set-height " + height + " mm")))
                .isEqualTo(verdict);
    }

    /** 80 % of the crown over the girdle is 0.2191 mm: sunk by 0.25 mm, no tip there may be stands over the surface. */
    @Test
    void where_even_the_highest_finished_tip_lies_under_the_surface_it_is_told_unasked() {
        String text = pins("diameter 0.55 mm  across 0.4 mm");

        assertThat(one("tip-surface", text).sentence())
                .contains("dressed to 80 %")
                .contains("lie 0.031 mm under");
        assertThat(Bench.of("tip-surface", text.replace("sink 0.25 mm", "sink 0.2 mm")))
                .isEmpty();
    }

    /** On a dome the surface falls away from the row's line: by what an arc over 4 mm and 0.75 mm high does at 0.4 mm. */
    @Test
    void the_surface_is_that_beside_the_pins() {
        String text = pins("diameter 0.55 mm  across 0.4 mm  set-height 0.25 mm")
                .replaceFirst("profile.*", "profile slab = d-shape(width: 4 mm, height: 2 mm, side: 1.25 mm)");

        double radius = (4 + 0.75 * 0.75) / 1.5;
        double falls = radius - Math.sqrt(radius * radius - 0.16);
        assertThat(measured(one("tip-surface", text))).isCloseTo(falls, within(1e-3));
    }

    @Test
    void of_a_cut_whose_crown_is_not_known_the_tips_are_compared_all_the_same() {
        String text = pins("diameter 0.55 mm  reach 0.05 mm  set-height 0.6 mm")
                .replace("round diamond 1.5 mm", "princess diamond 1.5 mm by 1.5 mm");

        assertThat(verdict("tip-reached", text)).isEqualTo(Verdict.FAILED);
        assertThat(verdict("tip-surface", text)).isEqualTo(Verdict.PASSED);
        assertThat(verdict("tip-metal", text.replace("set-height 0.6 mm", "set-height 0.3 mm")))
                .isEqualTo(Verdict.NOT_LOOKED_AT);
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
    void pins_that_stand_free_hold_nothing() {
        String text = band(2, 2)
                + "stone-row lights on shank { stone round diamond 1.9 mm  around full  count 2  sink 0.2 mm }\n"
                + "prongs pins for lights on shank { diameter 0.5 mm  rise 0.3 mm  across 4 mm }";

        Finding found = Bench.one("row-held", text);

        assertThat(found.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(found.sentence()).isEqualTo("what is to hold lights holds nothing: 4 of pins stand free of shank");
        assertThat(found.advice()).contains("root");
        assertThat(verdict("row-held", text.replace("across 4 mm", "across 0.5 mm")))
                .isEqualTo(Verdict.PASSED);
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

    /** On the row's line, seen along a stone's axis, there are 2 (R sin (360 deg / 84) - 0.75 mm) = 0.147 mm between two neighbours: both notch one pin. */
    @ParameterizedTest
    @CsvSource({"0.29, CLOSE", "0.3, FAILED", "1, FAILED"})
    void a_pin_that_two_stones_share_is_notched_twice(double diameter, Verdict verdict) {
        String text = band(5, 2.2) + row("around full  count 42  sink 0.25 mm")
                + "prongs pins for lights on shank { rise 0.28 mm  diameter " + diameter + " mm  per-gap 1 }";
        double between = 2 * ((57 / (2 * Math.PI) + 1.95) * Math.sin(Math.PI / 42) - 0.75);

        Finding found = one("pin-notch", text);
        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo((diameter - between) / diameter, within(2e-3));
        assertThat(found.advice()).startsWith("Both neighbours notch one pin");
    }

    /** From girdle to table it is 0.3225 mm, half of that 0.161 mm. */
    @ParameterizedTest
    @CsvSource({"0.16, PASSED", "0.163, CAUTION"})
    void pins_do_not_hide_their_stones(double reach, Verdict verdict) {
        assertThat(verdict("pin-reach-most", pins("diameter 0.55 mm  reach " + reach + " mm")))
                .isEqualTo(verdict);
    }

    /** The smallest stone of a parcel within 0.1 mm is 0.05 mm narrower on each side, the largest as much wider. */
    @Test
    void pins_reach_the_smallest_stone_of_the_parcel_and_are_notched_for_the_largest() {
        String text = pins("diameter 0.5 mm  reach 0.03 mm").replace("1.5 mm ", "1.5 mm within 0.1 mm ");

        Finding contact = one("pin-contact", text);
        assertThat(contact.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(measured(contact)).isCloseTo(-0.02, within(1e-6));
        assertThat(measured(one("pin-notch", text))).isCloseTo(0.08 / 0.5, within(1e-6));
        assertThat(verdict("pin-contact", text.replace("reach 0.03 mm", "reach 0.05 mm")))
                .isEqualTo(Verdict.CLOSE);
    }
}
