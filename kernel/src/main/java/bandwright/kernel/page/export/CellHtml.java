// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import bandwright.dsl.diagnostic.HtmlRenderer;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.run.CellRun;

/** A code cell: its number in the margin, its text, and what came of it. */
final class CellHtml {
    private CellHtml() {}

    static String of(CellRun run) {
        boolean wasRun = run.state() != CellState.NOT_RUN;
        String name = wasRun ? "Cell " + run.number() : "Cell that was not run";
        StringBuilder html = new StringBuilder("<section class=\"step\" aria-label=\"")
                .append(name)
                .append("\">\n<p class=\"step-number\">")
                .append(wasRun ? Integer.toString(run.number()) : "not run")
                .append("</p>\n<div class=\"step-body\">\n")
                .append(tagged(run))
                .append("<pre class=\"ring-text\"><code>")
                .append(CodeMarkup.mark(run.cell().source().stripTrailing()))
                .append("</code></pre>\n");
        run.diagnostics()
                .forEach(diagnostic -> html.append("<div class=\"")
                        .append(diagnostic.isError() ? "trouble" : "remark")
                        .append("\">\n")
                        .append(Html.scrolling(HtmlRenderer.render(diagnostic)))
                        .append("</div>\n"));
        int count = 0;
        for (var answer : run.answers()) {
            count++;
            html.append(AnswerHtml.of(answer, "cell-" + run.number() + "-" + count + "-"));
        }
        return html.append("</div>\n</section>\n").toString();
    }

    /** For whom the cell is, where that is not everyone. */
    private static String tagged(CellRun run) {
        return CellTags.words(run.cell())
                .map(words -> "<p class=\"for-whom\">" + words + "</p>\n")
                .orElse("");
    }
}
