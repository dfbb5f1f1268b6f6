// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.display;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class DecimalsTest {
    @ParameterizedTest
    @CsvSource({
        "42,42",
        "100,100",
        "0.5,0.5",
        "1e-9,0",
        "-1e-9,0",
        "1.0625e7,10625000",
        "1.23456789,1.234568",
        "0.0000005,0.000001"
    })
    void plain_decimals_have_no_exponent_and_no_idle_zero(double value, String shown) {
        assertThat(Decimals.plain(value, 6)).isEqualTo(shown);
    }

    @Test
    void halves_go_away_from_zero() {
        assertThat(Decimals.plain(0.125, 2)).isEqualTo("0.13");
        assertThat(Decimals.plain(-0.125, 2)).isEqualTo("-0.13");
    }

    @Test
    void fixed_decimals_keep_their_zeros() {
        assertThat(Decimals.fixed(3.5, 3)).isEqualTo("3.500");
        assertThat(Decimals.fixed(Double.NaN, 3)).isEqualTo("?");
    }
}
