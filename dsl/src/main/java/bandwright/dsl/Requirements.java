// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.resolve.Entry;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.syntax.Require;

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
                        text, false, null, because, "it is " + value.kind() + ", not true or false");
            }
            return new Answer.Requirement(
                    text, truth.holds(), margin(design, require.condition(), source), because, null);
        } catch (Fault fault) {
            return new Answer.Requirement(
                    text, false, null, because, fault.diagnostics().get(0).message());
        }
    }

    /** The distance between the two sides of a comparison, the smallest of a chain; with the share of the limit it is. */
    private static @Nullable String margin(Resolution design, Expression condition, SourceText source) {
        List<Expression> sides = new ArrayList<>();
        if (condition instanceof Expression.Comparison comparison) {
            sides.add(comparison.first());
            comparison.links().forEach(link -> sides.add(link.operand()));
        } else if (condition instanceof Expression.Between between) {
            sides.addAll(List.of(between.low(), between.value(), between.high()));
        }
        Optional<Quantity> least = Optional.empty();
        double share = 0;
        for (int i = 0; i + 1 < sides.size(); i++) {
            if (!(design.evaluate(sides.get(i), source) instanceof Value.Amount left)
                    || !(design.evaluate(sides.get(i + 1), source) instanceof Value.Amount right)) {
                return null;
            }
            Quantity apart = left.quantity().minus(right.quantity());
            Quantity size = apart.value() < 0 ? apart.negate() : apart;
            if (least.isEmpty() || size.compare(least.get()) < 0) {
                least = Optional.of(size);
                share = size.value() / Math.abs(right.quantity().value());
            }
        }
        double percent = 100 * share;
        return least.map(quantity -> QuantityFormat.format(quantity)
                        + (percent > 0 && percent < 1000 ? String.format(Locale.ROOT, " (%.1f %%)", percent) : ""))
                .orElse(null);
    }
}
