// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Answer;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.Suggestion;
import bandwright.dsl.export.pdf.PageItem;
import bandwright.dsl.export.pdf.Paper;
import bandwright.dsl.view.Picture;
import bandwright.dsl.view.Table;
import bandwright.kernel.display.Decimals;

/** What a cell was answered, as what stands on pages. */
record AnswerItems(Paper paper) {
    /** As wide as a picture of a ring is printed, mm. */
    private static final double PICTURE = 105;

    /** The tallest a drawing may be, so that one fits on a page with what says what it is, mm. */
    private static final double TALLEST = 200;

    List<PageItem> of(Answer answer) {
        if (answer instanceof Answer.Drawn drawn) {
            return drawing(drawn);
        }
        if (answer instanceof Answer.Pictured pictured) {
            return picture(
                    pictured.picture(), AnswerHtml.caption(pictured.picture().alternativeText()));
        }
        if (answer instanceof Answer.Viewed viewed) {
            return picture(
                    viewed.picture(),
                    AnswerHtml.caption(viewed.turntable().summary()) + "; the page for the browser lets you turn it");
        }
        if (answer instanceof Answer.Tabled tabled) {
            return table(tabled.table());
        }
        if (answer instanceof Answer.Varied varied) {
            return table(varied.shown());
        }
        if (answer instanceof Answer.Required) {
            return List.of(new PageItem.Paragraph(answer.plainText()));
        }
        String text = answer.plainText().stripTrailing();
        if (text.isEmpty()) {
            return List.of();
        }
        return List.of(text.contains("\n") ? new PageItem.Code("", text) : new PageItem.Paragraph(text));
    }

    private List<PageItem> drawing(Answer.Drawn drawn) {
        var drawing = drawn.drawing();
        var fitting = drawing.within(paper.usableWidthMm(), TALLEST);
        List<PageItem> items = new ArrayList<>(List.of(new PageItem.Plan(fitting)));
        if (fitting.scale() < drawing.scale()) {
            String percent = Decimals.plain(100 * fitting.scale() / drawing.scale(), 0);
            items.add(new PageItem.Paragraph("Drawn at " + percent + " % of the scale it names, to fit on the paper."));
        }
        return items;
    }

    private static List<PageItem> picture(Picture picture, String caption) {
        return List.of(new PageItem.Pictures(List.of(picture), PICTURE), new PageItem.Paragraph(caption));
    }

    /** A table under its title. */
    static List<PageItem> table(Table table) {
        PageItem grid = new PageItem.Grid(table);
        return table.title().isEmpty() ? List.of(grid) : List.of(new PageItem.Caption(table.title()), grid);
    }

    /** What a cell was told, without the excerpt: the cell stands right above. */
    static PageItem told(Diagnostic diagnostic) {
        StringBuilder text = new StringBuilder(diagnostic.severity().word());
        if (diagnostic.place() != null) {
            text.append(" in line ").append(diagnostic.place().line());
        }
        text.append(": ").append(diagnostic.message());
        append(text, "expected", diagnostic.expected());
        Suggestion suggestion = diagnostic.suggestion();
        append(text, "try", suggestion == null ? null : suggestion.shown());
        return new PageItem.Paragraph(text.toString());
    }

    private static void append(StringBuilder text, String name, @Nullable String value) {
        if (value != null) {
            text.append("; ").append(name).append(": ").append(value.strip());
        }
    }
}
