// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;

import bandwright.dsl.explore.Sweeping;
import bandwright.dsl.view.Table;

/**
 * Every combination of some handles of a design, for a catalogue. Rows are numbered, and each is worked out for itself, so any
 * stretch of them can be worked out anywhere, on any thread, and gives the same texts.
 */
public final class Sweep {
    private final Sweeping sweeping;

    Sweep(Sweeping sweeping) {
        this.sweeping = sweeping;
    }

    public long rows() {
        return sweeping.rows();
    }

    /** How many rows that follow one another differ in nothing that changes a shape: metals and prices move fastest. */
    public long sharingShapes() {
        return sweeping.sharingShapes();
    }

    /** What varies, what was asked for, which requirements fail, counted from 1, and why a row has no numbers. */
    public List<Table.Column> columns() {
        return sweeping.columns();
    }

    /** The conditions of the design, in the order in which they are counted. */
    public List<String> requirements() {
        return sweeping.requirements();
    }

    /** What varies in a row, without working it out: the first cells of {@link #row}. */
    public List<String> place(long number) {
        return sweeping.place(number);
    }

    /**
     * The cells of a row, as many as there are columns, each on one line.
     *
     * @param number from 0 to below {@link #rows}
     */
    public List<String> row(long number) {
        return sweeping.row(number);
    }
}
