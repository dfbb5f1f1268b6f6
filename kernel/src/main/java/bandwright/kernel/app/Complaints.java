// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

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
            terminal.complain("bandwright: there is no ring to measure;"
                    + " a ring is a band with a finger size, a profile and a metal");
        }
    }
}
