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

class StoneChecksTest {
    private static String spaced(double gap) {
        return band(4, 2) + row("around 180 deg  spacing " + gap + " mm  sink 0.2 mm");
    }

    @ParameterizedTest
    @CsvSource({"0.049, FAILED", "0.0505, CLOSE", "0.065, PASSED"})
    void girdles_need_room(double gap, Verdict verdict) {
        Finding found = one("stone-gap", spaced(gap));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(gap, within(1e-6));
    }

    /** On the flanks of a steep ridge the pavilions meet below the girdles: the stones lean by more than 49 deg. */
    @Test
    void culets_that_meet_inside_the_metal_are_found() {
        String ridge = """
                profile ridge = knife-edge(width: 4 mm, height: 4 mm, side: 1 mm)
                band shank { finger ISO 57  profile ridge  metal silver-925 }
                stone-row lights on shank { stone round diamond 1.5 mm  around full  count 24  across %s }
                """;

        String meeting = String.format(java.util.Locale.ROOT, ridge, "-0.5 mm, 0.5 mm");
        assertThat(verdict("pavilion-gap", meeting)).isEqualTo(Verdict.FAILED);
        assertThat(verdict("pavilion-gap", String.format(java.util.Locale.ROOT, ridge, "-0.9 mm, 0.9 mm")))
                .isEqualTo(Verdict.PASSED);
    }

    /** The lower of two lines of a domed band has the smaller gaps, whichever is named first. */
    @ParameterizedTest
    @CsvSource({"'0 mm, 2.2 mm'", "'2.2 mm, 0 mm'"})
    void the_smallest_gap_is_looked_for_on_all_lines(String across) {
        String text = "profile form = d-shape(width: 8 mm, height: 3 mm, side: 1.2 mm)\n"
                + "band shank { finger ISO 57  profile form  metal silver-925 }\n"
                + Bench.row("around full  spacing at least 0.06 mm  sink 0.1 mm  across " + across);

        for (String check : java.util.List.of("stone-gap", "pavilion-gap")) {
            assertThat(java.util.Objects.requireNonNull(Bench.one(check, text).place())
                            .acrossMm())
                    .isGreaterThan(1.9);
        }
    }

    @Test
    void two_lines_in_one_place_are_told_as_such() {
        String text = Bench.band(5, 2.2) + Bench.row("around full  count 30  sink 0.2 mm  across 0 mm, 0 mm");

        assertThat(Bench.one("stone-gap", text).sentence())
                .isEqualTo("two lines of lights are one: their stones stand in the same places");
    }
}
