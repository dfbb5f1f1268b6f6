// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Entry;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Option;
import bandwright.dsl.view.Table;

/** The design with the differences of its options: their definitions stand in the places of those of the same names. */
record Options(Resolution design, Workshop workshop, SourceText source) {
    /** One option beside the design. */
    Table table(Option option) {
        Question question = Question.headlines(design, source, option.span());
        return new Comparison(
                        question, List.copyOf(names(option)), List.of(asItIs(question), side(question, option, source)))
                .beforeAndAfter("Option \"" + option.name() + "\"");
    }

    /** The design and all its options. */
    Compared all(Span span) {
        List<Entry> entries = design.definitions().options();
        if (entries.isEmpty()) {
            Place place = source.place(span);
            throw new Fault(Diagnostic.note("no-options", place).build());
        }
        Question question = Question.headlines(design, source, span);
        Set<String> names = new LinkedHashSet<>();
        List<Side> sides = new ArrayList<>(List.of(asItIs(question)));
        List<String> notes = new ArrayList<>();
        for (Entry entry : entries) {
            Option option = (Option) entry.statement();
            names.addAll(names(option));
            sides.add(side(question, option, entry.source()));
            entry.because().ifPresent(because -> notes.add(option.name() + ": " + because));
        }
        Table table = new Comparison(question, List.copyOf(names), sides).sideBySide("Options", notes);
        Map<String, Ring> rings = new LinkedHashMap<>();
        sides.stream()
                .filter(side -> side.variant().made())
                .forEach(side -> rings.put(side.name(), workshop.ring(side.design())));
        return new Compared(table, rings);
    }

    private static Set<String> names(Option option) {
        Set<String> names = new LinkedHashSet<>();
        option.differences().stream().map(Definition::name).forEach(name -> names.add(name.text()));
        return names;
    }

    private Side asItIs(Question question) {
        return new Side("design", design, Map.of(), new VariantWorker(question, workshop, Set.of()).work(design));
    }

    private Side side(Question question, Option option, SourceText text) {
        Resolution other = design.withDefinitions(text, option.differences());
        return new Side(option.name(), other, Map.of(), new VariantWorker(question, workshop, Set.of()).work(other));
    }
}
