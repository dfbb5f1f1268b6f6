// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.Suggestion;
import bandwright.dsl.model.Fault;
import bandwright.dsl.parse.ParseResult;
import bandwright.dsl.parse.RingParser;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.Entry;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.syntax.Require;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.syntax.Title;

/** Judges conditions: passed or failed, and by how much. */
final class Requirements {
    private Requirements() {}

    static Answer.Requirement judge(Resolution design, Entry entry) {
        return judge(design, (Require) entry.statement(), entry.source());
    }

    static Answer.Requirement judge(Resolution design, Require require, SourceText source) {
        String text = Printer.print(require.condition());
        String because = require.because() == null ? null : require.because().reason();
        try {
            Value value = design.evaluate(require.condition(), source);
            if (!(value instanceof Value.Truth truth)) {
                return new Answer.Requirement(
                        text, false, null, null, because, "it is " + value.kind() + ", not true or false");
            }
            return new Answer.Requirement(
                    text,
                    truth.holds(),
                    measured(design, require.condition(), source),
                    margin(design, require.condition(), source),
                    because,
                    null);
        } catch (Fault fault) {
            return new Answer.Requirement(
                    text, false, null, null, because, why(fault.diagnostics().get(0)));
        }
    }

    /** With the name that is likely to be meant: a reader of marks sees no more than this. */
    private static String why(Diagnostic fault) {
        Suggestion suggestion = fault.suggestion();
        return fault.code().equals("not-defined-yet") && suggestion != null
                ? fault.message() + "; try " + suggestion.text()
                : fault.message();
    }

    /** The value compared, unless the condition writes it out itself. */
    private static @Nullable String measured(Resolution design, Expression condition, SourceText source) {
        Expression compared = null;
        if (condition instanceof Expression.Comparison comparison) {
            compared = comparison.links().size() == 1
                    ? comparison.first()
                    : comparison.links().get(0).operand();
        } else if (condition instanceof Expression.Between between) {
            compared = between.value();
        }
        return compared == null || compared instanceof Expression.NumberLiteral
                ? null
                : design.evaluate(compared, source).text();
    }

    /** The distance between the two sides of a comparison, the smallest of a chain; with the share of the limit it is. */
    private static Answer.@Nullable Margin margin(Resolution design, Expression condition, SourceText source) {
        List<Expression> sides = new ArrayList<>();
        if (condition instanceof Expression.Comparison comparison) {
            sides.add(comparison.first());
            comparison.links().forEach(link -> sides.add(link.operand()));
        } else if (condition instanceof Expression.Between between) {
            sides.addAll(List.of(between.low(), between.value(), between.high()));
        }
        Quantity least = null;
        double limit = 0;
        for (int i = 0; i + 1 < sides.size(); i++) {
            if (!(design.evaluate(sides.get(i), source) instanceof Value.Amount left)
                    || !(design.evaluate(sides.get(i + 1), source) instanceof Value.Amount right)) {
                return null;
            }
            Quantity apart = left.quantity().minus(right.quantity());
            Quantity size = apart.value() < 0 ? apart.negate() : apart;
            if (least == null || size.compare(least) < 0) {
                least = size;
                limit = Math.abs(right.quantity().value());
            }
        }
        return least == null ? null : margin(least, limit);
    }

    private static Answer.Margin margin(Quantity apart, double limit) {
        Unit unit = apart.shown() == null ? Unit.shownFor(apart.dimension()) : apart.shown();
        Double percent = limit > 0 ? 100 * apart.value() / limit : null;
        String text = text(apart, unit);
        if (percent != null && percent >= 0.05 && percent < 1000) {
            text += String.format(Locale.ROOT, " (%.1f %%)", percent);
        }
        return new Answer.Margin(apart.count(unit), unit.symbol(), percent, text);
    }

    /** What is shown as nothing is told as less than the last digit: a condition that fails is never off by 0. */
    private static String text(Quantity apart, Unit unit) {
        String text = QuantityFormat.format(apart);
        boolean nothing = text.equals(QuantityFormat.format(new Quantity(0, apart.dimension(), apart.shown())));
        if (apart.value() == 0 || !nothing) {
            return text;
        }
        double last = apart.dimension().currency() == null ? 0.001 : 0.01;
        return "less than "
                + QuantityFormat.format(new Quantity(last * unit.factor(), apart.dimension(), apart.shown()));
    }

    /** All conditions of a text, which may hold a title beside them and nothing else. */
    static Judged judged(Resolution design, SourceText conditions) {
        ParseResult parsed = RingParser.parse(conditions);
        List<Diagnostic> told = new ArrayList<>(parsed.diagnostics());
        List<Require> requires = new ArrayList<>();
        for (Statement statement : parsed.cell().statements()) {
            if (statement instanceof Require require) {
                requires.add(require);
            } else if (!(statement instanceof Title)) {
                told.add(Diagnostic.error("judged-no-condition", conditions.place(statement.span()))
                        .build());
            }
        }
        boolean sound = told.stream().noneMatch(Diagnostic::isError);
        return new Judged(
                sound
                        ? requires.stream()
                                .map(require -> judge(design, require, conditions))
                                .toList()
                        : List.of(),
                told);
    }
}
