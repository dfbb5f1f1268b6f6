// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell;

import java.util.List;

import bandwright.dsl.source.SourceText;

/**
 * The languages of a notebook's cells. Each notebook has its own: a language may remember what cells did.
 *
 * @param others those that announce themselves in a cell's first line; whatever none of them reads is ring text
 */
public record CellLanguages(List<CellLanguage> others) implements AutoCloseable {
    private static final CellLanguage RING = new RingCells();

    public CellLanguages {
        others = List.copyOf(others);
    }

    /** A cell is no longer in the notebook. */
    public void forget(String cellId) {
        others.forEach(language -> language.forget(cellId));
    }

    /** The user wants whatever cell runs to stop. */
    public void interrupted() {
        others.forEach(CellLanguage::interrupted);
    }

    @Override
    public void close() {
        others.forEach(CellLanguage::close);
    }

    /** The language of a cell. */
    public CellLanguage of(SourceText text) {
        return others.stream()
                .filter(language -> language.reads(text))
                .findFirst()
                .orElse(RING);
    }
}
