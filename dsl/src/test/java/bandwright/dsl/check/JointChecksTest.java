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
    @CsvSource({"0.01, 1", "0.02, 0", "0.1, 0", "0.11, 1"})
    void solder_wants_a_gap(double fit, long cautions) {
        assertThat(Bench.of("solder-gap", joined("joined by solder  fit " + fit + " mm")).stream()
                        .filter(found -> found.verdict() == Verdict.CAUTION))
                .hasSize((int) cautions);
    }
}
