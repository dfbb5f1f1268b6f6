// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import org.junit.jupiter.api.Test;

import bandwright.dsl.construct.TextRing;

import static org.assertj.core.api.Assertions.assertThat;

class EngravingTest {
    /**
     * The dome is a circle of 5 mm round a point 2 mm under the finger, so at 2 mm across, on a cylinder of no curvature, a stone's axis comes to the finger
     * at 2 x 2 / sqrt(21) = 0.873 mm, and a hole of 0.8 mm with its edge broken by 0.1 mm lies 0.5 x 5 / sqrt(21) = 0.546 mm to either side. From 1.418 mm
     * to the edge at 4 mm are 2.58 mm, less 0.4 mm at each end.
     */
    @Test
    void holes_lean_with_their_stones() {
        var ring = TextRing.of("""
                profile dome = d-shape(width: 8 mm, height: 3 mm, side: 1 mm)
                band shank { finger ISO 57  profile dome  metal silver-925 }
                stone-row r on shank { stone round diamond 1.2 mm  around full  spacing at least 0.3 mm  sink 0.1 mm  across -2 mm, 2 mm }
                cut s for r from shank { hole 0.8 mm  clearance 0.02 mm  deburr 0.1 mm }
                """);

        assertThat(Engraving.of(ring).rows()).extracting(row -> row.get(3)).containsExactly("1.7", "1.7");
    }
}
