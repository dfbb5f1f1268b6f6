// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import org.junit.jupiter.api.Test;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.measured;
import static bandwright.dsl.check.Bench.one;
import static bandwright.dsl.check.Bench.verdict;
import static org.assertj.core.api.Assertions.assertThat;

class PieceChecksTest {
    @Test
    void pins_that_stand_free_are_pieces_too_many() {
        String text = band(2, 2)
                + "stone-row lights on shank { stone round diamond 1.9 mm  around full  count 2  sink 0.2 mm }\n"
                + "prongs pins for lights on shank { diameter 0.5 mm  rise 0.3 mm  across 4 mm }";

        Finding found = one("loose-pieces", text);

        assertThat(found.verdict()).isEqualTo(Verdict.FAILED);
        assertThat(measured(found)).isEqualTo(5);
        assertThat(verdict("loose-pieces", band(2, 2))).isEqualTo(Verdict.PASSED);
    }
}
