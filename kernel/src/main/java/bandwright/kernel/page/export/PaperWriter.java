// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import bandwright.dsl.Report;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.export.pdf.PageItem;
import bandwright.dsl.export.pdf.Paper;
import bandwright.dsl.export.pdf.PaperDocument;
import bandwright.dsl.export.pdf.PdfWriter;
import bandwright.dsl.view.Table;
import bandwright.kernel.display.Headlines;
import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.run.CellRun;
import bandwright.kernel.run.NotebookRun;

/** An executed notebook as pages to print: the same things in the same order as on {@link PageWriter}'s page, drawings as lines. */
public final class PaperWriter {
    private final NotebookRun run;
    private final AnswerItems answers;
    private final List<PageItem> items = new ArrayList<>();
    private String title = "";

    private PaperWriter(NotebookRun run, Paper paper) {
        this.run = run;
        this.answers = new AnswerItems(paper);
    }

    /**
     * The whole PDF file.
     *
     * @param name what it is called where the notebook gives no title
     * @param kind what it is, at the foot of each page: {@code handout}
     */
    public static byte[] write(NotebookRun run, String name, String kind, Paper paper) {
        PaperWriter writer = new PaperWriter(run, paper);
        writer.cells();
        writer.numbers();
        String designTitle = run.report().title();
        String fallback = designTitle == null ? name : designTitle;
        String shown = writer.title.isEmpty() ? fallback : writer.title;
        return PdfWriter.write(new PaperDocument(shown, shown + ", " + kind, number(run, kind), paper, writer.items));
    }

    private void cells() {
        boolean opens = true;
        for (CellRun cell : run.cells()) {
            if (cell.cell().kind() == CellKind.MARKDOWN) {
                if (opens) {
                    title = MarkdownPart.of(cell.cell(), 1, true).title();
                }
                CellTags.words(cell.cell()).ifPresent(words -> items.add(new PageItem.Caption(words + ":")));
                items.addAll(MarkdownItems.of(cell.cell(), opens));
            } else if (cell.cell().kind() == CellKind.CODE
                    && !cell.cell().source().isBlank()) {
                code(cell);
            }
            opens = false;
        }
    }

    private void code(CellRun cell) {
        CellTags.words(cell.cell()).ifPresent(words -> items.add(new PageItem.Caption(words + ":")));
        String number = cell.number() == 0 ? "" : Integer.toString(cell.number());
        items.add(new PageItem.Code(number, cell.cell().source().stripTrailing()));
        cell.diagnostics().forEach(told -> items.add(AnswerItems.told(told)));
        cell.answers().forEach(answer -> items.addAll(answers.of(answer)));
    }

    private void numbers() {
        Report report = run.report();
        List<Table> tables = Stream.of(
                        Headlines.parts(report), Headlines.stones(report), Headlines.requirements(report))
                .filter(table -> !table.rows().isEmpty())
                .toList();
        if (!tables.isEmpty()) {
            items.add(new PageItem.Heading("The ring in numbers"));
            Headlines.finger(report).ifPresent(finger -> items.add(new PageItem.Paragraph("Finger: " + finger)));
            tables.forEach(table -> items.addAll(AnswerItems.table(table)));
        }
        // What was told at its cell is not told again without one.
        Set<Diagnostic> told = run.cells().stream()
                .flatMap(cell -> cell.diagnostics().stream())
                .collect(Collectors.toSet());
        report.troubles().stream()
                .filter(trouble -> !told.contains(trouble))
                .forEach(trouble -> items.add(AnswerItems.told(trouble)));
    }

    /** The same for the same notebook. */
    private static long number(NotebookRun run, String kind) {
        try {
            String content = kind + "\n" + run.executed().json();
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
            return ByteBuffer.wrap(digest).getLong();
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }
}
