// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.expression;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.syntax.Expression;

/** What to write where two kinds do not fit. */
final class Mismatch {
    private Mismatch() {}

    /** Offers the same number with the unit of the other side, where the number is written out. */
    static void suggest(Diagnostic.Builder diagnostic, Dimension wanted, Operand operand) {
        if (operand.expression() instanceof Expression.NumberLiteral number && isPlain(wanted)) {
            String unit = Unit.shownFor(wanted).symbol();
            diagnostic.suggest(operand.place(), number.text() + (unit.isEmpty() ? "" : " " + unit));
        }
    }

    /** Whether the language can write a unit of that kind behind a number. */
    private static boolean isPlain(Dimension dimension) {
        return dimension.isNumber()
                || Unit.parse(Unit.shownFor(dimension).symbol()).isPresent();
    }
}
