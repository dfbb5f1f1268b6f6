// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.golden.GoldenFiles;

import static org.assertj.core.api.Assertions.assertThat;

/** Questions about designs beside the one that stands. */
class ExploreTest {
    /** Codes that no text of a cell brings about. */
    private static final Set<String> NOT_BY_TEXT = Set.of("interrupted", "variant-failed");

    @TestFactory
    Stream<DynamicTest> answers_and_errors_are_as_expected() {
        return GoldenFiles.tests("explore", "out", input -> text(run(input)));
    }

    @TestFactory
    Stream<DynamicTest> charts_are_as_expected() {
        return GoldenFiles.cases("explore").stream()
                .filter(input -> !charts(run(input)).isEmpty())
                .map(input -> DynamicTest.dynamicTest(
                        input.name(), () -> GoldenFiles.check(input.beside("svg"), charts(run(input)))));
    }

    @Test
    void every_code_has_a_case() {
        Set<String> told = new TreeSet<>();
        GoldenFiles.cases("explore")
                .forEach(input -> run(input).diagnostics().forEach(diagnostic -> told.add(diagnostic.code())));
        Set<String> ours = new TreeSet<>(GoldenFiles.codes("explore"));
        ours.removeAll(NOT_BY_TEXT);
        assertThat(told).containsAll(ours);
    }

    private static Outcome run(GoldenFiles.Case input) {
        return Workbench.empty().run("cell-1", input.source());
    }

    private static String charts(Outcome outcome) {
        return outcome.answers().stream()
                .filter(Answer.Drawn.class::isInstance)
                .map(answer -> ((Answer.Drawn) answer).svg())
                .collect(Collectors.joining());
    }

    private static String text(Outcome outcome) {
        StringBuilder text = new StringBuilder();
        outcome.diagnostics()
                .forEach(told -> text.append(PlainRenderer.render(told)).append("\n"));
        outcome.answers()
                .forEach(answer -> text.append(answer.plainText().strip()).append("\n\n"));
        return text.toString();
    }
}
