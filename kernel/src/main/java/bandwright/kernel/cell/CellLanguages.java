// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell;

import java.util.List;

import bandwright.dsl.source.SourceText;

/**
 * The languages of a notebook's cells.
 *
 * @param others those that announce themselves in a cell's first line; whatever none of them reads is ring text
 */
public record CellLanguages(List<CellLanguage> others) {
    /** All there are. */
    public static final CellLanguages ALL = new CellLanguages(List.of(new JavaCells()));

    private static final CellLanguage RING = new RingCells();

    public CellLanguages {
        others = List.copyOf(others);
    }

    /** The language of a cell. */
    public CellLanguage of(SourceText text) {
        return others.stream()
                .filter(language -> language.reads(text))
                .findFirst()
                .orElse(RING);
    }
}
