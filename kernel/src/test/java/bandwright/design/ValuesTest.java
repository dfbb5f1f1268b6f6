// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design;

import java.util.Objects;
import java.util.Random;

import org.junit.jupiter.api.Test;

import bandwright.dsl.Workbench;
import bandwright.dsl.Worked;
import bandwright.dsl.source.SourceText;

import static bandwright.design.Units.ct;
import static bandwright.design.Units.g;
import static bandwright.design.Units.inch;
import static bandwright.design.Units.iso;
import static bandwright.design.Units.mm;
import static bandwright.design.Units.number;
import static bandwright.design.Units.percent;
import static bandwright.design.Units.quantity;
import static bandwright.design.Units.uk;
import static bandwright.design.Units.us;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class ValuesTest {
    @Test
    void values_read_as_the_language_shows_them() {
        assertThat(mm(40).plus(mm(2))).hasToString("42 mm");
        assertThat(inch(0.25)).hasToString("6.35 mm");
        assertThat(mm(2).times(mm(3))).hasToString("6 mm^2");
        assertThat(g(10).dividedBy(mm(10).times(mm(10)).times(mm(10)))).hasToString("10 g/cm^3");
        assertThat(ct(0.25)).hasToString("0.25 ct");
        assertThat(quantity(41.5, "EUR/g").times(g(2))).hasToString("83 EUR");
        assertThat(mm(5).times(percent(10))).hasToString("0.5 mm");
        assertThat(us(7.25)).hasToString("US 7 1/4");
        assertThat(uk("N 1/2")).hasToString("UK N 1/2");
        assertThat(g(31.1034768).in("ozt")).hasToString("1 ozt");
        assertThat(mm(25.4).count("inch")).isEqualTo(1);
        assertThat(iso(57).diameter()).hasToString("18.144 mm");
    }

    @Test
    void what_does_not_fit_is_refused_in_the_languages_words() {
        assertThatThrownBy(() -> mm(5).plus(g(2)))
                .isInstanceOf(DesignException.class)
                .hasMessage("a length and a weight cannot be added");
        assertThatThrownBy(() -> mm(5).compareTo(g(2))).hasMessage("a length and a weight cannot be compared");
        assertThatThrownBy(() -> mm(5).in("g")).isInstanceOf(DesignException.class);
        assertThatThrownBy(() -> mm(5).dividedBy(0)).isInstanceOf(DesignException.class);
        assertThatThrownBy(() -> quantity(1, "EUR").times(quantity(1, "USD"))).isInstanceOf(DesignException.class);
        assertThatThrownBy(() -> quantity(1, "ell")).hasMessageStartingWith("ell is no unit");
        assertThatThrownBy(() -> us(90)).hasMessageContaining("fingers lie between");
        assertThatThrownBy(() -> uk("7")).isInstanceOf(DesignException.class);
    }

    @Test
    void order_is_that_of_the_language() {
        assertThat(mm(5).isMoreThan(mm(4.9))).isTrue();
        assertThat(mm(5).isLessThan(mm(5 + 1e-12))).isFalse();
        assertThat(mm(5)).isEqualTo(quantity(5, "mm")).hasSameHashCodeAs(quantity(5, "mm"));
        assertThat(us(7)).isLessThan(us(7.25));
    }

    @Test
    void ring_text_gives_back_the_very_same_value() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            double value = (random.nextDouble() - 0.5) * StrictMath.pow(10, random.nextInt(9) - 3);
            Quantity[] all = {
                mm(value),
                g(value),
                ct(value),
                number(value),
                inch(value),
                mm(value).times(mm(2))
            };
            for (Quantity quantity : all) {
                assertThat(Quantity.of(Objects.requireNonNull(
                                worth(quantity.expression()).quantity())))
                        .isEqualTo(quantity);
            }
        }
    }

    @Test
    void ring_text_gives_back_a_size_to_a_hair() {
        Random random = new Random(8);
        for (int i = 0; i < 200; i++) {
            Size size = us(random.nextDouble() * 12);
            assertThat(Size.of(Objects.requireNonNull(worth(size.expression()).size()))
                            .circumference()
                            .number())
                    .isCloseTo(size.circumference().number(), org.assertj.core.data.Offset.offset(1e-9));
        }
    }

    private static Worked.Worth worth(String expression) {
        Worked worked = Workbench.empty().value(new SourceText("a test", expression));
        assertThat(worked.diagnostics()).isEmpty();
        return Objects.requireNonNull(worked.worth());
    }
}
