// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Comparison;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.page.export.ComparisonPage;
import bandwright.kernel.run.NotebookRun;
import bandwright.kernel.run.NotebookRunner;

/** Sets two designs side by side: a student's and a model answer, or two of one's own. */
record CompareVerb(
        Terminal terminal,
        Path left,
        Path right,
        CompareFormat format,
        @Nullable Path out,
        boolean java) {

    int run() throws UsageFault {
        checkOut();
        NotebookRun one = define(left);
        NotebookRun other = define(right);
        List<String> remarks = new ArrayList<>();
        String name = name(left, right);
        String otherName = name(right, left);
        otherName = otherName.equals(name) ? otherName + " (second)" : otherName;
        remark(remarks, name, one);
        remark(remarks, otherName, other);
        remarks.forEach(remark -> terminal.complain("bandwright: " + remark));
        Comparison comparison = one.workbench().compared(name, other.workbench(), otherName);
        terminal.say(format.write(comparison.contrast()).stripTrailing());
        if (out != null) {
            RunFiles.write(Map.of(out, ComparisonPage.write(comparison, remarks)));
        }
        return isWhole(one) && isWhole(other) ? ExitCode.GOOD : ExitCode.ERROR;
    }

    private void checkOut() throws UsageFault {
        if (out == null) {
            return;
        }
        if (Files.isDirectory(out)) {
            throw new UsageFault(out + " is a folder; a file is to be written there");
        }
        if (RunFiles.same(out, left) || RunFiles.same(out, right)) {
            throw new UsageFault("this would overwrite " + out);
        }
    }

    private NotebookRun define(Path file) throws UsageFault {
        Notebook notebook = Inputs.read(file);
        NotebookRun run = java ? NotebookRunner.define(notebook) : NotebookRunner.defineWithoutJava(notebook);
        new Complaints(terminal).tell(run.diagnostics());
        return run;
    }

    /** The file's name, with its folder where both files have one name. */
    private static String name(Path file, Path other) {
        String name = String.valueOf(file.getFileName());
        return name.equals(String.valueOf(other.getFileName())) ? file.toString() : name;
    }

    private static void remark(List<String> remarks, String name, NotebookRun run) {
        long errors = run.cells().stream()
                .filter(cell -> cell.state() == CellState.ERROR)
                .count();
        if (errors > 0) {
            remarks.add(name + " has " + errors + (errors == 1 ? " cell" : " cells")
                    + " with an error: what they would have made is missing");
        }
        if (run.report().parts().isEmpty()) {
            remarks.add("in " + name + " there is no ring");
        }
    }

    private static boolean isWhole(NotebookRun run) {
        return !run.report().parts().isEmpty()
                && run.cells().stream().noneMatch(cell -> cell.state() == CellState.ERROR);
    }
}
