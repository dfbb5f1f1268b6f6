// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.explore.Explorer;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Definitions;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.syntax.Export;
import bandwright.dsl.syntax.Sheet;
import bandwright.dsl.syntax.Statement;

/**
 * What a cell's questions came to, one after the other.
 *
 * @param unanswered how many have no answer
 * @param told what was told before, and what the questions added
 */
record CellAnswers(List<Answer> answers, int unanswered, List<Diagnostic> told) {
    CellAnswers {
        answers = List.copyOf(answers);
        told = List.copyOf(told);
    }

    /** @param before what is told of the cell already */
    static CellAnswers of(List<Statement> statements, Asking asking, List<Diagnostic> before) {
        // What the cell makes stands, whatever its questions come to.
        boolean makes = statements.stream().anyMatch(Definitions::changes);
        List<Answer> answers = new ArrayList<>();
        List<Diagnostic> told = new ArrayList<>(before);
        int unanswered = 0;
        boolean interrupted = false;
        for (Statement statement : statements) {
            interrupted |= Thread.currentThread().isInterrupted();
            if (interrupted) {
                unanswered += Asking.asks(statement) ? 1 : 0;
                continue;
            }
            try {
                answers.addAll(asking.answer(statement));
            } catch (Fault fault) {
                unanswered++;
                interrupted = Explorer.isInterrupt(fault);
                // Of files all are written or none, so a slip in one is an error of the whole cell.
                boolean spares = makes && !(statement instanceof Export || statement instanceof Sheet);
                fault.diagnostics().stream()
                        .map(diagnostic -> spares ? diagnostic.asWarning() : diagnostic)
                        .filter(diagnostic -> !told.contains(diagnostic))
                        .forEach(told::add);
            }
        }
        if (unanswered > 0 || told.stream().anyMatch(Resolution::isWaiting)) {
            unanswered += hold(answers, told);
        }
        return new CellAnswers(answers, unanswered, told);
    }

    /** Takes files out of answers that are half of them missing: they would be taken for the whole. Tells each, and says how many. */
    private static int hold(List<Answer> answers, List<Diagnostic> told) {
        List<Answer.Exported> held = answers.stream()
                .filter(Answer.Exported.class::isInstance)
                .map(Answer.Exported.class::cast)
                .toList();
        answers.removeAll(held);
        held.forEach(export -> told.add(Diagnostic.warning("file-held-back", export.place())
                .with(export.files().get(0).name())
                .build()));
        return held.size();
    }

    boolean failed() {
        return told.stream().anyMatch(Diagnostic::isError);
    }
}
