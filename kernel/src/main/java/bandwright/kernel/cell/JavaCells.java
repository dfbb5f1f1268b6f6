// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.edit.Completeness;
import bandwright.dsl.edit.Completion;
import bandwright.dsl.edit.Documentation;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

/** Cells in Java, which are told apart and answered, but not run yet. */
final class JavaCells implements CellLanguage {
    private static final String WORD = "java";

    /** {@inheritDoc} For this one: the single word {@code java}. */
    @Override
    public boolean reads(SourceText text) {
        return text.lineText(1).strip().equals(WORD);
    }

    @Override
    public Outcome run(Workbench workbench, String cellId, SourceText text, CellConsole console) {
        return define(workbench, cellId, text);
    }

    @Override
    public Outcome define(Workbench workbench, String cellId, SourceText text) {
        int start = text.lineText(1).indexOf(WORD);
        Diagnostic diagnostic = Diagnostic.error("not-yet", text.place(new Span(start, start + WORD.length())))
                .with("a cell in Java")
                .build();
        return new Outcome(workbench, List.of(diagnostic), List.of());
    }

    @Override
    public Completion completion(Workbench workbench, SourceText text, int offset) {
        return new Completion(new Span(offset, offset), List.of());
    }

    @Override
    public Optional<Documentation> documentation(Workbench workbench, SourceText text, int offset) {
        return Optional.empty();
    }

    @Override
    public Optional<Completeness> completeness(SourceText text) {
        return Optional.empty();
    }
}
