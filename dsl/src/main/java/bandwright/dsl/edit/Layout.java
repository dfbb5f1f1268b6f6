// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

/** Measures of a tidy text. */
final class Layout {
    /** One step inwards. */
    static final String INDENT = "  ";

    /** Between a property and its value, and before the further clauses of a line. */
    static final int COLUMN_GAP = 2;

    static final String CLAUSE_GAP = "   ";

    private Layout() {}
}
