// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import bandwright.dsl.Answer;
import bandwright.kernel.notebook.NotebookCell;

/** Pieces of the page, for one that is not written to a file: the same words, tables and drawings, and nothing that was stored. */
public final class Fragments {
    private Fragments() {}

    /**
     * An answer.
     *
     * @param prefix sets the ids of a drawing apart from those of all others on the page
     */
    public static String answer(Answer answer, String prefix) {
        return Html.legal(
                answer instanceof Answer.Viewed viewed
                        // The model stands beside the text already; here is its picture.
                        ? AnswerHtml.of(new Answer.Pictured(viewed.picture()), prefix)
                        : AnswerHtml.of(answer, prefix));
    }

    /** @param number of the cell in its notebook, for ids */
    public static String markdown(NotebookCell cell, int number) {
        return Html.legal(MarkdownPart.of(cell, number, false).html());
    }

    /** The style that they are made for. */
    public static String style() {
        return PageFrame.STYLE + TurntableScript.style();
    }

    /** A text of the library of models or of ours, by the name under which modules import it; the page serves no other. */
    public static String module(String specifier) {
        return TurntableScript.module(specifier);
    }
}
