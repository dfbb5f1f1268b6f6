// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.quantity;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class QuantityTest {
    private static Quantity of(double count, String unit) {
        return Quantity.of(count, Unit.parse(unit).orElseThrow());
    }

    @Test
    void values_show_in_their_usual_unit() {
        assertThat(of(40, "mm").plus(of(0.2, "cm"))).hasToString("42 mm");
        assertThat(of(1, "inch")).hasToString("25.4 mm");
        assertThat(of(1, "ozt")).hasToString("31.103 g");
        assertThat(of(14.76, "g/cm^3")).hasToString("14.76 g/cm^3");
        assertThat(of(2, "mm").power(3)).hasToString("8 mm^3");
        assertThat(of(10, "%")).hasToString("0.1");
        assertThat(of(41, "EUR/g").times(Quantity.grams(2.5))).hasToString("102.5 EUR");
        assertThat(of(1, "EUR").dividedBy(Quantity.number(3))).hasToString("0.33 EUR");
        assertThat(of(60, "EUR/ct")).hasToString("300 EUR/g");
    }

    @Test
    void carats_and_what_is_asked_for_show_in_their_unit() {
        assertThat(of(25, "pt").plus(of(1, "ct"))).hasToString("1.25 ct");
        assertThat(of(1, "ct").plus(Quantity.grams(1))).hasToString("1.2 g");
        assertThat(Quantity.grams(3.11034768).in(Unit.parse("dwt").orElseThrow()))
                .hasToString("2 dwt");
    }

    @Test
    void halves_are_rounded_away_from_zero_and_nothing_is_minus_zero() {
        assertThat(QuantityFormat.number(1.0005, 3)).isEqualTo("1.001");
        assertThat(QuantityFormat.number(-1.0005, 3)).isEqualTo("-1.001");
        assertThat(QuantityFormat.number(-0.0001, 3)).isEqualTo("0");
        assertThat(QuantityFormat.number(1e6, 3)).isEqualTo("1000000");
        assertThat(QuantityFormat.number(0.1 + 0.2, 3)).isEqualTo("0.3");
    }

    @Test
    void equal_means_within_one_part_in_a_thousand_million() {
        assertThat(of(1, "mm").compare(of(1 + 0.9e-9, "mm"))).isZero();
        assertThat(of(1, "mm").compare(of(1 + 1.1e-9, "mm"))).isNegative();
        assertThat(of(0, "mm").compare(of(-0.0, "mm"))).isZero();
    }

    @Test
    void kinds_that_do_not_fit_are_told_apart() {
        assertThat(of(1, "mm").fits(of(1, "g"))).isFalse();
        assertThat(Dimension.money("EUR").mixesWith(Dimension.money("CHF"))).isFalse();
        assertThatThrownBy(() -> of(1, "mm").plus(of(1, "g"))).hasMessage("a length does not fit a weight");
    }

    @Test
    void only_lengths_have_powers_and_those_are_two_and_three() {
        assertThat(Unit.parse("mm^4")).isEmpty();
        assertThat(Unit.parse("g^2")).isEmpty();
        assertThat(Unit.parse("EUR/CHF")).isEmpty();
        assertThat(Unit.parse("")).isEmpty();
        assertThat(of(1, "cm^3")).isEqualTo(of(1000, "mm^3"));
    }

    @Test
    void the_square_root_of_an_area_is_a_length() {
        assertThat(of(9, "mm^2").squareRoot()).hasToString("3 mm");
        assertThat(Dimension.LENGTH.isSquare()).isFalse();
    }
}
