// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.verdict;
import static org.assertj.core.api.Assertions.assertThat;

class DetailChecksTest {
    @ParameterizedTest
    @CsvSource({"0.29, FAILED", "0.3, CLOSE", "0.34, PASSED"})
    void a_fine_line_does_not_print(double width, Verdict verdict) {
        assertThat(verdict(
                        "printable-detail",
                        band(4, 2) + "cut line from shank { width " + width + " mm  depth 0.5 mm }"))
                .isEqualTo(verdict);
    }

    @Test
    void what_is_engraved_at_the_bench_is_not_printed() {
        assertThat(Bench.of(
                        "printable-detail",
                        band(4, 2) + "cut line from shank { width 0.1 mm  depth 0.5 mm  made at bench }"))
                .isEmpty();
    }

    @Test
    void the_notch_of_a_channel_is_printed_as_its_lip_is() {
        String text = band(5, 2.6) + Bench.row("around full  count 36  sink 0.5 mm")
                + "cut slot for lights from shank { clearance 0.01 mm  channel { width 90 %  notch 0.2 mm  lip 0.3 mm"
                + "  floor 1 mm } }";

        assertThat(Bench.one("printable-detail", text).sentence()).startsWith("the notch of slot is 0.2 mm");
    }
}
