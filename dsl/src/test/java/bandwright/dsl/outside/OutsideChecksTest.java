// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.outside;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

import bandwright.dsl.material.MixingRule;
import bandwright.dsl.material.OutsideData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class OutsideChecksTest {
    @TestFactory
    Stream<DynamicTest> finger_sizes_agree_with_published_tables_and_tell_rival_ones_apart() {
        return tests(RingSizeChecks.tables());
    }

    @TestFactory
    Stream<DynamicTest> sizes_said_to_be_one_are() {
        return tests(RingSizeChecks.equivalences());
    }

    @TestFactory
    Stream<DynamicTest> the_mixing_rule_meets_published_densities() {
        return tests(AlloyChecks.all());
    }

    @TestFactory
    Stream<DynamicTest> worked_examples_come_out() {
        return tests(WorkedExamples.all());
    }

    @TestFactory
    Stream<DynamicTest> round_diamonds_differ_from_tables_as_is_known() {
        return tests(RoundWeightChecks.tables());
    }

    @TestFactory
    Stream<DynamicTest> round_diamonds_differ_from_the_sieve_chart_as_is_known() {
        return tests(RoundWeightChecks.sieves());
    }

    @TestFactory
    Stream<DynamicTest> coloured_stones_of_our_depth_are_lighter_as_is_known() {
        return tests(GemWeightChecks.all());
    }

    @TestFactory
    Stream<DynamicTest> the_catalogue_has_a_recipe_that_weighs_what_the_trade_says() {
        return tests(TradeDensityChecks.all());
    }

    @Test
    void no_row_of_the_data_is_left_out() {
        assertThat(RingSizeChecks.tables()).hasSize(67);
        assertThat(RoundWeightChecks.tables()).hasSize(61);
        assertThat(RoundWeightChecks.sieves()).hasSize(34);
        assertThat(GemWeightChecks.shapes()).containsExactly("marquise", "octagon", "oval", "round");
        assertThat(GemWeightChecks.all()).hasSize(42);
        assertThat(TradeDensityChecks.uncompared())
                .containsExactly("10K green", "aluminium", "brass", "bronze", "copper", "gold 333", "gold 900", "wax");
        TreeSet<String> done = new TreeSet<>(WorkedExamples.NOT_OURS.keySet());
        WorkedExamples.all().forEach(check -> done.add(check.what().split(" ", 2)[0]));
        assertThat(OutsideData.rows("worked_examples.csv").stream().map(row -> row.text("id")))
                .containsExactlyInAnyOrderElementsOf(done);
    }

    @Test
    void the_mixing_rule_gives_what_was_worked_out_apart_from_it() {
        int rows = 0;
        for (OutsideData.Row row : OutsideData.rows("alloys.csv")) {
            if (!AlloyChecks.composition(row).isEmpty()) {
                assertThat(MixingRule.density(AlloyChecks.composition(row)))
                        .as(row.text("name"))
                        .isCloseTo(row.number("density_mix_gcm3"), within(0.00051));
                rows++;
            }
        }
        assertThat(rows).isEqualTo(64);
    }

    private static Stream<DynamicTest> tests(List<OutsideCheck> checks) {
        return checks.stream()
                .map(check -> DynamicTest.dynamicTest(
                        check.what(),
                        () -> assertThat(check.deviation())
                                .as(
                                        "%s: published %s, ours %s (%s)",
                                        check.what(), check.published(), check.ours(), check.source())
                                .isBetween(check.lowest() - 1e-9, check.highest() + 1e-9)));
    }
}
