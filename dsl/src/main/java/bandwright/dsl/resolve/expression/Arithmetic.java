// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.expression;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.source.Place;
import bandwright.dsl.syntax.BinaryOperator;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Printer;

/** One operation of two values, units checked. */
record Arithmetic(Expression.Binary binary, Operand left, Operand right, Place place) {
    private static final String AMOUNT = "a number or a quantity";
    /** Beyond this no kind means anything, and powers of powers would run out of whole numbers. */
    private static final int HIGHEST_POWER = 12;

    Value value() {
        boolean sum = binary.operator() == BinaryOperator.ADD || binary.operator() == BinaryOperator.SUBTRACT;
        if (sum && (left.value() instanceof Value.Size || right.value() instanceof Value.Size)) {
            return sizes();
        }
        Quantity a = quantity(left);
        Quantity b = quantity(right);
        return switch (binary.operator()) {
            case ADD -> finite(fitting(a, b).plus(b));
            case SUBTRACT -> finite(fitting(a, b).minus(b));
            case MULTIPLY -> finite(mixing(a, b, b.dimension()).times(b));
            case DIVIDE -> quotient(a, b);
            case POWER -> power(a, b);
            case AND, OR -> throw new IllegalStateException("no arithmetic: " + binary.operator());
        };
    }

    private Value sizes() {
        boolean minus = binary.operator() == BinaryOperator.SUBTRACT;
        if (left.value() instanceof Value.Size first && right.value() instanceof Value.Size second) {
            if (!minus) {
                throw mismatch("added");
            } else if (first.size().system() != second.size().system()) {
                throw new Fault(Diagnostic.error("two-systems", left.place())
                        .with(first.text(), second.text())
                        .label(left.place(), left.about())
                        .label(right.place(), right.about())
                        .build());
            }
            return Value.number(first.size().minus(second.size()));
        } else if (left.value() instanceof Value.Size size) {
            double steps = steps(right);
            FingerSize moved = minus ? size.size().minus(steps) : size.size().plus(steps);
            return Evaluator.size(moved, place);
        } else if (minus) {
            throw mismatch("subtracted");
        }
        return Evaluator.size(((Value.Size) right.value()).size().plus(steps(left)), place);
    }

    private double steps(Operand operand) {
        if (operand.value() instanceof Value.Amount amount
                && amount.quantity().dimension().isNumber()
                && !isPercent(operand.expression())) {
            return amount.quantity().value();
        }
        throw mismatch(binary.operator() == BinaryOperator.ADD ? "added" : "subtracted");
    }

    private Quantity fitting(Quantity a, Quantity b) {
        boolean add = binary.operator() == BinaryOperator.ADD;
        if (isPercent(right.expression()) && !a.dimension().isNumber()) {
            throw percent(add);
        } else if (!a.fits(b)) {
            throw mismatch(add ? "added" : "subtracted");
        }
        return a;
    }

    private Fault percent(boolean add) {
        Expression.NumberLiteral share = (Expression.NumberLiteral) right.expression();
        double hundredth = add ? 100 + share.value() : 100 - share.value();
        String number = QuantityFormat.number(hundredth, 9);
        Expression factor = new Expression.NumberLiteral(number, hundredth, Unit.PERCENT, share.span());
        Expression product = new Expression.Binary(BinaryOperator.MULTIPLY, binary.left(), factor, binary.span());
        return new Fault(Diagnostic.error("percent-of-nothing", right.place())
                .with(add ? "added to" : "subtracted from", left.value().kind())
                .label(left.place(), left.about())
                .label(right.place(), "a plain number, " + right.value().text())
                .suggest(place, Printer.print(product))
                .build());
    }

    private Fault mismatch(String done) {
        Diagnostic.Builder mismatch = Diagnostic.error("unit-mismatch", left.place())
                .with(left.value().kind(), right.value().kind(), done)
                .label(left.place(), left.about())
                .label(right.place(), right.about());
        if (left.value() instanceof Value.Amount amount) {
            Mismatch.suggest(mismatch, amount.quantity().dimension(), right);
        }
        return new Fault(mismatch.build());
    }

    private Quantity mixing(Quantity a, Quantity b, Dimension other) {
        if (!a.dimension().mixesWith(other)) {
            throw new Fault(Diagnostic.error("currencies-mixed", left.place())
                    .with(a.dimension().words(), b.dimension().words())
                    .label(left.place(), left.about())
                    .label(right.place(), right.about())
                    .build());
        }
        return a;
    }

    private Value quotient(Quantity a, Quantity b) {
        if (b.value() == 0) {
            throw new Fault(Diagnostic.error("divided-by-zero", right.place()).build());
        }
        return finite(mixing(a, b, b.dimension()).dividedBy(b));
    }

    private Value power(Quantity base, Quantity exponent) {
        if (!exponent.dimension().isNumber()) {
            throw Evaluator.wrongKind(right, "a plain number");
        }
        double times = exponent.value();
        if (base.dimension().isNumber()) {
            return finite(Quantity.number(StrictMath.pow(base.value(), times)));
        } else if (times == 0.5 && base.dimension().isSquare()) {
            return finite(base.squareRoot());
        } else if (times != Math.rint(times) || Math.abs(times) > HIGHEST_POWER) {
            throw new Fault(Diagnostic.error("power-of-quantity", right.place())
                    .with(base.dimension().words(), Integer.toString(HIGHEST_POWER))
                    .build());
        }
        return finite(base.power((int) times));
    }

    private Value finite(Quantity quantity) {
        return Evaluator.finite(quantity, place);
    }

    private static boolean isPercent(Expression expression) {
        return expression instanceof Expression.NumberLiteral literal && Unit.PERCENT.equals(literal.unit());
    }

    private static Quantity quantity(Operand operand) {
        if (operand.value() instanceof Value.Amount amount) {
            return amount.quantity();
        }
        throw Evaluator.wrongKind(operand, AMOUNT);
    }
}
