// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static bandwright.dsl.check.Bench.band;
import static bandwright.dsl.check.Bench.measured;
import static bandwright.dsl.check.Bench.one;
import static bandwright.dsl.check.Bench.verdict;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class MetalCautionsTest {
    private static String made(String metal) {
        return "metal own { " + metal + " }\n" + band(4, 1.5).replace("silver-925", "own");
    }

    @Test
    void nickel_is_told() {
        Finding found = one("nickel", made("gold 75 %  nickel 10 %  copper 15 %"));

        assertThat(found.verdict()).isEqualTo(Verdict.CAUTION);
        assertThat(measured(found)).isCloseTo(0.1, within(1e-12));
        assertThat(verdict("nickel", made("gold 75 %  copper 25 %"))).isEqualTo(Verdict.PASSED);
    }

    @ParameterizedTest
    @CsvSource({"0.011, FAILED", "0.01, PASSED"})
    void cadmium_is_a_fault(double percent, Verdict verdict) {
        assertThat(verdict("cadmium", made("silver " + (100 - percent) + " %  cadmium " + percent + " %")))
                .isEqualTo(verdict);
    }

    @Test
    void what_a_recipe_does_not_state_is_not_looked_at() {
        for (String check : List.of("nickel", "cadmium", "lead")) {
            assertThat(verdict(check, made("density 13.1 g/cm^3"))).as(check).isNotEqualTo(Verdict.PASSED);
        }
    }

    @Test
    void a_hallmark_depends_on_weight() {
        assertThat(verdict("hallmark", band(4, 1.5))).isEqualTo(Verdict.PASSED);
        assertThat(verdict("hallmark", band(6, 2.2))).isEqualTo(Verdict.CAUTION);
        assertThat(verdict("hallmark", band(4, 1.5).replace("silver-925", "yellow-gold-585")))
                .isEqualTo(Verdict.CAUTION);
    }

    /** An alloy of one's own is gold, platinum or silver by its recipe, as those on file are. */
    @ParameterizedTest
    @CsvSource({
        "gold 37.5 %  silver 62.5 %, gold",
        "gold 37.4 %  silver 62.6 %, none",
        "platinum 95 %  ruthenium 5 %, platinum",
        "silver 80 %  copper 20 %, silver",
        "copper 70 %  silver 30 %, none"
    })
    void an_own_recipe_is_hallmarked_as_what_it_may_be_sold_as(String recipe, String metal) {
        List<List<String>> subjects = Bench.of("hallmark", made(recipe)).stream()
                .map(Finding::subjects)
                .toList();

        assertThat(subjects).isEqualTo(metal.equals("none") ? List.of() : List.of(List.of(metal)));
    }

    @Test
    void an_own_platinum_is_cast_as_thick_as_any() {
        Finding found = one("casting-wall", made("platinum 95 %  ruthenium 5 %"));

        assertThat(found.limit()).isEqualTo("at least 0.8 mm");
    }

    /** Above its weight an article is marked; it is not too heavy. */
    @Test
    void a_hallmark_is_a_duty_and_no_limit_to_the_weight() {
        Finding found = one("hallmark", band(6, 2.2));

        assertThat(found.margin()).isNull();
        assertThat(found.limit()).isEqualTo("marked above 7.78 g (UK)");
        assertThat(found.sentence()).contains("are to be hallmarked in the UK").doesNotContain("at most");
    }
}
