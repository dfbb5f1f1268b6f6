// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.Answer;
import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.run.CellRun;
import bandwright.kernel.run.NotebookRun;

/**
 * An executed notebook as one HTML file. The file is well-formed XML too, holds its own style sheet and pictures, has no
 * script but the one that turns models, where there are any, and forbids itself to load anything. It shows what this run gave; outputs stored earlier are not trusted and not
 * shown.
 */
public final class PageWriter {
    private final List<Heading> headings = new ArrayList<>();
    private final StringBuilder body = new StringBuilder();
    private String title = "";

    private PageWriter() {}

    /**
     * The whole file.
     *
     * @param name what the page is called where the notebook gives no title
     */
    public static String write(NotebookRun run, String name) {
        PageWriter writer = new PageWriter();
        writer.cells(run.cells());
        return writer.document(run, name);
    }

    private void cells(List<CellRun> cells) {
        int number = 0;
        boolean opens = true;
        for (CellRun run : cells) {
            number++;
            CellKind kind = run.cell().kind();
            if (kind == CellKind.MARKDOWN) {
                MarkdownPart part = MarkdownPart.of(run.cell(), number, opens);
                title = part.title().isEmpty() ? title : part.title();
                headings.addAll(part.headings());
                body.append("<div class=\"prose\">\n").append(part.html()).append("</div>\n");
            } else if (kind == CellKind.CODE && !run.cell().source().isBlank()) {
                body.append(CellHtml.of(run));
            }
            opens = false;
        }
    }

    private static boolean turns(NotebookRun run) {
        return run.cells().stream().flatMap(cell -> cell.answers().stream()).anyMatch(Answer.Viewed.class::isInstance);
    }

    private String document(NotebookRun run, String name) {
        boolean turns = turns(run);
        String designTitle = run.report().title();
        String fallback = designTitle == null ? name : designTitle;
        String shown = title.isEmpty() ? fallback : title;
        String numbers = NumbersHtml.of(run.report());
        if (!numbers.isEmpty()) {
            headings.add(new Heading(2, "numbers", "The ring in numbers"));
        }
        return PageFrame.of(
                shown,
                contents(),
                body + numbers,
                "Written by Bandwright from the text above; the same text gives the same page.",
                turns);
    }

    /** Headings of the second and third level; a single one needs no list. */
    private String contents() {
        StringBuilder list = new StringBuilder();
        int count = 0;
        for (Heading heading : headings) {
            if (heading.level() <= 3) {
                count++;
                list.append("<li class=\"level-").append(heading.level()).append("\"><a href=\"#");
                list.append(heading.id()).append("\">").append(Html.escape(heading.text()));
                list.append("</a></li>\n");
            }
        }
        return count < 2 ? "" : "<nav aria-label=\"Contents\">\n<ol>\n" + list + "</ol>\n</nav>\n";
    }
}
