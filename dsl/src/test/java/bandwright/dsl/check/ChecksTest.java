// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

class ChecksTest {
    @TestFactory
    Stream<DynamicTest> checks_are_shown_as_expected() {
        return GoldenFiles.tests("check", "out", input -> text(Workbench.empty().run("cell-1", input.source())));
    }

    private static String text(Outcome outcome) {
        return Stream.concat(
                        outcome.diagnostics().stream().map(told -> PlainRenderer.render(told) + "\n"),
                        outcome.answers().stream()
                                .map(answer -> answer.plainText().strip() + "\n\n"))
                .collect(Collectors.joining());
    }

    @Test
    void the_same_ring_gives_the_same_findings_twice() {
        String text = GoldenFiles.cases("check").get(0).text().replaceAll("(?m)^show.*$", "");

        assertThat(Bench.all(text)).isEqualTo(Bench.all(text));
    }

    @Test
    void every_sentence_can_be_told() {
        for (GoldenFiles.Case input : GoldenFiles.cases("check")) {
            for (Finding finding : Bench.all(input.text().replaceAll("(?m)^show.*$", ""))) {
                assertThat(finding.sentence()).as(finding.check()).isNotBlank().doesNotContain("{");
            }
        }
    }

    @Test
    void without_a_ring_there_is_nothing_to_check() {
        Outcome outcome = Workbench.empty().run("cell", new SourceText("cell", "show checks"));

        assertThat(outcome.answers()).isEmpty();
        assertThat(outcome.unanswered()).isEqualTo(1);
        assertThat(outcome.workbench().findings().all()).isEmpty();
    }

    @Test
    void failures_come_first() {
        List<Verdict> verdicts =
                Bench.all(GoldenFiles.cases("check").get(0).text().replaceAll("(?m)^show.*$", "")).stream()
                        .map(Finding::verdict)
                        .toList();

        assertThat(verdicts).isSorted();
    }

    @Test
    void a_picture_has_a_quiet_line_where_checks_failed_and_none_where_not() {
        String thin = Bench.band(4, 0.5) + "show ring";

        List<Answer> answers = run(thin);

        assertThat(answers).hasSize(2);
        assertThat(answers.get(1).plainText()).startsWith("checks: 2 failed: thinnest wall as cast (shank 0.5 mm)");
        assertThat(run(Bench.band(4, 2) + "show ring")).hasSize(1);
        assertThat(run(Bench.band(4, 2) + "show section of ring")).hasSize(1);
    }

    @Test
    void a_limit_is_replaced_when_asked_again_and_goes_with_its_cell() {
        Workbench ring = run(Workbench.empty(), "ring", Bench.band(4, 0.55));
        Workbench held = run(ring, "limit", "limit casting-wall 0.5 mm because \"our caster holds this\"");
        Workbench again = run(held, "other", "limit casting-wall 0.6 mm because \"another caster\"");

        assertThat(casting(ring)).isEqualTo(Verdict.FAILED);
        assertThat(casting(held)).isEqualTo(Verdict.CLOSE);
        assertThat(casting(again)).isEqualTo(Verdict.FAILED);
        assertThat(casting(held.without("limit"))).isEqualTo(Verdict.FAILED);
        assertThat(held.report().fingerprint()).isEqualTo(ring.report().fingerprint());
    }

    @Test
    void a_limit_may_hang_on_a_definition() {
        Workbench ring = run(Workbench.empty(), "ring", Bench.band(4, 0.55));
        Workbench waiting = Workbench.empty()
                .run("w", new SourceText("w", Bench.band(4, 0.55) + "limit casting-wall caster because \"as agreed\""))
                .workbench();
        assertThat(waiting.findings().all()).extracting(Finding::verdict).containsExactly(Verdict.NOT_LOOKED_AT);

        Workbench defined = run(waiting, "c", "caster = 0.5 mm");

        assertThat(casting(defined)).isNotEqualTo(casting(ring));
    }

    @Test
    void what_shows_checks_hangs_on_the_limits() {
        SourceText asked = new SourceText("q", "show checks");
        SourceText picture = new SourceText("q", "show shank");
        Workbench ring = run(Workbench.empty(), "ring", Bench.band(4, 2));
        Workbench held = run(ring, "limit", "limit casting-wall 0.5 mm because \"our caster holds this\"");

        for (SourceText cell : Set.of(asked, picture)) {
            assertThat(held.fingerprintOf(cell)).isPresent().isNotEqualTo(ring.fingerprintOf(cell));
        }
        SourceText weight = new SourceText("q", "weight(shank)");
        assertThat(held.fingerprintOf(weight)).isEqualTo(ring.fingerprintOf(weight));
    }

    private static Verdict casting(Workbench workbench) {
        return workbench.findings().all().stream()
                .filter(finding -> finding.check().equals("casting-wall"))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    private static Workbench run(Workbench before, String cell, String text) {
        Outcome outcome = before.run(cell, new SourceText(cell, text));
        assertThat(outcome.diagnostics()).isEmpty();
        return outcome.workbench();
    }

    private static List<Answer> run(String text) {
        Outcome outcome = Workbench.empty().run("cell", new SourceText("cell", text));
        assertThat(outcome.diagnostics()).isEmpty();
        return Objects.requireNonNull(outcome.answers());
    }
}
