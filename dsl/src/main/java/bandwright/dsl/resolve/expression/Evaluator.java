// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.expression;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.SizeReading;
import bandwright.dsl.quantity.SizeSystem;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.BinaryOperator;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.UnaryOperator;

/** Works out expressions of one text. Nothing is rounded; a branch that is not taken is not looked at. */
public final class Evaluator implements Expression.Visitor<Value> {
    private final Scope scope;
    private final SourceText source;

    public Evaluator(Scope scope, SourceText source) {
        this.scope = scope;
        this.source = source;
    }

    /** The value; throws the fault that says why there is none. */
    public Value evaluate(Expression expression) {
        return expression.accept(this);
    }

    @Override
    public Value number(Expression.NumberLiteral number) {
        Unit unit = number.unit();
        return new Value.Amount(unit == null ? Quantity.number(number.value()) : Quantity.of(number.value(), unit));
    }

    @Override
    public Value string(Expression.StringLiteral string) {
        return new Value.Words(string.text());
    }

    @Override
    public Value truth(Expression.TruthLiteral truth) {
        return new Value.Truth(truth.value());
    }

    @Override
    public Value size(Expression.SizeLiteral size) {
        String fraction = size.fraction();
        SizeReading reading =
                SizeReading.read(SizeSystem.valueOf(size.system()), size.size(), fraction == null ? "" : fraction);
        if (reading instanceof SizeReading.Accepted accepted) {
            return new Value.Size(accepted.size());
        }
        Diagnostic.Builder fault =
                Diagnostic.error("size-refused", place(size)).with(((SizeReading.Refused) reading).problem());
        String upper = size.size().toUpperCase(Locale.ROOT);
        boolean small = SizeReading.read(SizeSystem.valueOf(size.system()), upper, fraction == null ? "" : fraction)
                instanceof SizeReading.Accepted;
        if (small) {
            fault.suggest(place(size), size.system() + " " + upper + (fraction == null ? "" : " " + fraction));
        }
        throw new Fault(fault.build());
    }

    @Override
    public Value reference(Expression.Reference reference) {
        return scope.value(reference.name(), source);
    }

    @Override
    public Value call(Expression.Call call) {
        return new Functions(this, scope, source).call(call);
    }

    @Override
    public Value unary(Expression.Unary unary) {
        Operand operand = operand(unary.operand());
        if (unary.operator() == UnaryOperator.NOT) {
            return new Value.Truth(!truth(operand));
        } else if (operand.value() instanceof Value.Amount amount) {
            return unary.operator() == UnaryOperator.PLUS
                    ? amount
                    : new Value.Amount(amount.quantity().negate());
        }
        throw wrongKind(operand, "a number or a quantity");
    }

    @Override
    public Value binary(Expression.Binary binary) {
        if (binary.operator() == BinaryOperator.AND || binary.operator() == BinaryOperator.OR) {
            boolean left = truth(operand(binary.left()));
            // The right side is not looked at where the left one decides.
            boolean decided = left == (binary.operator() == BinaryOperator.OR);
            return new Value.Truth(decided ? left : truth(operand(binary.right())));
        }
        List<Operand> both = operands(List.of(binary.left(), binary.right()));
        return new Arithmetic(binary, both.get(0), both.get(1), place(binary)).value();
    }

    @Override
    public Value comparison(Expression.Comparison comparison) {
        List<Expression> values = new ArrayList<>(List.of(comparison.first()));
        comparison.links().forEach(link -> values.add(link.operand()));
        Expression within = comparison.within();
        if (within != null) {
            values.add(within);
        }
        List<Operand> operands = operands(values);
        Optional<Operand> tolerance =
                within == null ? Optional.empty() : Optional.of(operands.get(operands.size() - 1));
        boolean holds = true;
        for (int i = 0; i < comparison.links().size(); i++) {
            // All links are worked out, so that a unit fault in the last does not hide behind a first that fails.
            boolean link = Comparing.holds(
                    comparison.links().get(i).operator(), operands.get(i), operands.get(i + 1), tolerance);
            holds &= link;
        }
        return new Value.Truth(holds);
    }

    @Override
    public Value between(Expression.Between between) {
        List<Operand> all = operands(List.of(between.value(), between.low(), between.high()));
        boolean aboveLow = Comparing.compare(all.get(0), all.get(1)) >= 0;
        boolean belowHigh = Comparing.compare(all.get(0), all.get(2)) <= 0;
        return new Value.Truth(aboveLow && belowHigh);
    }

    @Override
    public Value conditional(Expression.Conditional conditional) {
        return evaluate(truth(operand(conditional.condition())) ? conditional.whenTrue() : conditional.whenFalse());
    }

    @Override
    public Value inUnit(Expression.InUnit inUnit) {
        Operand operand = operand(inUnit.value());
        if (!(operand.value() instanceof Value.Amount amount)) {
            throw wrongKind(operand, "a quantity");
        } else if (!amount.quantity().dimension().equals(inUnit.unit().dimension())) {
            throw new Fault(Diagnostic.error("unit-unfit", place(inUnit))
                    .with(amount.kind(), inUnit.unit().symbol())
                    .label(operand.place(), operand.about())
                    .build());
        }
        return new Value.Amount(amount.quantity().in(inUnit.unit()));
    }

    @Override
    public Value inSystem(Expression.InSystem inSystem) {
        Operand operand = operand(inSystem.value());
        if (operand.value() instanceof Value.Size size) {
            return new Value.Size(size.size().in(SizeSystem.valueOf(inSystem.system())));
        }
        throw wrongKind(operand, "a finger size");
    }

    /** The values of several expressions; the faults of all of them are told. */
    public List<Value> values(List<Expression> expressions) {
        return operands(expressions).stream().map(Operand::value).toList();
    }

    List<Operand> operands(List<Expression> expressions) {
        Faults faults = new Faults();
        List<Operand> operands = new ArrayList<>();
        for (Expression expression : expressions) {
            faults.attempt(() -> operand(expression)).ifPresent(operands::add);
        }
        faults.raise();
        return operands;
    }

    Operand operand(Expression expression) {
        Value value = evaluate(expression);
        return new Operand(expression, value, place(expression), about(expression, value));
    }

    private String about(Expression expression, Value value) {
        Optional<Place> defined = expression instanceof Expression.Reference reference
                ? scope.definedAt(reference.name().text())
                : Optional.empty();
        return defined.map(
                        place -> value.kind() + ", defined in " + place.source().name() + ", line " + place.line())
                .orElse(value.kind());
    }

    private static boolean truth(Operand operand) {
        if (operand.value() instanceof Value.Truth truth) {
            return truth.holds();
        }
        throw wrongKind(operand, "true or false");
    }

    private Place place(Expression expression) {
        return source.place(expression.span());
    }

    static Fault wrongKind(Operand operand, String wanted) {
        return new Fault(Diagnostic.error("wrong-kind", operand.place())
                .with(wanted, operand.value().kind())
                .label(operand.place(), operand.about())
                .build());
    }

    /** The size, unless no finger has it. */
    static Value size(FingerSize size, Place place) {
        size.problem().ifPresent(problem -> {
            throw new Fault(
                    Diagnostic.error("size-refused", place).with(problem).build());
        });
        return new Value.Size(size);
    }

    /** The quantity, unless it is beyond all numbers. */
    static Value finite(Quantity quantity, Place place) {
        if (!Double.isFinite(quantity.value())) {
            throw new Fault(Diagnostic.error("no-value", place).build());
        }
        return new Value.Amount(quantity);
    }
}
