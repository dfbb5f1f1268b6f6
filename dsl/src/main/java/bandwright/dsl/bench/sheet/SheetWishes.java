// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench.sheet;

import java.util.List;

import bandwright.dsl.export.pdf.Paper;
import bandwright.dsl.material.Metal;
import bandwright.dsl.pattern.Allowances;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;

/**
 * What a text asks of its sheet.
 *
 * @param metals in which the parts are weighed beside their own
 * @param spares stones to buy beyond those set, as {@link bandwright.dsl.measure.Spares} reads it
 */
public record SheetWishes(Paper paper, List<Metal> metals, Quantity spares, Allowances allowances) {
    /** Of small stones some break or do not match: common practice, no source. */
    public static final Quantity USUAL_SPARES = Quantity.of(5, Unit.PERCENT).in(Unit.PERCENT);

    public SheetWishes {
        metals = List.copyOf(metals);
    }
}
