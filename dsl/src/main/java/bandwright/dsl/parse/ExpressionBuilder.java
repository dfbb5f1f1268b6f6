// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;
import java.util.Optional;

import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.parse.antlr.BandParserBaseVisitor;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.syntax.Argument;
import bandwright.dsl.syntax.BinaryOperator;
import bandwright.dsl.syntax.ComparisonOperator;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.UnaryOperator;

/** Values: what is true, what is compared, what is calculated. */
final class ExpressionBuilder extends BandParserBaseVisitor<Expression> {
    private final Report report;

    ExpressionBuilder(Report report) {
        this.report = report;
    }

    /** The value of a part that may be missing. */
    @Nullable
    Expression optional(@Nullable ParserRuleContext tree) {
        return tree == null ? null : visit(tree);
    }

    List<Expression> all(List<? extends ParserRuleContext> trees) {
        return Trees.list(trees, this::visit);
    }

    List<Argument> arguments(List<BandParser.ArgumentContext> trees) {
        return Trees.list(trees, tree -> {
            Name name = tree.name() == null ? null : Trees.name(tree.name());
            return new Argument(name, visit(tree.expression()), Trees.span(tree));
        });
    }

    // --- what is true ---

    @Override
    public Expression visitNegation(BandParser.NegationContext tree) {
        return new Expression.Unary(UnaryOperator.NOT, visit(tree.expression()), Trees.span(tree));
    }

    @Override
    public Expression visitConjunction(BandParser.ConjunctionContext tree) {
        return binary(BinaryOperator.AND, tree.left, tree.right, tree);
    }

    @Override
    public Expression visitDisjunction(BandParser.DisjunctionContext tree) {
        return binary(BinaryOperator.OR, tree.left, tree.right, tree);
    }

    @Override
    public Expression visitConditional(BandParser.ConditionalContext tree) {
        return new Expression.Conditional(
                visit(tree.condition), visit(tree.whenTrue), visit(tree.whenFalse), Trees.span(tree));
    }

    @Override
    public Expression visitTruth(BandParser.TruthContext tree) {
        return new Expression.TruthLiteral(tree.truth.getType() == BandParser.TRUE, Trees.span(tree));
    }

    // --- what is compared ---

    @Override
    public Expression visitChain(BandParser.ChainContext tree) {
        List<Expression.Link> links = Trees.list(
                tree.link(),
                link -> new Expression.Link(comparison(link.operator), visit(link.amount()), Trees.span(link)));
        return new Expression.Comparison(visit(tree.first), links, optional(tree.within), Trees.span(tree));
    }

    @Override
    public Expression visitBetween(BandParser.BetweenContext tree) {
        return new Expression.Between(visit(tree.value), visit(tree.low), visit(tree.high), Trees.span(tree));
    }

    private static ComparisonOperator comparison(Token operator) {
        return switch (operator.getType()) {
            case BandParser.EQ -> ComparisonOperator.EQUAL;
            case BandParser.NE -> ComparisonOperator.UNEQUAL;
            case BandParser.LT -> ComparisonOperator.LESS;
            case BandParser.LE -> ComparisonOperator.AT_MOST;
            case BandParser.GT -> ComparisonOperator.MORE;
            case BandParser.GE -> ComparisonOperator.AT_LEAST;
            default -> throw new IllegalStateException("no comparison: " + operator.getText());
        };
    }

    // --- what is calculated ---

    @Override
    public Expression visitSuperscript(BandParser.SuperscriptContext tree) {
        String exponent = tree.SUPERSCRIPT().getText().equals("²") ? "2" : "3";
        Expression literal = new Expression.NumberLiteral(
                exponent,
                Double.parseDouble(exponent),
                null,
                Report.span(tree.SUPERSCRIPT().getSymbol()));
        return new Expression.Binary(BinaryOperator.POWER, visit(tree.base), literal, Trees.span(tree));
    }

    @Override
    public Expression visitPower(BandParser.PowerContext tree) {
        return binary(BinaryOperator.POWER, tree.base, tree.exponent, tree);
    }

    @Override
    public Expression visitSign(BandParser.SignContext tree) {
        UnaryOperator operator =
                tree.operator.getType() == BandParser.MINUS ? UnaryOperator.NEGATE : UnaryOperator.PLUS;
        return new Expression.Unary(operator, visit(tree.amount()), Trees.span(tree));
    }

