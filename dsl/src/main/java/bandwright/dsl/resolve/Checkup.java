// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Limit;
import bandwright.dsl.syntax.Measured;
import bandwright.dsl.syntax.Option;
import bandwright.dsl.syntax.Require;

/** Works out all that one statement says, to see whether anything is wrong with it. */
final class Checkup extends Reader {
    Checkup(Resolution design, Entry entry) {
        super(design, entry);
    }

    /** All that is wrong with the statements of a design that are to be looked at, each once, in their order. Never throws. */
    static List<Diagnostic> problems(Resolution design, Predicate<Entry> kept) {
        Set<Diagnostic> problems = new LinkedHashSet<>();
        for (Entry entry : design.definitions().entries()) {
            if (!kept.test(entry)) {
                continue;
            }
            try {
                new Checkup(design, entry).run();
            } catch (Fault fault) {
                problems.addAll(fault.diagnostics());
            } catch (StackOverflowError tooDeep) {
                problems.addAll(Memo.chainTooLong().diagnostics());
            }
        }
        return List.copyOf(problems);
    }

    void run() {
        if (entry.statement() instanceof Require require) {
            condition(require.condition());
        } else if (entry.statement() instanceof Limit) {
            design.ownLimit(entry);
        } else if (entry.statement() instanceof Measured measured) {
            measured(measured);
        } else if (!entry.made().isEmpty()) {
            made(entry.made().get(0));
        }
        faults.raise();
    }

    private void made(Made made) {
        String name = made.name();
        switch (made.kind()) {
            case DEFINITION, METAL, STONE_MATERIAL -> design.valueOf(name);
            case PROFILE -> design.section(name);
            case BAND -> design.band(name);
            case GROOVE -> design.groove(name);
            case SEATS -> design.seatsNamed(name);
            case STONE_ROW -> design.stoneRow(name);
            case PRONGS -> design.prongsNamed(name);
            case OPTION -> option((Option) entry.statement());
            case KEPT_PART, COLLAR, PIECE -> throw new IllegalStateException("no statement of its own: " + name);
        }
    }

    private void condition(Expression condition) {
        Value value = design.evaluate(condition, source);
        if (!(value instanceof Value.Truth)) {
            faults.add(Diagnostic.error("wrong-kind", place(condition))
                    .with("true or false", value.kind())
                    .label(place(condition), value.kind()));
        }
    }

    private void measured(Measured measured) {
        Optional<Value> value = faults.attempt(() -> design.evaluate(measured.value(), source));
        Optional<Value> computed = faults.attempt(() -> design.evaluate(measured.measure(), source));
        if (value.isPresent()
                && computed.isPresent()
                && !value.get().kind().equals(computed.get().kind())) {
            faults.add(Diagnostic.error("unit-mismatch", place(measured.measure()))
                    .with(computed.get().kind(), value.get().kind(), "compared")
                    .label(place(measured.measure()), computed.get().kind())
                    .label(place(measured.value()), value.get().kind()));
        }
    }

    private void option(Option option) {
        Set<String> names = new LinkedHashSet<>();
        for (Definition difference : option.differences()) {
            String name = difference.name().text();
            if (!names.add(name)) {
                faults.add(Diagnostic.error("named-twice", place(difference.name()))
                        .with(name));
            }
            Optional<Value> other = faults.attempt(() -> design.evaluate(difference.value(), source));
            Optional<Value> now = faults.attempt(() -> design.definitionNamed(difference.name(), source));
            if (other.isPresent()
                    && now.isPresent()
                    && !other.get().kind().equals(now.get().kind())) {
                faults.add(Diagnostic.error("given-wrong-kind", place(difference.value()))
                        .with(name, now.get().kind(), other.get().kind()));
            }
        }
    }
}
