// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import bandwright.dsl.Report;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.PlainRenderer;
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

    /** Says so if there is no ring in the end, which no diagnostic need have said. */
    void tellIfNothing(NotebookRun run, Report report) {
        if (run.ranNothing()) {
            terminal.complain("bandwright: there is nothing to run");
        } else if (report.parts().isEmpty()) {
            terminal.complain("bandwright: " + noRing(run));
        }
    }

    /** Why there is no ring: a cell that was refused for one slip takes all that it would have made with it. */
    static String noRing(NotebookRun run) {
        List<Diagnostic> refusals = run.refusals();
        if (refusals.isEmpty()) {
            return "there is no ring to measure; a ring is a band with a finger size, a profile and a metal";
        }
        String where = refusals.stream()
                .flatMap(refusal -> Stream.ofNullable(refusal.place()))
                .findFirst()
                .map(place -> place.source().name() + ", line " + place.line())
                .orElse("a cell");
        return "the ring was not made, because of "
                + (refusals.size() == 1 ? "the error in " : refusals.size() + " errors, the first in ") + where;
    }
}
