// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;

import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.explore.Explorer;
import bandwright.dsl.explore.Heard;
import bandwright.dsl.model.Fault;
import bandwright.dsl.parse.ParseResult;
import bandwright.dsl.parse.RingParser;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Show;
import bandwright.dsl.syntax.ShowSubject;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.syntax.Vary;

/** A text of a single question, asked of a design from outside of all cells; nothing is kept of it. */
final class LoneQuestion {
    private final Resolution design;
    private final SourceText text;

    LoneQuestion(Resolution design, SourceText text) {
        this.design = design;
        this.text = text;
    }

    /** What an expression is worth. */
    Worked value() {
        ParseResult parsed = RingParser.parse(text);
        if (parsed.hasErrors()) {
            return new Worked(null, parsed.diagnostics());
        }
        List<Statement> statements = parsed.cell().statements();
        if (statements.size() != 1
                || !(statements.get(0) instanceof Show show)
                || !(show.subject() instanceof ShowSubject.Value asked)) {
            return new Worked(
                    null,
                    List.of(Diagnostic.error("asked-no-value", null)
                            .with(text.text().strip())
                            .build()));
        }
        try {
            return new Worked(OwnFunctions.worth(design.evaluate(asked.value(), text)), List.of());
        } catch (Fault fault) {
            return new Worked(null, fault.diagnostics());
        }
    }

    /** The rows of one {@code vary}. */
    Swept sweep(Workshop workshop) {
        ParseResult parsed = RingParser.parse(text);
        if (parsed.hasErrors()) {
            return new Swept(null, parsed.diagnostics());
        }
        List<Statement> statements = parsed.cell().statements();
        if (statements.size() != 1 || !(statements.get(0) instanceof Vary vary)) {
            return new Swept(null, List.of(Diagnostic.error("no-plan", null).build()));
        }
        try {
            return new Swept(new Sweep(new Explorer(design, workshop, text, Heard.NOTHING).sweep(vary)), List.of());
        } catch (Fault fault) {
            return new Swept(null, fault.diagnostics());
        }
    }
}
