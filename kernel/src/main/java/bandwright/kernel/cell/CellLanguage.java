// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell;

import java.util.Optional;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.edit.Completeness;
import bandwright.dsl.edit.Completion;
import bandwright.dsl.edit.Documentation;
import bandwright.dsl.source.SourceText;

/** A language in which cells may be written. All cells of a notebook share one design, whatever language they are in. */
public interface CellLanguage extends AutoCloseable {
    /** Whether a cell is written in it, by its first line. */
    boolean reads(SourceText text);

    /**
     * Runs a cell. What the user did wrong is told in the outcome. The calling thread is interrupted when the user wants the cell
     * to stop; whoever does not heed this is waited for no longer than a moment, and its outcome then counts for nothing.
     *
     * @param cellId who the cell is; running the same cell again replaces what it made
     */
    Outcome run(Workbench workbench, String cellId, SourceText text, CellConsole console);

    /** As {@link #run}, but without answers to what the cell asks. */
    Outcome define(Workbench workbench, String cellId, SourceText text);

    /**
     * What a cell asked when it ran last, as statements of ring text: for telling when what it has shown no longer holds.
     *
     * @param text the cell; it is its own questions where nothing else is said
     */
    default SourceText questions(String cellId, SourceText text) {
        return text;
    }

    /** A cell is no longer in the notebook. */
    default void forget(String cellId) {}

    /** The user wants whatever cell runs to stop; from any thread. For what a cell of another language has called. */
    default void interrupted() {}

    /** Gives back what the language holds. */
    @Override
    default void close() {}

    /** Words that can come next at an offset in code points. */
    Completion completion(Workbench workbench, SourceText text, int offset);

    /** What the word at an offset means, if anything is known about it. */
    Optional<Documentation> documentation(Workbench workbench, SourceText text, int offset);

    /** Whether the text can be run as it is; nothing if there is no telling. */
    Optional<Completeness> completeness(SourceText text);
}
