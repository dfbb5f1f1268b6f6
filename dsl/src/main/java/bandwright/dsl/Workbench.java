// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import bandwright.dsl.source.SourceText;
import java.util.List;

/**
 * A design in progress. Immutable: running a cell gives another workbench.
 *
 * <pre>{@code
 * Outcome outcome = Workbench.empty().run("cell-1", new SourceText("cell 1", text));
 * }</pre>
 */
public final class Workbench {
    private static final Workbench EMPTY = new Workbench();

    private Workbench() {}

    public static Workbench empty() {
        return EMPTY;
    }

    /**
     * Runs a cell's text. Pure: nothing but the returned outcome changes.
     *
     * @param cellId who the cell is; running the same cell again replaces what it made
     * @param text the name under which errors speak of the cell, and its text
     */
    public Outcome run(String cellId, SourceText text) {
        return new Outcome(this, List.of(), List.of());
    }

    /** Takes away all that a cell made. */
    public Workbench without(String cellId) {
        return this;
    }

    /** The numbers of the design as it stands. */
    public Report report() {
        return new Report(null, null, List.of(), List.of(), List.of(), List.of(), "");
    }

    /**
     * The design with one definition's value replaced, as from a command line: {@code finger-size} and {@code US 8}. An unknown
     * name or a value of another kind is an error of the outcome.
     */
    public Outcome withValue(String name, String expression) {
        return new Outcome(this, List.of(), List.of());
    }
}
