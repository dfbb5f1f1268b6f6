// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Outcome;
import bandwright.dsl.Report;
import bandwright.dsl.Workbench;
import bandwright.kernel.cell.Guard;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.run.NotebookRun;
import bandwright.kernel.run.NotebookRunner;

/** Runs a notebook or a text, gives definitions other values, and writes the numbers. */
record MeasureVerb(
        Terminal terminal,
        Path input,
        List<String> settings,
        MeasureFormat format,
        @Nullable Path out) {

    int run() throws UsageFault {
        Notebook notebook = Inputs.read(input);
        if (out != null && RunFiles.same(out, input)) {
            throw new UsageFault("this would overwrite " + input);
        }
        NotebookRun run = NotebookRunner.define(notebook);
        Complaints complaints = new Complaints(terminal);
        complaints.tell(run.cellDiagnostics());
        Workbench workbench = run.workbench();
        for (String setting : settings) {
            workbench = set(workbench, setting, complaints);
        }
        Report report = settings.isEmpty() ? run.report() : Guard.report(workbench);
        complaints.tell(report.troubles());
        complaints.tellIfNothing(run, report);
        String text = format.write(report);
        if (out == null) {
            terminal.say(text.stripTrailing());
        } else {
            RunFiles.write(Map.of(out, text));
        }
        return ExitCode.of(run.verdict(report));
    }

    private Workbench set(Workbench workbench, String setting, Complaints complaints) throws UsageFault {
        int equals = setting.indexOf('=');
        if (equals < 1 || setting.substring(equals + 1).isBlank()) {
            throw new UsageFault("--set takes NAME=VALUE, such as finger-size=\"US 8\"; this was given: " + setting);
        }
        String name = setting.substring(0, equals).strip();
        Outcome outcome =
                Guard.withValue(workbench, name, setting.substring(equals + 1).strip());
        complaints.tell(outcome.diagnostics());
        if (outcome.hasErrors()) {
            throw new UsageFault("--set " + setting + " cannot be done");
        }
        return outcome.workbench();
    }
}
