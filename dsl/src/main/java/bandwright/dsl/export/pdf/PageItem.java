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

    /** Says what the next item is, and stays on its page. */
    record Caption(String text) implements PageItem {}

    /**
     * An entry of a list, or a paragraph that stands further in.
     *
     * @param mark before it, such as a dot or a number; may be empty
     * @param depth how far in, 1 for a list that stands in no other
     */
    record Entry(String mark, String text, int depth) implements PageItem {}

    /**
     * Text that keeps its lines, and as far as letters of different width allow, its columns; a longer line is broken.
     *
     * @param number in the margin beside its first line; may be empty
     */
    record Code(String number, String text) implements PageItem {}

    /** A table with its footnotes; its title is not printed, a heading says it. */
    record Grid(Table table) implements PageItem {}

    /**
     * Pictures side by side, as wide as fits.
     *
     * @param mostMm the widest that each may be, mm
     * @param captions what stands below each; none where the text around says it
     */
    record Pictures(List<Picture> pictures, double mostMm, List<String> captions) implements PageItem {
        public Pictures {
            pictures = List.copyOf(pictures);
            captions = List.copyOf(captions);
        }

        public Pictures(List<Picture> pictures, double mostMm) {
            this(pictures, mostMm, List.of());
        }
    }

    /** A drawing at its scale, as lines and letters. It is for the drawing to fit on the paper. */
    record Plan(Drawing drawing) implements PageItem {}

    /** A line of known length, by which a print shows whether it is in true size. */
    record CheckBar() implements PageItem {}
}
