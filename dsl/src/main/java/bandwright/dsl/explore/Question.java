// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Faults;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Argument;
import bandwright.dsl.syntax.Asked;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.syntax.Require;

/**
 * What is asked of every variant.
 *
 * @param design the design as it stands, with what the braces define
 * @param items what is to be worked out
 * @param source the text they stand in
 */
record Question(Resolution design, List<Item> items, SourceText source) {
    Question {
        items = List.copyOf(items);
    }

    /** A value to be worked out, and what it is called: its own words. */
    record Item(String label, Expression expression) {}

    /**
     * What stands in the braces of a statement, or the headline numbers.
     *
     * @param statement where the statement stands
     */
    static Question of(Resolution design, Asked asked, SourceText source, Span statement) {
        if (asked.isEmpty()) {
            return headlines(design, source, statement);
        } else if (asked.values().isEmpty()) {
            throw new Fault(Diagnostic.error("nothing-asked", source.place(asked.span()))
                    .suggestLine(asked.definitions().get(0).name().text())
                    .build());
        }
        Faults faults = new Faults();
        Set<String> names = new LinkedHashSet<>();
        for (Definition definition : asked.definitions()) {
            Name name = definition.name();
            if (!names.add(name.text())) {
                faults.add(Diagnostic.error("named-twice", source.place(name.span()))
                        .with(name.text()));
            }
            if (design.definitions().find(name.text()).isPresent()) {
                faults.attempt(() -> design.definitionNamed(name, source));
            }
        }
        faults.raise();
        List<Item> items = asked.values().stream()
                .map(value -> new Item(label(value), value))
                .toList();
        return new Question(design.withDefinitions(source, asked.definitions()), items, source);
    }

    /** The words of an expression; the unit it is to be shown in stands in the head of the column. */
    private static String label(Expression expression) {
        return Printer.print(expression instanceof Expression.InUnit inUnit ? inUnit.value() : expression);
    }

    /** Metal weight of each part, stone count and carats, smallest gap and wall. */
    static Question headlines(Resolution design, SourceText source, Span statement) {
        if (design.bands().isEmpty()) {
            throw new Fault(
                    Diagnostic.note("no-ring-yet", source.place(statement)).build());
        }
        List<Item> items = new ArrayList<>();
        List<String> parts = standingParts(design);
        parts.forEach(part -> items.add(call("weight", part, statement)));
        if (parts.size() > 1) {
            items.add(call("weight", Name.RING, statement));
        }
        if (!design.stoneRows().isEmpty()) {
            List.of("count", "carats", "gap").forEach(word -> items.add(call(word, Name.RING, statement)));
        }
        items.add(call("wall", Name.RING, statement));
        return new Question(design, items, source);
    }

    /** The parts but for those that a cut has parted, whose pieces stand for them. */
    static List<String> standingParts(Resolution design) {
        return design.parts().stream()
                .filter(part -> design.grooves().stream()
                        .noneMatch(groove -> groove.from().contains(part)
                                && !groove.leaving().isEmpty()))
                .toList();
    }

    /** A measure of something, asked for by its word. */
    static Item call(String word, String subject, Span span) {
        Expression reference = new Expression.Reference(new Name(subject, span), span);
        Expression call = new Expression.Call(new Name(word, span), List.of(new Argument(null, reference, span)), span);
        return new Item(word + "(" + subject + ")", call);
    }

    /** The conditions of the design, as they are written. */
    List<String> requirements() {
        return design.definitions().requirements().stream()
                .map(entry -> Printer.print(((Require) entry.statement()).condition()))
                .toList();
    }

    /** Which of some names an expression hangs on. */
    Set<String> dependingOn(Expression expression, Set<String> names) {
        Set<String> depending = new TreeSet<>(design.dependencies(expression));
        depending.retainAll(names);
        return depending;
    }
}
