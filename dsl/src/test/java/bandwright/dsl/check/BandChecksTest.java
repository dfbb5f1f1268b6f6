// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.Objects;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.measured;
import static bandwright.dsl.check.Bench.one;
import static bandwright.dsl.check.Bench.verdict;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class BandChecksTest {
    @ParameterizedTest
    @CsvSource({"1.19, FAILED", "1.2, CLOSE", "1.31, CLOSE", "1.33, PASSED"})
    void a_thin_band_wears_through(double height, Verdict verdict) {
        assertThat(verdict("wear-thickness", band(4, height))).isEqualTo(verdict);
    }

    @Test
    void a_groove_leaves_less_to_wear() {
        String text = band(4, 2) + "cut line from shank { width 1 mm  depth 0.9 mm  across 0.5 mm }";

        Finding found = one("wear-thickness", text);

        assertThat(found.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(measured(found)).isCloseTo(1.1, within(1e-6));
        assertThat(Objects.requireNonNull(found.place()).acrossMm()).isCloseTo(0.5, within(1e-6));
    }

    private static double worn(String profile, String rest) {
        String text = "profile form = " + profile + "\nband shank { finger ISO 57  profile form  metal silver-925 }\n";
        return measured(one("wear-thickness", text + rest));
    }

    /** Straight out from the finger a kept stripe and the floor that it lies on are worn as one, and are named as one. */
    @Test
    void a_kept_stripe_and_its_floor_are_worn_together() {
        Finding found = one(
                "wear-thickness",
                band(5, 1.1)
                        + "cut trough from shank { width 2 mm  depth 0.5 mm  keep stripe in red-gold-585  joined by solder }");

        assertThat(measured(found)).isCloseTo(1.1, within(1e-6));
        assertThat(found.subjects()).containsExactly("shank", "stripe");
        assertThat(found.sentence()).startsWith("shank, stripe together have 1.1 mm of metal to wear down");
    }

    /** A circle's arc over 4 mm that rises 0.65 mm: its radius is 3.402 mm, and 1 mm off the middle it has lost 0.15 mm. */
    @Test
    void a_domed_band_is_measured_where_it_rests_on_the_finger() {
        double radius = (2 * 2 + 0.65 * 0.65) / (2 * 0.65);
        double lost = radius - Math.sqrt(radius * radius - 1);

        assertThat(worn("d-shape(width: 4 mm, height: 1.9 mm, side: 1.25 mm)", ""))
                .isCloseTo(1.9 - lost, within(0.004));
        assertThat(worn(
                        "flat(width: 6 mm, height: 3 mm)",
                        "cut line from shank { width 0.8 mm  depth 1 mm  across 2.2 mm }"))
                .as("a groove near the side counts")
                .isCloseTo(2, within(1e-6));
    }

    @Test
    void the_least_thickness_over_the_middle_and_its_grooves_is_worn() {
        // A hollow outside: its middle lies 0.9 mm below its edges.
        assertThat(worn("concave(width: 5 mm, height: 1.7 mm, dip: 0.9 mm)", ""))
                .isCloseTo(0.8, within(1e-3));
        // Grooves outside and inside that meet off their middles.
        assertThat(worn(
                        "flat(width: 6 mm, height: 3 mm)",
                        "cut out from shank { width 2 mm  depth 1 mm }\n"
                                + "cut inn from shank { width 2 mm  depth 1.5 mm  across 1.5 mm  inside }"))
                .isCloseTo(0.5, within(1e-6));
    }

    /** A circle's arc of radius 2.5625 mm, its middle 0.5625 mm below the finger, runs out to nothing: a quarter of the width off the middle it is 1.674 mm high. */
    @Test
    void a_form_that_runs_out_to_nothing_is_measured_where_it_rests() {
        assertThat(worn("half-round(width: 5 mm, height: 2 mm)", "")).isCloseTo(1.674, within(0.004));
    }

    /** Beyond 45 degrees thickness is not what lies straight outwards. */
    @Test
    void steep_flanks_are_no_thin_places() {
        assertThat(worn("knife-edge(width: 3 mm, height: 3.6 mm, side: 1.2 mm)", ""))
                .as("all of it slopes more than 45 degrees: the lowest station stands for it")
                .isCloseTo(3.6, within(1e-6));
    }

    /** A V of 1 mm that is 1.8 mm deep, cut to different depths: however steep its flanks, at its bottom there is what is left. */
    @ParameterizedTest
    @CsvSource({"1.85, 0.05", "0.69, 1.21"})
    void a_steep_groove_is_measured_at_its_bottom(double depth, double left) {
        assertThat(worn(
                        "flat(width: 4 mm, height: 1.9 mm, edge: 0.2 mm)",
                        "profile vee = outline { start (-0.5 mm, 1.8 mm)  line to (0 mm, 0 mm)  line to (0.5 mm, 1.8 mm) }\n"
                                + "cut v from shank { profile vee  depth " + depth + " mm }"))
                .isCloseTo(left, within(1e-4));
    }

    /** A groove over the rounded edge of a band: the edge itself is no thin place. */
    @Test
    void the_edge_of_the_band_is_none_of_its_groove() {
        assertThat(worn(
                        "half-round(width: 5 mm, height: 2 mm)",
                        "cut line from shank { width 0.6 mm  depth 0.05 mm  across 2.3 mm }"))
                .isGreaterThan(0.5);
    }

    /** On an arc a groove leaves what it leaves all round, and is told where it is. */
    @Test
    void a_groove_on_an_arc_is_as_deep_as_one_all_round() {
        String form = "d-shape(width: 5 mm, height: 1.9 mm, side: 1 mm)";
        String groove = "cut line from shank { width 1 mm  depth 0.6 mm  across 1.9 mm ";
        Finding found = one(
                "wear-thickness",
                "profile form = " + form + "\nband shank { finger ISO 57  profile form  metal silver-925 }\n" + groove
                        + "around 120 deg centred 180 deg }");

        assertThat(measured(found)).isCloseTo(worn(form, groove + "}"), within(0.003));
        assertThat(Objects.requireNonNull(found.place()).aroundDegrees()).isCloseTo(180, within(1e-6));
    }

    /** Outside and inside, 1 mm deep each in a band of 2.6 mm: they take from one place only where both are. */
    @ParameterizedTest
    @CsvSource({"270, 1.6", "120, 0.6"})
    void grooves_on_arcs_add_up_where_they_lie_over_each_other(double centred, double left) {
        assertThat(worn(
                        "flat(width: 5 mm, height: 2.6 mm)",
                        "cut out from shank { width 1 mm  depth 1 mm  around 40 deg centred 90 deg }\n"
                                + "cut inn from shank { width 1 mm  depth 1 mm  inside  around 40 deg centred "
                                + centred
                                + " deg }"))
                .isCloseTo(left, within(0.003));
    }

    @Test
    void a_profile_without_outer_corners_has_no_edge() {
        assertThat(Bench.of(
                        "edge-angle",
                        "profile form = half-round(width: 5 mm, height: 2 mm)\n"
                                + "band shank { finger ISO 57  profile form  metal silver-925 }"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rectangle(width: 4 mm, height: 2 mm)|CAUTION",
                "rectangle(width: 4 mm, height: 2 mm, edge: 0.3 mm)|PASSED",
                "knife-edge(width: 4 mm, height: 3.5 mm, side: 1 mm)|CAUTION",
                "d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)|PASSED",
            })
    void sharp_outer_edges_are_a_caution(String form, Verdict verdict) {
        String text = "profile form = " + form + "\nband shank { finger ISO 57  profile form  metal silver-925 }";

        assertThat(verdict("edge-angle", text)).isEqualTo(verdict);
    }

    /** Curves that run into one another make no corner: 180 deg, to the last digit. */
    @Test
    void rounded_edges_are_straight() {
        String text = "profile form = rectangle(width: 4 mm, height: 2 mm, edge: 0.3 mm)\n"
                + "band shank { finger ISO 57  profile form  metal silver-925 }";

        assertThat(measured(one("edge-angle", text))).isEqualTo(180);
    }

    /** The inner curve has risen 0.35 mm where it meets the side, a fifth of the height, at an angle of less than 100 deg: it still lies at the finger. */
    @Test
    void an_inner_curve_at_the_side_is_no_outer_edge() {
        String text = """
                profile form = outline {
                  start (-2 mm, 0.35 mm)
                  arc through (0 mm, 0 mm) to (2 mm, 0.35 mm)
                  line to (2 mm, 1 mm)
                  arc through (0 mm, 1.7 mm) to (-2 mm, 1 mm)
                  line to (-2 mm, 0.35 mm)
                }
                band shank { finger ISO 57  profile form  metal silver-925 }""";
        double rise = 2 * Math.atan(0.7 / 2);

        assertThat(measured(one("edge-angle", text))).isCloseTo(90 + Math.toDegrees(rise), within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4.99|ISO 57|PASSED",
                "5|ISO 57|CAUTION",
                "5|ISO 57 allow 1/4 US|CAUTION",
                "5|ISO 57 allow 1/2 US|PASSED",
                "9|US 7 allow 1/2|PASSED",
            })
    void a_wide_band_is_made_larger(double width, String finger, Verdict verdict) {
        assertThat(verdict("wide-band", band(width, 2).replace("ISO 57", finger)))
                .isEqualTo(verdict);
    }

    @Test
    void the_rival_rule_for_wide_bands_is_at_hand() {
        Finding found = one("wide-band", band(6, 2).replace("ISO 57", "ISO 57 allow 1/4 US"));

        Limit rule = Objects.requireNonNull(found.rule());
        assertThat(rule.otherwise(Objects.requireNonNull(found.measured()))).hasSize(1);
    }

    /** The standard stick goes from 41 to 76 mm; US 16 is 77.4 mm, US 17 1/2 81.2 mm, US 2 41.65 mm. */
    @ParameterizedTest
    @CsvSource({
        "ISO 40.9, CAUTION",
        "ISO 41, PASSED",
        "ISO 76, PASSED",
        "ISO 76.1, CAUTION",
        "US 17 1/2, CAUTION",
        "US 2, PASSED"
    })
    void a_finger_that_hardly_a_hand_has_is_a_caution(String size, Verdict verdict) {
        String text = Bench.band(4, 2).replace("ISO 57", size);

        assertThat(Bench.verdict("finger-size", text)).isEqualTo(verdict);
    }

    /** A rounding of a micrometre is a corner all the same. */
    @ParameterizedTest
    @CsvSource({"0.001, CAUTION", "0.049, CAUTION", "0.05, PASSED", "0.2, PASSED"})
    void a_rounding_that_is_not_felt_is_none(double edge, Verdict verdict) {
        String text = "profile form = flat(width: 4 mm, height: 1.9 mm, edge: " + edge + " mm)\n"
                + "band shank { finger ISO 57  profile form  metal silver-925 }";

        assertThat(verdict("edge-angle", text)).isEqualTo(verdict);
    }
}
