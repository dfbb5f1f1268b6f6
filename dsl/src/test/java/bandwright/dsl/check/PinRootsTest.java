// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.measured;
import static bandwright.dsl.check.Bench.one;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class PinRootsTest {
    private static String pins(double across, double root) {
        return band(5, 2.5) + "cut trough from shank { width 2 mm  depth 1.2 mm  keep stripe in red-gold-585"
                + "  let-in in halves at 0 deg  joined by solder }\n"
                + "stone-row lights on stripe { stone round diamond 1.5 mm  around full  count 38  sink 0.2 mm }\n"
                + "cut seats for lights from stripe, shank { hole 0.8 mm  clearance 0.01 mm }\n"
                + "prongs pins for lights on stripe { diameter 0.6 mm  rise 0.3 mm  root " + root + " mm  across "
                + across + " mm }";
    }

    /** Across and half of 0.6 mm against half of 2 mm. */
    @ParameterizedTest
    @CsvSource({"0.65, PASSED", "0.7, PASSED", "0.705, FAILED", "0.8, FAILED"})
    void a_root_beside_its_part_stands_in_the_neighbour(double across, Verdict verdict) {
        Finding found = one("pin-root", pins(across, 0.6));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(Math.max(0, across - 0.7), within(1e-3));
    }

    /** The girdles lie 0.2 mm below the surface, the floor 1.2 mm: a root of 1 mm stands on it. */
    @ParameterizedTest
    @CsvSource({"1, PASSED", "1.01, FAILED"})
    void a_root_through_the_floor_stands_in_what_is_below(double root, Verdict verdict) {
        Finding found = one("pin-root", pins(0.5, root));

        assertThat(found.verdict()).isEqualTo(verdict);
    }

    @Test
    void a_pin_in_a_band_of_one_part_has_no_neighbour() {
        String text = band(5, 2.5) + Bench.row("around full  count 38  sink 0.2 mm")
                + "prongs pins for lights on shank { diameter 0.6 mm  rise 0.3 mm  root 0.6 mm  across 0.5 mm }";

        assertThat(Bench.of("pin-root", text)).isEmpty();
    }
}
