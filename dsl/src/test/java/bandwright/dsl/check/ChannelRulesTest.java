// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.Objects;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.measured;
import static bandwright.dsl.check.Bench.one;
import static bandwright.dsl.check.Bench.row;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class ChannelRulesTest {
    private static String channel(double width, String share) {
        return band(width, 2.6) + row("around full  count 36  sink 0.5 mm")
                + "cut slot for lights from shank { clearance 0.01 mm  channel { width " + share
                + "  lip 0.3 mm  floor 1 mm } }";
    }

    @ParameterizedTest
    @CsvSource({"96 %, 1", "94 %, 0", "81 %, 0", "79 %, 1"})
    void a_channel_is_narrower_than_its_stones_and_not_too_narrow(String share, int failed) {
        assertThat(Bench.of("channel-width", channel(5, share + "  notch 0.2 mm")).stream()
                        .filter(Finding::failed))
                .hasSize(failed);
    }

    @Test
    void rival_rules_stand_beside_each_other() {
        Finding found =
                Bench.of("channel-width", channel(5, "90 %  notch 0.1 mm")).get(0);

        assertThat(Objects.requireNonNull(found.rule()).rivals()).hasSize(3);
    }

    /** Of a parcel of 1.5 mm within 0.03 mm, the largest reaches 0.09 mm into each wall of a slot of 1.35 mm. */
    @ParameterizedTest
    @CsvSource({"0.085, FAILED", "0.09, PASSED"})
    void the_largest_girdle_finds_room_in_its_notch(double notch, Verdict verdict) {
        String text =
                channel(5, "90 %  notch " + notch + " mm").replace("diamond 1.5 mm", "diamond 1.5 mm within 0.03 mm");

        assertThat(Bench.verdict("channel-notch", text)).isEqualTo(verdict);
    }

    /** Half the band less half the slot and the notch: width / 2 - 0.675 mm - 0.1 mm. */
    @ParameterizedTest
    @CsvSource({"2.73, FAILED", "2.77, CLOSE", "3, PASSED"})
    void the_wall_beside_the_notch_is_thick_enough(double width, Verdict verdict) {
        Finding found = one("channel-wall", channel(width, "90 %  notch 0.1 mm"));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(width / 2 - 0.775, within(1e-3));
    }

    private static String two(String lines) {
        return band(9, 2.6)
                + row("around full  count 36  sink 0.5 mm  across " + lines)
                + "cut slot for lights from shank { clearance 0.01 mm  channel { width 90 %  notch 0.1 mm  lip 0.3 mm"
                + "  floor 1 mm } }\n";
    }

    /** Each line reaches 0.775 mm to its sides. */
    @ParameterizedTest
    @CsvSource({"1.07, FAILED", "1.08, CLOSE", "1.2, PASSED"})
    void between_two_lines_a_wall_stands(double across, Verdict verdict) {
        Finding found = one("channel-wall", two(-across + " mm, " + across + " mm"));

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(measured(found)).isCloseTo(2 * across - 1.55, within(2e-3));
    }

    /** The bores of another row reach 0.76 mm to theirs. */
    @Test
    void the_bores_of_another_row_take_from_the_wall() {
        String text = two("-1 mm")
                + "stone-row more on shank { stone round diamond 1.5 mm  around full  count 36  sink 0.5 mm  across 1 mm }\n"
                + "cut seats for more from shank { hole 0.8 mm  clearance 0.01 mm }";

        assertThat(measured(one("channel-wall", text))).isCloseTo(2 - 0.775 - 0.76, within(2e-3));
    }
}
