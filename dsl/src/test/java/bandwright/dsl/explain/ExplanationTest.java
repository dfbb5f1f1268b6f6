// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

class ExplanationTest {
    @TestFactory
    Stream<DynamicTest> explanations_are_as_the_files_say() {
        return GoldenFiles.tests("explain", "text", input -> {
            Outcome outcome = Workbench.empty().run("cell", new SourceText("cell 1", input.text()));
            assertThat(outcome.diagnostics()).isEmpty();
            return outcome.answers().stream().map(Answer::plainText).collect(Collectors.joining("\n"));
        });
    }

    @Test
    void signs_of_a_notation_are_written_so_that_they_are_read_literally() {
        Explanation explanation =
                new Explanation(new Step("a * b < c", "see [1] & \"2\"", List.of(Step.of("d_e", ""))));
        assertThat(explanation.html()).isEqualTo("""
                        <ul>
                        <li>a * b &lt; c <small>see [1] &amp; &quot;2&quot;</small>
                        <ul>
                        <li>d_e</li>
                        </ul>
                        </li>
                        </ul>
                        """);
        assertThat(explanation.markdown()).isEqualTo("""
                        - a \\* b \\< c *(see \\[1\\] & "2")*
                          - d\\_e
                        """);
    }

    @Test
    void what_cannot_be_worked_out_is_told_as_everywhere() {
        Outcome outcome = Workbench.empty().run("cell", new SourceText("cell 1", "explain weight(shank)"));
        assertThat(outcome.diagnostics()).hasSize(1);
        assertThat(outcome.answers()).isEmpty();
    }
}
