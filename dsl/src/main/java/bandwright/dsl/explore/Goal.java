// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.syntax.BinaryOperator;
import bandwright.dsl.syntax.ComparisonOperator;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Printer;

/** A condition seen as a goal: which values it compares, and by how much it is missed. */
final class Goal {
    /** Missed by all of it: for what is no comparison. */
    private static final double WHOLLY = 1;

    private final Expression condition;
    private final Map<String, Expression> compared = new LinkedHashMap<>();

    Goal(Expression condition) {
        this.condition = condition;
        gather(condition);
    }

    /** All that the condition compares, each once, by its own words. */
    Map<String, Expression> compared() {
        return compared;
    }

    private void gather(Expression expression) {
        if (expression instanceof Expression.Binary binary && isJoint(binary)) {
            gather(binary.left());
            gather(binary.right());
        } else if (expression instanceof Expression.Comparison comparison) {
            operands(comparison).forEach(this::add);
        } else if (expression instanceof Expression.Between between) {
            List.of(between.value(), between.low(), between.high()).forEach(this::add);
        }
    }

    private void add(Expression operand) {
        compared.put(Printer.print(operand), operand);
    }

    private static boolean isJoint(Expression.Binary binary) {
        return binary.operator() == BinaryOperator.AND || binary.operator() == BinaryOperator.OR;
    }

    private static List<Expression> operands(Expression.Comparison comparison) {
        List<Expression> operands = new ArrayList<>(List.of(comparison.first()));
        comparison.links().forEach(link -> operands.add(link.operand()));
        return operands;
    }

    /**
     * By what share of its limit the goal is missed, 0 if it is not; the worst of what must all hold, the best of what need not.
     *
     * @param values of what is compared, by their words
     */
    double missedBy(Map<String, Value> values) {
        return missedBy(condition, values);
    }

    private static double missedBy(Expression expression, Map<String, Value> values) {
        if (expression instanceof Expression.Binary binary && isJoint(binary)) {
            double left = missedBy(binary.left(), values);
            double right = missedBy(binary.right(), values);
            return binary.operator() == BinaryOperator.AND ? Math.max(left, right) : Math.min(left, right);
        } else if (expression instanceof Expression.Comparison comparison) {
            List<Expression> operands = operands(comparison);
            double worst = 0;
            for (int i = 0; i < comparison.links().size(); i++) {
                double share = share(values, operands.get(i), operands.get(i + 1));
                worst = Math.max(worst, missed(comparison.links().get(i).operator(), share));
            }
            return worst;
        } else if (expression instanceof Expression.Between between) {
            return Math.max(
                    missed(ComparisonOperator.AT_LEAST, share(values, between.value(), between.low())),
                    missed(ComparisonOperator.AT_MOST, share(values, between.value(), between.high())));
        }
        return WHOLLY;
    }

    /** How much more the first is than the second, as a share of the second. */
    private static double share(Map<String, Value> values, Expression first, Expression second) {
        Double left = number(values.get(Printer.print(first)));
        Double right = number(values.get(Printer.print(second)));
        if (left == null || right == null) {
            return Double.NaN;
        }
        return (left - right) / (Math.abs(right) > 0 ? Math.abs(right) : 1);
    }

    private static double missed(ComparisonOperator operator, double share) {
        if (Double.isNaN(share)) {
            return WHOLLY;
        }
        return switch (operator) {
            case LESS, AT_MOST -> Math.max(0, share);
            case MORE, AT_LEAST -> Math.max(0, -share);
            case EQUAL -> Math.abs(share);
            case UNEQUAL -> 0;
        };
    }

    private static @Nullable Double number(@Nullable Value value) {
        if (value instanceof Value.Amount amount) {
            return amount.quantity().value();
        }
        return value instanceof Value.Size size ? (Double) size.size().circumferenceMm() : null;
    }
}