    @Override
    public Expression visitProduct(BandParser.ProductContext tree) {
        boolean times = tree.operator.getType() == BandParser.STAR;
        return binary(times ? BinaryOperator.MULTIPLY : BinaryOperator.DIVIDE, tree.left, tree.right, tree);
    }

    @Override
    public Expression visitSum(BandParser.SumContext tree) {
        boolean plus = tree.operator.getType() == BandParser.PLUS;
        return binary(plus ? BinaryOperator.ADD : BinaryOperator.SUBTRACT, tree.left, tree.right, tree);
    }

    @Override
    public Expression visitShownIn(BandParser.ShownInContext tree) {
        Expression value = visit(tree.amount());
        if (tree.SYSTEM() != null) {
            return new Expression.InSystem(value, tree.SYSTEM().getText(), Trees.span(tree));
        }
        boolean weights = value instanceof Expression.Reference reference
                && reference.name().text().equals(Words.spelling(BandParser.WEIGHTS));
        if (weights && tree.currency != null) {
            report.add(Habits.weightsInOne(report.place(tree.currency)));
            return value;
        }
        Unit unit = tree.unit() != null ? unit(tree.unit()) : currency(tree.currency);
        return unit == null ? value : new Expression.InUnit(value, unit, Trees.span(tree));
    }

    @Override
    public Expression visitCall(BandParser.CallContext tree) {
        return new Expression.Call(Trees.name(tree.function), arguments(tree.argument()), Trees.span(tree));
    }

    @Override
    public Expression visitReference(BandParser.ReferenceContext tree) {
        return new Expression.Reference(Trees.name(tree.part()), Trees.span(tree));
    }

    @Override
    public Expression visitGroup(BandParser.GroupContext tree) {
        return visit(tree.expression());
    }

    private Expression binary(
            BinaryOperator operator, ParserRuleContext left, ParserRuleContext right, ParserRuleContext tree) {
        return new Expression.Binary(operator, visit(left), visit(right), Trees.span(tree));
    }

    // --- what is written out ---

    @Override
    public Expression visitNumber(BandParser.NumberContext tree) {
        Token token = tree.NUMBER().getSymbol();
        Unit unit = tree.unit() == null ? null : unit(tree.unit());
        String text = Numbers.plain(token.getText());
        return new Expression.NumberLiteral(text, value(text, token), unit, Trees.span(tree));
    }

    @Override
    public Expression visitString(BandParser.StringContext tree) {
        return new Expression.StringLiteral(Trees.text(tree.STRING().getSymbol()), Trees.span(tree));
    }

    @Override
    public Expression visitNumberedSize(BandParser.NumberedSizeContext tree) {
        Token number = tree.NUMBER().getSymbol();
        String text = Numbers.plain(number.getText());
        value(text, number);
        return new Expression.SizeLiteral(
                tree.SYSTEM().getText(), Numbers.whole(text), Numbers.fraction(text), Trees.span(tree));
    }

    @Override
    public Expression visitLetteredSize(BandParser.LetteredSizeContext tree) {
        String fraction = null;
        if (tree.NUMBER() != null) {
            fraction = Numbers.plain(tree.NUMBER().getText());
            value(fraction, tree.NUMBER().getSymbol());
        }
        return new Expression.SizeLiteral(tree.SYSTEM().getText(), tree.letter.getText(), fraction, Trees.span(tree));
    }

    private double value(String text, Token token) {
        double value = Numbers.value(text);
        if (Double.isNaN(value)) {
            report.add(Diagnostic.error("division-by-zero", report.place(token)));
        } else if (Double.isInfinite(value)) {
            report.add(Diagnostic.error("number-too-large", report.place(token)));
        }
        return value;
    }

    private @Nullable Unit unit(BandParser.UnitContext tree) {
        Optional<Unit> unit = Unit.parse(Spelling.plain(tree.getText()));
        if (unit.isEmpty()) {
            report.add(Diagnostic.error("unit-without-meaning", report.source().place(Trees.span(tree)))
                    .with(Spelling.plain(tree.getText())));
        }
        return unit.orElse(null);
    }

    private @Nullable Unit currency(Token token) {
        if (token.getText().matches("[A-Z]{3}")) {
            return Unit.currency(token.getText());
        }
        Diagnostic.Builder fault =
                Diagnostic.error("unknown-unit", report.place(token)).with(token.getText());
        String near = UnitNames.nearest(token.getText());
        report.add(near == null ? fault : fault.suggest(report.place(token), near));
        return null;
    }
}
