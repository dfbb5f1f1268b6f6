// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.List;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import bandwright.dsl.edit.Completeness;
import bandwright.dsl.edit.Completion;
import bandwright.dsl.edit.Documentation;
import bandwright.dsl.edit.Proposal;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

import static org.assertj.core.api.Assertions.assertThat;

class JavaHelpTest {
    private static Notebook notebook = new Notebook();

    @AfterAll
    static void closes_it() {
        notebook.close();
    }

    private static Completion completion(String code) {
        SourceText text = new SourceText("this cell", code);
        return notebook.java.completion(notebook.workbench(), text, text.length());
    }

    private static List<String> words(Completion completion) {
        return completion.proposals().stream().map(Proposal::text).toList();
    }

    @Test
    void words_are_completed_before_any_cell_has_run() {
        Completion completion = completion("java\nvar ring = \"\uD83D\uDC8D\";\ndesign.mea");

        assertThat(words(completion)).contains("measure(");
        assertThat(completion.replaced()).isEqualTo(new Span(28, 31));
    }

    @Test
    void variables_of_cells_that_ran_are_completed() {
        notebook.run("java\nint verySpecial = 1;");

        assertThat(words(completion("java\nveryS"))).contains("verySpecial");
        assertThat(words(completion("jav"))).isEmpty();
    }

    @Test
    void a_call_is_explained_by_its_signature() {
        SourceText text = new SourceText(
                "this cell", "java\n\uD83D\uDC8D;\n".replace("\uD83D\uDC8D;\n", "") + "design.measure(\"x\")");

        Documentation found =
                notebook.java.documentation(notebook.workbench(), text, 14).orElseThrow();

        assertThat(found.title()).contains("measure(String");
        assertThat(text.text(found.word())).isEqualTo("measure");
        assertThat(notebook.java.documentation(notebook.workbench(), new SourceText("", "java\n  "), 5))
                .isEmpty();
    }

    @Test
    void the_enter_key_is_told_what_to_do() {
        assertThat(state("java\nint x = 1;\nx + 1")).isEqualTo(new Completeness(Completeness.State.COMPLETE, ""));
        assertThat(state("java\nfor (;;) {")).isEqualTo(new Completeness(Completeness.State.INCOMPLETE, "    "));
        assertThat(state("java\nvoid m() {\n  if (true) {"))
                .isEqualTo(new Completeness(Completeness.State.INCOMPLETE, "        "));
        assertThat(state("java\nint x = ));")).isEqualTo(new Completeness(Completeness.State.INVALID, ""));
        assertThat(state("java")).isEqualTo(new Completeness(Completeness.State.COMPLETE, ""));
    }

    private static Completeness state(String code) {
        return notebook.java.completeness(new SourceText("this cell", code)).orElseThrow();
    }
}
