// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.run;

import java.util.List;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

/** Cells in Java, which are told apart and answered, but not run yet. */
final class JavaCell {
    private static final String WORD = "java";

    private JavaCell() {}

    /** Whether the first line is the single word {@code java}. */
    static boolean is(SourceText text) {
        return text.lineText(1).strip().equals(WORD);
    }

    static Outcome notYet(Workbench workbench, SourceText text) {
        int start = text.lineText(1).indexOf(WORD);
        Diagnostic diagnostic = Diagnostic.error("not-yet", text.place(new Span(start, start + WORD.length())))
                .with("a cell in Java")
                .build();
        return new Outcome(workbench, List.of(diagnostic), List.of());
    }
}
