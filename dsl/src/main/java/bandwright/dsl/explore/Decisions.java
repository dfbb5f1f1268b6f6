// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import bandwright.dsl.construct.Workshop;
import bandwright.dsl.measure.RingMeasurer;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Definitions;
import bandwright.dsl.resolve.Entry;
import bandwright.dsl.resolve.Redefinition;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.dsl.view.Table;
import bandwright.dsl.view.Table.Column;

/**
 * The story of a design: each decision in the order in which it was taken, with its reason and what it did to the headline
 * numbers. The numbers before and after are worked out from the definitions of that time.
 */
final class Decisions {
    private static final SourceText NOWHERE = new SourceText("headline numbers", "");

    private final Workshop workshop;
    private final Heard heard;
    private final Place place;
    private final Map<Definitions, Map<String, Optional<Value>>> known = new HashMap<>();
    private final List<List<String>> rows = new ArrayList<>();

    Decisions(Workshop workshop, Heard heard, Place place) {
        this.workshop = workshop;
        this.heard = heard;
        this.place = place;
    }

    Table table(List<Chapter> story) {
        for (int i = 0; i < story.size(); i++) {
            tell(story.get(i));
            heard.worked(i + 1, story.size());
            if (Thread.interrupted()) {
                throw SideBySide.interrupted(i + 1, story.size(), place);
            }
        }
        List<Column> columns = List.of(
                Column.numbers("no.", ""),
                Column.words("what"),
                Column.words("was"),
                Column.words("is"),
                Column.words("because"),
                Column.words("what it did"));
        return new Table(
                "Decisions", columns, rows, rows.isEmpty() ? List.of("nothing was decided so far") : List.of());
    }

    private void tell(Chapter chapter) {
        int first = rows.size();
        chapter.reasons().forEach(entry -> {
            Map.Entry<String, String> told = Chapter.told(entry);
            row(told.getKey(), "", told.getValue(), Chapter.reason(entry));
        });
        for (Redefinition change : chapter.changes()) {
            row(change.name(), flat(change.oldText()), flat(change.newText()), change.reason());
        }
        for (Entry entry : chapter.gone()) {
            Map.Entry<String, String> told = Chapter.told(entry);
            row(told.getKey(), told.getValue(), "taken away", Optional.empty());
        }
        // Changes of one run work together: what they did is told with the first of them.
        if (rows.size() > first && !chapter.before().equals(Definitions.EMPTY)) {
            effect(chapter).ifPresent(effect -> {
                List<String> row = new ArrayList<>(rows.get(first));
                row.set(
                        5,
                        effect
                                + (rows.size() - first > 1
                                        ? " (all " + (rows.size() - first) + " lines of this run together)"
                                        : ""));
                rows.set(first, row);
            });
        }
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private void row(String name, String was, String is, Optional<String> because) {
        rows.add(List.of(Integer.toString(rows.size() + 1), name, was, is, because.orElse(""), ""));
    }

    private Optional<String> effect(Chapter chapter) {
        Map<String, Optional<Value>> before = numbers(chapter.before());
        Map<String, Optional<Value>> after = numbers(chapter.after());
        if (before.isEmpty() && after.isEmpty()) {
            return Optional.empty();
        }
        List<String> effects = new ArrayList<>();
        Map<String, Optional<Value>> all = new LinkedHashMap<>(before);
        after.forEach(all::putIfAbsent);
        for (String label : all.keySet()) {
            Optional<Value> was = before.getOrDefault(label, Optional.empty());
            Optional<Value> is = after.getOrDefault(label, Optional.empty());
            boolean same = Texts.text(was).equals(Texts.text(is));
            if (!same) {
                String now = is.isEmpty() ? "none" : Texts.text(is);
                effects.add(label + " " + (was.isEmpty() ? now : Texts.text(was) + " -> " + now));
            }
        }
        return Optional.of(effects.isEmpty() ? "no headline number changed" : String.join("; ", effects));
    }

    /** The headline numbers of a design; those that cannot be worked out are empty, all of them where there is no ring. */
    private Map<String, Optional<Value>> numbers(Definitions definitions) {
        return known.computeIfAbsent(definitions, store -> {
            Resolution design = new Resolution(store, new RingMeasurer(workshop));
            Map<String, Optional<Value>> numbers = new LinkedHashMap<>();
            try {
                for (Question.Item item :
                        Question.headlines(design, NOWHERE, new Span(0, 0)).items()) {
                    numbers.put(item.label(), value(design, item));
                }
            } catch (Fault noRing) {
                return Map.of();
            }
            return numbers;
        });
    }

    private static Optional<Value> value(Resolution design, Question.Item item) {
        try {
            return Optional.of(design.evaluate(item.expression(), NOWHERE));
        } catch (Fault fault) {
            return Optional.empty();
        }
    }
}
