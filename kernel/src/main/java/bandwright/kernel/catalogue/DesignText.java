// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.io.Serializable;
import java.util.List;

import bandwright.dsl.Sweep;
import bandwright.dsl.Workbench;
import bandwright.dsl.source.SourceText;

/**
 * A design as the texts it is made from and the question of a plan, small enough to be sent to any machine and made anew there.
 *
 * @param cells in the order in which they run; it is known that none has an error
 * @param plan the question, in the language; it is known that it can be answered
 */
public record DesignText(List<Cell> cells, String plan) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** @param name how messages call it */
    public record Cell(String id, String name, String text) implements Serializable {
        private static final long serialVersionUID = 1L;
    }

    public DesignText {
        cells = List.copyOf(cells);
    }

    /** The same catalogue as on any other machine. */
    public Sweep sweep() {
        Workbench workbench = Workbench.empty();
        for (Cell cell : cells) {
            workbench = workbench
                    .define(cell.id(), new SourceText(cell.name(), cell.text()))
                    .workbench();
        }
        Sweep sweep = workbench.sweep(new SourceText(Plan.NAME, plan)).sweep();
        if (sweep == null) {
            throw new IllegalStateException("what was a design and a plan elsewhere is none here");
        }
        return sweep;
    }
}
