// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.quantity.Unit;
import bandwright.dsl.source.Span;

/** Something that has a value. Parentheses are not kept: the tree says what they said. */
public sealed interface Expression extends Node {
    <R> R accept(Visitor<R> visitor);

    /** Whether it is written as a number without a unit; what is worked out from others is none, whatever it comes to. */
    default boolean isBareNumber() {
        return this instanceof NumberLiteral number && number.unit() == null;
    }

    /**
     * A number, with its unit where it has one: {@code 1.9 mm}, {@code 7 1/2}.
     *
     * @param text the number as written
     * @param value how many of the unit
     */
    record NumberLiteral(
            String text, double value, @Nullable Unit unit, Span span) implements Expression {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.number(this);
        }
    }

    /** A text in quotes, without them. */
    record StringLiteral(String text, Span span) implements Expression {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.string(this);
        }
    }

    record TruthLiteral(boolean value, Span span) implements Expression {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.truth(this);
        }
    }

    /**
     * A finger size: {@code US 7 1/4}, {@code UK N 1/2}, {@code ISO 54.4}.
     *
     * @param system {@code US UK ISO JP CH DE}
     * @param size the letter or the number without its fraction
     * @param fraction such as {@code 1/4}
     */
    record SizeLiteral(String system, String size, @Nullable String fraction, Span span) implements Expression {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.size(this);
        }
    }

    /** What a name stands for: a definition, a part, a row, a metal, or {@code ring}. */
    record Reference(Name name, Span span) implements Expression {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.reference(this);
        }
    }

    /** A function or a measure: {@code max(a, b)}, {@code weight(shank, pattern)}. */
    record Call(Name function, List<Argument> arguments, Span span) implements Expression {
        public Call {
            arguments = List.copyOf(arguments);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.call(this);
        }
    }

    record Unary(UnaryOperator operator, Expression operand, Span span) implements Expression {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.unary(this);
        }
    }

    record Binary(BinaryOperator operator, Expression left, Expression right, Span span) implements Expression {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.binary(this);
        }
    }

    /**
     * A comparison or a chain of them: {@code 0.7 mm <= x <= 2 mm}, {@code a = b within 0.01 mm}.
     *
     * @param within how far apart equal values may lie
     */
    record Comparison(
            Expression first, List<Link> links, @Nullable Expression within, Span span) implements Expression {
        public Comparison {
            links = List.copyOf(links);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.comparison(this);
        }
    }

    /** One link of a chain: the operator and what stands to its right. */
    record Link(ComparisonOperator operator, Expression operand, Span span) implements Node {}

    /** {@code x between 1 mm and 2 mm}, both ends included. */
    record Between(Expression value, Expression low, Expression high, Span span) implements Expression {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.between(this);
        }
    }

    record Conditional(Expression condition, Expression whenTrue, Expression whenFalse, Span span)
            implements Expression {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.conditional(this);
        }
    }

    /** The same value, to be shown in a unit: {@code weight(shank) in dwt}. */
    record InUnit(Expression value, Unit unit, Span span) implements Expression {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.inUnit(this);
        }
    }

    /** The same finger size, to be shown in a system: {@code finger-size in US}. */
    record InSystem(Expression value, String system, Span span) implements Expression {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.inSystem(this);
        }
    }

    /** One answer for each kind of expression. */
    interface Visitor<R> {
        R number(NumberLiteral number);

        R string(StringLiteral string);

        R truth(TruthLiteral truth);

        R size(SizeLiteral size);

        R reference(Reference reference);

        R call(Call call);

        R unary(Unary unary);

        R binary(Binary binary);

        R comparison(Comparison comparison);

        R between(Between between);

        R conditional(Conditional conditional);

        R inUnit(InUnit inUnit);

        R inSystem(InSystem inSystem);
    }
}
