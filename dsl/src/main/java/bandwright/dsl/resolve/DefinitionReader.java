// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.Optional;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Range;

/** The value of a definition, within its range. */
final class DefinitionReader extends Reader {
    private final Definition definition;
    /** Where the range stands: in a question, with the definition that another one stands in for. */
    private final Entry limits;

    DefinitionReader(Resolution design, Entry entry) {
        super(design, entry);
        this.definition = (Definition) entry.statement();
        Entry replaced = entry.limits();
        this.limits = replaced == null || definition.range() != null ? entry : replaced;
    }

    /**
     * The value.
     *
     * @param given what stands in its place, for {@code vary} and {@code find}
     */
    Value read(Optional<Value> given) {
        Optional<Value> value =
                given.isPresent() ? given : faults.attempt(() -> design.evaluate(definition.value(), source));
        Range range = limits.statement() instanceof Definition limiting ? limiting.range() : null;
        if (range != null) {
            Optional<Value> low = faults.attempt(() -> design.evaluate(range.low(), limits.source()));
            Optional<Value> high = faults.attempt(() -> design.evaluate(range.high(), limits.source()));
            Expression step = range.step();
            if (step != null) {
                step(step, low);
            }
            faults.raise();
            check(value.orElseThrow(), low.orElseThrow(), high.orElseThrow(), range);
        }
        faults.raise();
        return value.orElseThrow();
    }

    /** The range of a definition that has one; throws the fault of a range that cannot be. */
    Optional<Handle> handle() {
        Range range = limits.statement() instanceof Definition limiting ? limiting.range() : null;
        if (range == null) {
            return Optional.empty();
        }
        Value low = design.evaluate(range.low(), limits.source());
        Value high = design.evaluate(range.high(), limits.source());
        Expression step = range.step();
        Optional<Value> by = step == null ? Optional.empty() : Optional.of(design.evaluate(step, limits.source()));
        return Optional.of(new Handle(name(), low, high, by));
    }

    private void check(Value value, Value low, Value high, Range range) {
        Double ends = order(low, high);
        Double below = order(value, low);
        Double above = order(value, high);
        if (ends == null || below == null || above == null) {
            Value other = below == null ? low : high;
            faults.add(Diagnostic.error("unit-mismatch", place(definition.value()))
                    .with(value.kind(), other.kind(), "compared")
                    .label(place(definition.value()), value.kind())
                    .label(limits.place(below == null ? range.low() : range.high()), other.kind()));
        } else if (ends > 0) {
            faults.add(Diagnostic.error("range-reversed", limits.place(range))
                    .with(low.text(), high.text())
                    .label(limits.place(range.low()), low.text())
                    .label(limits.place(range.high()), high.text()));
        } else if (below < 0 || above > 0) {
            faults.add(Diagnostic.error("value-outside-range", place(definition.value()))
                    .with(name(), value.text(), low.text(), high.text()));
        }
    }

    private void step(Expression step, Optional<Value> low) {
        Optional<Value> value = faults.attempt(() -> design.evaluate(step, limits.source()));
        if (value.isEmpty() || low.isEmpty()) {
            return;
        }
        boolean fits = value.get() instanceof Value.Amount amount
                && (low.get() instanceof Value.Amount end
                        ? amount.quantity().fits(end.quantity())
                        : amount.quantity().dimension().isNumber());
        if (!fits) {
            String wanted = low.get() instanceof Value.Size
                    ? "a plain number"
                    : low.get().kind();
            faults.add(Diagnostic.error("wrong-kind", limits.place(step))
                    .with(wanted, value.get().kind())
                    .label(limits.place(step), value.get().kind()));
        } else if (!(((Value.Amount) value.get()).quantity().value() > 0)) {
            faults.add(Diagnostic.error("not-positive", limits.place(step))
                    .with("a step", value.get().text()));
        }
    }

    /** Below 0, 0 or above 0 as the first is less, equal or more; null if the two do not compare. */
    private static @Nullable Double order(Value first, Value second) {
        if (first instanceof Value.Amount a && second instanceof Value.Amount b) {
            return a.quantity().fits(b.quantity()) ? (double) a.quantity().compare(b.quantity()) : null;
        } else if (first instanceof Value.Size a && second instanceof Value.Size b) {
            return (double) circumference(a.size()).compare(circumference(b.size()));
        }
        return null;
    }

    private static Quantity circumference(FingerSize size) {
        return Quantity.millimetres(size.circumferenceMm());
    }
}
