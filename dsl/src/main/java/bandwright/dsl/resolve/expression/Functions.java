// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.expression;

import java.util.List;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Argument;
import bandwright.dsl.syntax.Expression;

/** The functions of the language; every other call is a measure. */
public final class Functions {
    /** All words, for suggestions. */
    public static final List<String> WORDS = List.of(
            "min",
            "max",
            "abs",
            "sqrt",
            "sin",
            "cos",
            "tan",
            "round",
            "diameter",
            "circumference",
            "fineness",
            "melting-range",
            "density");

    /** Nearer to a right angle than this in cosine, a tangent is noise. */
    private static final double NO_TANGENT = 1e-12;

    private final Evaluator evaluator;
    private final Scope scope;
    private final SourceText source;

    Functions(Evaluator evaluator, Scope scope, SourceText source) {
        this.evaluator = evaluator;
        this.scope = scope;
        this.source = source;
    }

    Value call(Expression.Call call) {
        String word = call.function().text();
        if (!WORDS.contains(word) || (word.equals("density") && isMeasured(call))) {
            return scope.measure(call, source);
        }
        int most = word.equals("min") || word.equals("max") ? Integer.MAX_VALUE : word.equals("round") ? 2 : 1;
        List<Operand> arguments = arguments(call, most);
        Operand first = arguments.get(0);
        Place place = source.place(call.span());
        return switch (word) {
            case "min", "max" -> extreme(arguments, word.equals("max"));
            case "abs" -> new Value.Amount(absolute(quantity(first)));
            case "sqrt" -> root(first, place);
            case "sin" -> Value.number(StrictMath.sin(radians(first, place, word)));
            case "cos" -> Value.number(StrictMath.cos(radians(first, place, word)));
            case "tan" -> tangent(radians(first, place, word), place);
            case "round" -> rounded(arguments, place);
            case "diameter" -> new Value.Amount(Quantity.millimetres(size(first).diameterMm()));
            case "circumference" ->
                new Value.Amount(Quantity.millimetres(size(first).circumferenceMm()));
            case "fineness" -> fineness(metal(first), place);
            case "melting-range" -> meltingRange(metal(first), place);
            default -> density(first);
        };
    }

    private boolean isMeasured(Expression.Call call) {
        return !call.arguments().isEmpty()
                && call.arguments().get(0).value() instanceof Expression.Reference reference
                && scope.isMeasured(reference.name().text());
    }

    private List<Operand> arguments(Expression.Call call, int most) {
        int count = call.arguments().size();
        String word = call.function().text();
        if (count == 0 || count > most) {
            String wanted = most == 1 ? "one value" : most == 2 ? "one or two values" : "one value or several";
            throw new Fault(Diagnostic.error("wrong-arguments", source.place(call.span()))
                    .with(word, wanted, Integer.toString(count))
                    .build());
        }
        for (Argument argument : call.arguments()) {
            if (argument.name() != null) {
                throw new Fault(Diagnostic.error("named-argument", source.place(argument.span()))
                        .with(word)
                        .suggest(
                                source.place(argument.span()),
                                source.text(argument.value().span()))
                        .build());
            }
        }
        return evaluator.operands(call.arguments().stream().map(Argument::value).toList());
    }

    private static Value extreme(List<Operand> arguments, boolean largest) {
        Operand best = arguments.get(0);
        for (Operand argument : arguments) {
            int order = Comparing.compare(argument, best);
            best = (largest ? order > 0 : order < 0) ? argument : best;
        }
        return best.value();
    }

    private static Quantity absolute(Quantity quantity) {
        return quantity.value() < 0 ? quantity.negate() : quantity;
    }

    private static Value root(Operand operand, Place place) {
        Quantity quantity = quantity(operand);
        if (quantity.value() < 0 || !quantity.dimension().isSquare()) {
            throw new Fault(Diagnostic.error("no-root", operand.place())
                    .with(
                            quantity.value() < 0
                                    ? quantity.toString()
                                    : operand.value().kind())
                    .build());
        }
        return Evaluator.finite(quantity.squareRoot(), place);
    }

