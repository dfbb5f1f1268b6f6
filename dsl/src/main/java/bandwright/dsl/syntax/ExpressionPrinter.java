// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

/** The canonical text of values, with no more parentheses than they need. */
final class ExpressionPrinter implements Expression.Visitor<String> {
    /** How tightly an expression holds together, loosest first. */
    private enum Level {
        CONDITIONAL,
        OR,
        AND,
        NOT,
        COMPARISON,
        SHOWN_IN,
        SUM,
        PRODUCT,
        SIGN,
        POWER,
        WHOLE
    }

    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

    private final Function<Expression, Optional<String>> instead;

    /** @param instead what to write in place of an expression, where it says so */
    ExpressionPrinter(Function<Expression, Optional<String>> instead) {
        this.instead = instead;
    }

    ExpressionPrinter() {
        this(expression -> Optional.empty());
    }

    /** Where anything may stand. */
    String print(Expression expression) {
        return instead.apply(expression).orElseGet(() -> expression.accept(this));
    }

    /** Where only a calculated value may stand: comparisons and conditions in parentheses. */
    String amount(Expression expression) {
        return at(Level.SHOWN_IN, expression);
    }

    String arguments(List<Argument> arguments) {
        return arguments.stream().map(this::argument).collect(Collectors.joining(", ", "(", ")"));
    }

    private String argument(Argument argument) {
        Name name = argument.name();
        return (name == null ? "" : name + ": ") + print(argument.value());
    }

    private String at(Level least, Expression expression) {
        String text = print(expression);
        return level(expression).compareTo(least) < 0 ? "(" + text + ")" : text;
    }

    private static Level level(Expression expression) {
        if (expression instanceof Expression.Conditional) {
            return Level.CONDITIONAL;
        } else if (expression instanceof Expression.Comparison || expression instanceof Expression.Between) {
            return Level.COMPARISON;
        } else if (expression instanceof Expression.InUnit || expression instanceof Expression.InSystem) {
            return Level.SHOWN_IN;
        } else if (expression instanceof Expression.Unary unary) {
            return unary.operator() == UnaryOperator.NOT ? Level.NOT : Level.SIGN;
        } else if (expression instanceof Expression.Binary binary) {
            return level(binary.operator());
        } else {
            return Level.WHOLE;
        }
    }

    private static Level level(BinaryOperator operator) {
        return switch (operator) {
            case POWER -> Level.POWER;
            case MULTIPLY, DIVIDE -> Level.PRODUCT;
            case ADD, SUBTRACT -> Level.SUM;
            case AND -> Level.AND;
            case OR -> Level.OR;
        };
    }

    /** What the right operand must hold together by: equals are grouped from the left. */
    private static Level right(BinaryOperator operator) {
        return switch (operator) {
            case POWER, MULTIPLY, DIVIDE -> Level.SIGN;
            case ADD, SUBTRACT -> Level.PRODUCT;
            case AND -> Level.NOT;
            case OR -> Level.AND;
        };
    }

    @Override
    public String number(Expression.NumberLiteral number) {
        return number.unit() == null
                ? number.text()
                : number.text() + " " + number.unit().symbol();
    }

    @Override
    public String string(Expression.StringLiteral string) {
        return "\"" + string.text() + "\"";
    }

    @Override
    public String truth(Expression.TruthLiteral truth) {
        return Boolean.toString(truth.value());
    }

    @Override
    public String size(Expression.SizeLiteral size) {
        return size.system() + " " + size.size() + (size.fraction() == null ? "" : " " + size.fraction());
    }

    @Override
    public String reference(Expression.Reference reference) {
        return reference.name().text();
    }

    @Override
    public String call(Expression.Call call) {
        return call.function() + arguments(call.arguments());
    }

    @Override
    public String unary(Expression.Unary unary) {
        if (unary.operator() == UnaryOperator.NOT) {
            return "not " + at(Level.NOT, unary.operand());
        }
        boolean sign = unary.operand() instanceof Expression.Unary;
        return unary.operator().symbol() + (sign ? " " : "") + at(Level.SIGN, unary.operand());
    }

    @Override
    public String binary(Expression.Binary binary) {
        Level level = level(binary.operator());
        if (binary.operator() == BinaryOperator.POWER) {
            // A unit would take the power for its own: (5 mm)^2 is not 5 mm^2.
            boolean unit = binary.left() instanceof Expression.NumberLiteral number && number.unit() != null;
            String base = unit ? "(" + print(binary.left()) + ")" : at(Level.WHOLE, binary.left());
            return base + "^" + at(Level.SIGN, binary.right());
        }
        String right = at(right(binary.operator()), binary.right());
        // After a slash three capital letters would be a currency.
        boolean currency = binary.operator() == BinaryOperator.DIVIDE
                && CURRENCY.matcher(right).matches();
        return at(level, binary.left())
                + " "
                + binary.operator().symbol()
                + " "
                + (currency ? "(" + right + ")" : right);
    }

    @Override
    public String comparison(Expression.Comparison comparison) {
        StringBuilder text = new StringBuilder(amount(comparison.first()));
        for (Expression.Link link : comparison.links()) {
            text.append(' ').append(link.operator().symbol()).append(' ').append(amount(link.operand()));
        }
        return text.append(optional(" within ", comparison.within())).toString();
    }

    @Override
    public String between(Expression.Between between) {
        return amount(between.value()) + " between " + amount(between.low()) + " and " + amount(between.high());
    }

    @Override
    public String conditional(Expression.Conditional conditional) {
        return "if " + print(conditional.condition()) + " then " + print(conditional.whenTrue()) + " else "
                + print(conditional.whenFalse());
    }

    @Override
    public String inUnit(Expression.InUnit inUnit) {
        return amount(inUnit.value()) + " in " + inUnit.unit().symbol();
    }

    @Override
    public String inSystem(Expression.InSystem inSystem) {
        return amount(inSystem.value()) + " in " + inSystem.system();
    }

    /** A word and a calculated value, or nothing. */
    String optional(String word, @Nullable Expression amount) {
        return amount == null ? "" : word + amount(amount);
    }
}
