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

class ChannelLipsTest {
    private static String channel(double width, double sink) {
        return band(width, 2.6) + row("around full  count 36  sink " + sink + " mm")
                + "cut slot for lights from shank { clearance 0.01 mm  channel { width 90 %  notch 0.15 mm  lip 0.05 mm"
                + "  floor 1 mm } }";
    }

    /** Girdle and crown of a stone of 1.5 mm are 0.2626 mm high. */
    @ParameterizedTest
    @CsvSource({"0.51, PASSED", "0.52, CAUTION"})
    void a_table_far_under_the_surface_is_a_caution(double sink, Verdict verdict) {
        Finding found = one("channel-table", channel(4, sink));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(sink - 0.2626, within(1e-3));
    }

    /** The girdle is 0.045 mm thick. */
    @ParameterizedTest
    @CsvSource({"0.54, PASSED", "0.55, CAUTION"})
    void high_walls_are_a_caution(double sink, Verdict verdict) {
        Finding found = one("channel-lip-height", channel(4, sink));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(sink - 0.045, within(1e-3));
    }

    /** Half the band less half the slot of 1.35 mm. */
    @ParameterizedTest
    @CsvSource({"3.74, PASSED", "3.76, CAUTION"})
    void thick_walls_are_a_caution(double width, Verdict verdict) {
        Finding found = one("channel-lip-thickness", channel(width, 0.5));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(width / 2 - 0.675, within(1e-3));
    }

    /** Between two lines, 2.2 mm apart and each reaching 0.825 mm, the slots leave less than the sides do: 2.5 mm less 1.1 mm and 0.675 mm. */
    @Test
    void what_another_line_takes_is_not_pressed_over() {
        String text = channel(5, 0.5).replace("sink 0.5 mm", "sink 0.5 mm  across -1.1 mm, 1.1 mm");

        assertThat(measured(one("channel-lip-thickness", text))).isCloseTo(2.5 - 1.1 - 0.675, within(2e-3));
    }
}
