// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.List;

import bandwright.dsl.Answer;
import bandwright.dsl.Comparison;
import bandwright.dsl.view.Contrast;
import bandwright.dsl.view.Table;

/** Two designs compared, as one page without a script. */
public final class ComparisonPage {
    private ComparisonPage() {}

    /** @param remarks what a reader should know before the figures */
    public static String write(Comparison comparison, List<String> remarks) {
        Contrast contrast = comparison.contrast();
        StringBuilder main = new StringBuilder(paragraph(contrast.summary()));
        remarks.forEach(remark -> main.append("<div class=\"remark\">\n")
                .append(paragraph(remark))
                .append("</div>\n"));
        Answer.Drawn overlay = comparison.overlay();
        if (overlay != null) {
            main.append(AnswerHtml.of(overlay, "overlay-"));
        }
        for (Table table : contrast.tables()) {
            main.append(TableHtml.of(table));
        }
        return PageFrame.of(
                contrast.left() + " and " + contrast.right(),
                "",
                main.toString(),
                "Written by Bandwright; the same two texts give the same page.",
                false);
    }

    private static String paragraph(String text) {
        return "<p>" + Html.escape(text) + "</p>\n";
    }
}
