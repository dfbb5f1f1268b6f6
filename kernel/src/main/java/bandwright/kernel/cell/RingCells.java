// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell;

import java.util.Optional;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.edit.Completeness;
import bandwright.dsl.edit.Completion;
import bandwright.dsl.edit.Documentation;
import bandwright.dsl.source.SourceText;

/** Cells of ring text. */
final class RingCells implements CellLanguage {
    @Override
    public boolean reads(SourceText text) {
        return true;
    }

    @Override
    public Outcome run(Workbench workbench, String cellId, SourceText text, CellConsole console) {
        return Guard.run(workbench, cellId, text, console::working);
    }

    @Override
    public Outcome define(Workbench workbench, String cellId, SourceText text) {
        return Guard.define(workbench, cellId, text);
    }

    @Override
    public Completion completion(Workbench workbench, SourceText text, int offset) {
        return workbench.completion(text, offset);
    }

    @Override
    public Optional<Documentation> documentation(Workbench workbench, SourceText text, int offset) {
        return workbench.documentation(text, offset);
    }

    @Override
    public Optional<Completeness> completeness(SourceText text) {
        return Optional.of(Completeness.of(text));
    }
}
