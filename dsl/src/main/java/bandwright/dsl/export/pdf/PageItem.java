// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.pdf;

import java.util.List;

import bandwright.dsl.view.Picture;
import bandwright.dsl.view.Table;
import bandwright.dsl.view.drawing.Drawing;

/** What stands on pages, from the top down. */
public sealed interface PageItem {
    /** Opens a part of the sheet; it stays with what follows, and readers list it beside the pages. */
    record Heading(String text) implements PageItem {}

    /** Text, broken into lines. */
    record Paragraph(String text) implements PageItem {}

    /** A table with its footnotes; its title is not printed, a heading says it. */
    record Grid(Table table) implements PageItem {}

    /** Pictures side by side, as wide as fits. */
    record Pictures(List<Picture> pictures) implements PageItem {
        public Pictures {
            pictures = List.copyOf(pictures);
        }
    }

    /** A drawing at its scale, as lines and letters. It is for the drawing to fit on the paper. */
    record Plan(Drawing drawing) implements PageItem {}

    /** A line of known length, by which a print shows whether it is in true size. */
    record CheckBar() implements PageItem {}
}
