// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.Optional;

import bandwright.dsl.view.Chart;
import bandwright.dsl.view.Table;

/**
 * What {@code vary} answers.
 *
 * @param table of all variants
 * @param shown its first rows, as many as a person reads
 * @param chart nothing if no numbers were asked for
 */
public record Varied(Table table, Table shown, Optional<Chart> chart) {
    private static final int MOST_SHOWN = 200;

    static Varied of(Variants variants) {
        Table table = VaryTable.of(variants);
        return new Varied(table, VaryTable.shown(table, MOST_SHOWN), VaryChart.of(variants));
    }
}
