// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.export.ExportFile;
import bandwright.dsl.export.pdf.Paper;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.cell.CellLanguages;
import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookCell;
import bandwright.kernel.page.export.CellTags;
import bandwright.kernel.page.export.PageWriter;
import bandwright.kernel.page.export.PaperWriter;
import bandwright.kernel.run.NotebookRun;
import bandwright.kernel.run.NotebookRunner;
import bandwright.kernel.run.OutputsOfCell;
import bandwright.kernel.run.Progress;

/**
 * What a notebook is handed over as, made in memory: nothing of it is written into the folder.
 *
 * @param file the name under which a browser may keep it
 * @param type a MIME type
 * @param bytes they belong to it and nobody writes to them
 */
@SuppressWarnings("ArrayRecordComponent")
record HandOut(String file, String type, byte[] bytes) {
    private static final Pattern SHEET = Pattern.compile("^\\s*sheet\\b", Pattern.MULTILINE);

    private static final String PDF = "application/pdf";

    private static String stem(String name) {
        return name.substring(0, name.lastIndexOf('.'));
    }

    /** The bench sheet: as the notebook's own {@code sheet} wants it, or a plain one where it has none. */
    static HandOut sheet(String name, Notebook notebook, Workbench workbench) throws DeskFault {
        NotebookCell wish = notebook.cells().stream()
                .filter(cell -> cell.kind() == CellKind.CODE
                        && SHEET.matcher(cell.source()).find())
                .filter(cell -> !LiveDesign.isJava(cell.source()))
                .findFirst()
                .orElse(new NotebookCell("the-sheet", CellKind.CODE, "sheet \"sheet.pdf\"\n", Set.of(), Map.of()));
        SourceText text = new SourceText("the sheet", wish.source());
        Outcome outcome = new CellLanguages(List.of())
                .of(text)
                .run(workbench, wish.id(), text, new OutputsOfCell().console((done, of) -> {}));
        for (Answer answer : outcome.answers()) {
            if (answer instanceof Answer.Exported exported) {
                for (ExportFile file : exported.files()) {
                    if (file.name().endsWith(".pdf")) {
                        return new HandOut(stem(name) + ".sheet.pdf", PDF, file.bytes());
                    }
                }
            }
        }
        throw new DeskFault(
                outcome.diagnostics().isEmpty()
                        ? "there is no ring for a sheet yet"
                        : outcome.diagnostics().get(0).message());
    }

    /** What students get, as a page: without the cells that are kept back. */
    static HandOut page(String name, Notebook notebook, boolean programs) {
        byte[] bytes = PageWriter.write(run(notebook, programs), stem(name)).getBytes(StandardCharsets.UTF_8);
        return new HandOut(stem(name) + ".handout.html", "text/html", bytes);
    }

    /** The same for paper. */
    static HandOut paper(String name, Notebook notebook, boolean programs) {
        byte[] bytes = PaperWriter.write(run(notebook, programs), stem(name), "handout", Paper.A4);
        return new HandOut(stem(name) + ".handout.pdf", PDF, bytes);
    }

    private static NotebookRun run(Notebook notebook, boolean programs) {
        Notebook given = notebook.without(CellTags.KEPT_BACK);
        return programs ? NotebookRunner.run(given, Progress.SILENT) : NotebookRunner.runWithoutJava(given);
    }

    /** Whether any cell is a program. */
    static boolean hasPrograms(List<NotebookCell> cells) {
        return cells.stream().anyMatch(cell -> cell.kind() == CellKind.CODE && LiveDesign.isJava(cell.source()));
    }
}
