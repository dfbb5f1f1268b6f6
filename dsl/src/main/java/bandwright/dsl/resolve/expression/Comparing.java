// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.expression;

import java.util.Optional;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.syntax.ComparisonOperator;

/** Comparisons. Equal means within one part in 10^9, unless the person says within what. */
final class Comparing {
    private Comparing() {}

    static boolean holds(ComparisonOperator operator, Operand left, Operand right, Optional<Operand> within) {
        boolean ordered = operator != ComparisonOperator.EQUAL && operator != ComparisonOperator.UNEQUAL;
        int order = order(left, right, ordered, within);
        return switch (operator) {
            case EQUAL -> order == 0;
            case UNEQUAL -> order != 0;
            case LESS -> order < 0;
            case AT_MOST -> order <= 0;
            case MORE -> order > 0;
            case AT_LEAST -> order >= 0;
        };
    }

    /** Below 0, 0 or above 0 as the left is less, equal or more. */
    static int compare(Operand left, Operand right) {
        return order(left, right, true, Optional.empty());
    }

    private static int order(Operand left, Operand right, boolean ordered, Optional<Operand> within) {
        if (left.value() instanceof Value.Amount a && right.value() instanceof Value.Amount b) {
            if (!a.quantity().fits(b.quantity())) {
                throw mismatch(left, right);
            }
            return withTolerance(a.quantity(), b.quantity(), within);
        } else if (left.value() instanceof Value.Size a && right.value() instanceof Value.Size b) {
            return withTolerance(
                    Quantity.millimetres(a.size().circumferenceMm()),
                    Quantity.millimetres(b.size().circumferenceMm()),
                    within);
        } else if (!left.value().getClass().equals(right.value().getClass())) {
            throw mismatch(left, right);
        } else if (ordered || within.isPresent()) {
            throw new Fault(Diagnostic.error("no-order", left.place())
                    .with(left.value().kind())
                    .label(left.place(), left.about())
                    .label(right.place(), right.about())
                    .build());
        }
        return left.value().text().equals(right.value().text()) ? 0 : 1;
    }

    private static int withTolerance(Quantity a, Quantity b, Optional<Operand> within) {
        if (within.isEmpty()) {
            return a.compare(b);
        } else if (!(within.get().value() instanceof Value.Amount tolerance)
                || !tolerance.quantity().fits(a)) {
            throw Evaluator.wrongKind(within.get(), a.dimension().words());
        } else {
            double difference = Math.abs(a.value() - b.value());
            Quantity apart = new Quantity(difference, a.dimension(), null);
            return apart.compare(tolerance.quantity()) <= 0 ? 0 : Double.compare(a.value(), b.value());
        }
    }

    private static Fault mismatch(Operand left, Operand right) {
        Diagnostic.Builder mismatch = Diagnostic.error("unit-mismatch", left.place())
                .with(left.value().kind(), right.value().kind(), "compared")
                .label(left.place(), left.about())
                .label(right.place(), right.about());
        if (left.value() instanceof Value.Amount amount) {
            Mismatch.suggest(mismatch, amount.quantity().dimension(), right);
        }
        return new Fault(mismatch.build());
    }
}
