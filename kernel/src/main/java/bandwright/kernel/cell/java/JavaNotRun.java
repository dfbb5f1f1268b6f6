// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.Severity;
import bandwright.dsl.edit.Completeness;
import bandwright.dsl.edit.Completion;
import bandwright.dsl.edit.Documentation;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.cell.CellConsole;
import bandwright.kernel.cell.CellLanguage;

/** Stands where cells in Java would, and says of each that it was not run: for notebooks of people whose programs are not to run here. */
public final class JavaNotRun implements CellLanguage {
    /** What is told of such a cell goes by this code. */
    public static final String CODE = "java-not-run";

    @Override
    public boolean reads(SourceText text) {
        return JavaText.isJava(text);
    }

    @Override
    public Outcome run(Workbench workbench, String cellId, SourceText text, CellConsole console) {
        String message = text.name() + " is in Java, which is not run here";
        return new Outcome(
                workbench,
                List.of(new Diagnostic(CODE, Severity.WARNING, message, null, List.of(), null, null, null, null)),
                List.of());
    }

    @Override
    public Outcome define(Workbench workbench, String cellId, SourceText text) {
        return run(workbench, cellId, text, CellConsole.SILENT);
    }

    @Override
    public Completion completion(Workbench workbench, SourceText text, int offset) {
        return workbench.completion(text, offset);
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