    private double radians(Operand operand, Place place, String word) {
        Quantity quantity = quantity(operand);
        if (!quantity.dimension().equals(Dimension.ANGLE)) {
            Diagnostic.Builder fault = Diagnostic.error("angle-wanted", operand.place())
                    .with(word, operand.value().kind())
                    .label(operand.place(), operand.about());
            if (operand.expression() instanceof Expression.NumberLiteral number && number.isBareNumber()) {
                fault.suggest(place, word + "(" + number.text() + " deg)");
            }
            throw new Fault(fault.build());
        }
        return Math.toRadians(quantity.value());
    }

    private static Value tangent(double radians, Place place) {
        if (Math.abs(StrictMath.cos(radians)) < NO_TANGENT) {
            throw new Fault(Diagnostic.error("no-value", place).build());
        }
        return Value.number(StrictMath.tan(radians));
    }

    private static Value rounded(List<Operand> arguments, Place place) {
        Operand first = arguments.get(0);
        if (first.value() instanceof Value.Size size) {
            double step = arguments.size() == 2
                    ? step(arguments.get(1), Dimension.NUMBER)
                    : size.size().system().standardStep();
            return Evaluator.size(
                    new FingerSize(size.size().system(), nearest(size.size().number(), step)), place);
        }
        Quantity quantity = quantity(first);
        if (arguments.size() == 1 && !quantity.dimension().isNumber()) {
            String unit = Unit.shownFor(quantity.dimension()).symbol();
            throw new Fault(Diagnostic.error("step-wanted", first.place())
                    .with(first.value().kind(), unit)
                    .build());
        }
        double step = arguments.size() == 1 ? 1 : step(arguments.get(1), quantity.dimension());
        return Evaluator.finite(
                new Quantity(nearest(quantity.value(), step), quantity.dimension(), quantity.shown()), place);
    }

    private static double step(Operand operand, Dimension dimension) {
        Quantity step = quantity(operand);
        if (!step.dimension().equals(dimension)) {
            throw Evaluator.wrongKind(operand, dimension.words());
        } else if (!(step.value() > 0)) {
            throw new Fault(Diagnostic.error("not-positive", operand.place())
                    .with("a step", step.toString())
                    .build());
        }
        return step.value();
    }

    /** Halves away from zero; what is a half within one part in 10^9 counts as one, so that binary noise decides nothing. */
    private static double nearest(double value, double step) {
        double steps = Math.abs(value) / step;
        double whole = Math.floor(steps + 0.5 + Quantity.EQUAL_WITHIN * Math.max(1, steps));
        return Math.copySign(whole * step, value);
    }

    private static Value fineness(Metal metal, Place place) {
        Integer fineness = metal.fineness();
        if (fineness == null) {
            throw unknown(metal, "fineness", place);
        }
        return Value.number(fineness);
    }

    private static Value meltingRange(Metal metal, Place place) {
        Double solidus = metal.solidusC();
        Double liquidus = metal.liquidusC();
        if (solidus == null && liquidus == null) {
            throw unknown(metal, "melting-range", place);
        }
        String from = solidus == null ? "unknown" : QuantityFormat.number(solidus, 0);
        String to = liquidus == null ? "unknown" : QuantityFormat.number(liquidus, 0);
        String range = from.equals(to) ? from + " °C" : from + " to " + to + " °C";
        return new Value.Words(metal.meltingFromMemory() ? range + ", from memory" : range);
    }

    private static Fault unknown(Metal metal, String word, Place place) {
        return new Fault(Diagnostic.error("not-on-file", place)
                .with(word.replace('-', ' '), metal.name())
                .build());
    }

    private static Value density(Operand operand) {
        double density = operand.value() instanceof Value.StoneValue stone
                ? stone.material().densityGPerCm3()
                : metal(operand).densityGPerCm3();
        return new Value.Amount(new Quantity(density / 1000, Dimension.DENSITY, null));
    }

    private static Quantity quantity(Operand operand) {
        if (operand.value() instanceof Value.Amount amount) {
            return amount.quantity();
        }
        throw Evaluator.wrongKind(operand, "a number or a quantity");
    }

    private static FingerSize size(Operand operand) {
        if (operand.value() instanceof Value.Size size) {
            return size.size();
        }
        throw Evaluator.wrongKind(operand, "a finger size");
    }

    private static Metal metal(Operand operand) {
        if (operand.value() instanceof Value.MetalValue value) {
            return value.metal();
        }
        throw Evaluator.wrongKind(operand, "a metal");
    }
}
