// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import bandwright.dsl.Report;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.diagnostic.Severity;
import bandwright.dsl.source.Place;
import bandwright.kernel.run.NotebookRun;

/** Tells a person what is wrong with a text, each thing once. */
final class Complaints {
    private final Terminal terminal;
    private final Set<Diagnostic> told = new LinkedHashSet<>();

    Complaints(Terminal terminal) {
        this.terminal = terminal;
    }

    void tell(List<Diagnostic> diagnostics) {
        List<Diagnostic> fresh = diagnostics.stream().filter(told::add).toList();
        if (!fresh.isEmpty()) {
            terminal.complain(PlainRenderer.render(fresh).stripTrailing());
        }
    }

    /** Says so if there is no ring in the end, or not all of it, which no diagnostic need have said. */
    void tellIfNothing(NotebookRun run, Report report) {
        if (run.ranNothing()) {
            terminal.complain("bandwright: there is nothing to run");
        } else if (report.parts().isEmpty()) {
            terminal.complain("bandwright: " + noRing(run));
        } else {
            waiting(report)
                    .ifPresent(trouble -> terminal.complain("bandwright: a part of the ring is not made: "
                            + reason(trouble) + ", in " + where(trouble)));
        }
    }

    /** The first name that nothing has defined in the end. */
    private static Optional<Diagnostic> waiting(Report report) {
        return report.troubles().stream()
                .filter(trouble -> trouble.code().equals("not-defined-yet") && trouble.place() != null)
                .findFirst();
    }

    /** Why there is no ring: a cell that was refused for one slip takes all that it would have made with it. */
    static String noRing(NotebookRun run) {
        List<Diagnostic> refusals = run.refusals();
        if (refusals.isEmpty()) {
            return run.report().troubles().stream()
                    .filter(trouble -> trouble.severity() != Severity.NOTE && trouble.place() != null)
                    .findFirst()
                    .map(trouble -> "there is no ring to measure yet: " + reason(trouble) + ", in " + where(trouble))
                    .orElse("there is no ring to measure; a ring is a band with a finger size, a profile and a metal");
        }
        String where = refusals.stream()
                .filter(refusal -> refusal.place() != null)
                .findFirst()
                .map(Complaints::where)
                .orElse("a cell");
        return "the ring was not made, because of "
                + (refusals.size() == 1 ? "the error in " : refusals.size() + " errors, the first in ") + where;
    }

    /** What is missing by its name; the sentence about it has been told above. */
    private static String reason(Diagnostic told) {
        Place place = told.place();
        return told.isError() || place == null ? told.message() : "it waits for " + place.text();
    }

    private static String where(Diagnostic told) {
        Place place = told.place();
        return place == null ? "a cell" : place.source().name() + ", line " + place.line();
    }
}
