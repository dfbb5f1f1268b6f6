// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell;

import java.util.Optional;

import bandwright.dsl.Answer;
import bandwright.kernel.display.Displays;
import bandwright.kernel.notebook.Output;

/** Where a cell shows things while it runs, on its own thread; what it gives in the end is its outcome. */
public interface CellConsole {
    /** Shows nothing and knows no answers. */
    CellConsole SILENT = new CellConsole() {};

    /**
     * So much of a long work is done.
     *
     * @param total of how many pieces
     */
    default void working(int done, int total) {}

    /** A piece of text; several pieces may reach the reader together. */
    default void write(Output.Channel channel, String text) {}

    default void show(Output.Display display) {}

    /** Shows an answer before the cell has ended. */
    default void show(Answer answer) {
        show(Displays.display(answer));
    }

    /** Shows something that can be changed later. */
    default void show(String displayId, Output.Display display) {}

    /** Puts something else in the place of all that was shown under an id. */
    default void update(String displayId, Output.Display display) {}

    /**
     * Takes away what the cell has shown.
     *
     * @param wait only when the next thing is shown, so that nothing flickers
     */
    default void clear(boolean wait) {}

    /**
     * Asks the user for a line and waits for it.
     *
     * @param hidden whether what is typed must not be seen
     * @return nothing if the user cannot be asked, or wants the cell to stop
     */
    default Optional<String> ask(String prompt, boolean hidden) {
        return Optional.empty();
    }
}
