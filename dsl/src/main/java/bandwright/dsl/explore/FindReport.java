// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.resolve.Handle;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Find;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.syntax.Require;
import bandwright.dsl.view.Table;

/**
 * Tells what a search found, and its path.
 *
 * @param steps where was looked, in words
 * @param trials in the order in which they were made
 * @param answer none if the goal holds nowhere
 */
record FindReport(
        Find find,
        Question question,
        Handle handle,
        String steps,
        List<Finding.Trial> trials,
        Finding.@Nullable Trial answer) {
    Found found() {
        String extreme = find.extreme().name().toLowerCase(Locale.ROOT);
        String asked = extreme + " " + handle.name() + " with " + Printer.print(find.condition());
        String found = answer == null ? nowhere() : answer.value().text();
        return new Found(asked, found, new Table("The way to the " + asked, columns(), rows(), notes()));
    }

    private String nowhere() {
        Finding.Trial closest = trials.stream()
                .min(Comparator.comparing(Finding.Trial::missedBy))
                .orElseThrow();
        String none =
                "none from " + handle.low().text() + " to " + handle.high().text();
        String compared = watched().stream()
                .filter(item -> closest.variant().values().get(item).isPresent())
                .map(item -> question.items().get(item).label() + " is "
                        + Texts.text(closest.variant().values().get(item)))
                .collect(Collectors.joining(" and "));
        if (compared.isEmpty() || closest.missedBy() >= 1) {
            return none;
        }
        return none + "; closest at " + closest.value().text() + ", where " + compared + ", missed by "
                + QuantityFormat.number(100 * closest.missedBy(), 2) + " %";
    }

    /** What is compared and moves with the handle, but is not the handle itself. */
    private List<Integer> watched() {
        List<Integer> watched = new ArrayList<>();
        for (int i = 0; i < question.items().size() - 1; i++) {
            Expression expression = question.items().get(i).expression();
            boolean moves =
                    !question.dependingOn(expression, Set.of(handle.name())).isEmpty();
            if (moves && !question.items().get(i).label().equals(handle.name())) {
                watched.add(i);
            }
        }
        return watched;
    }

    private List<ValueColumn> values() {
        List<ValueColumn> columns = new ArrayList<>();
        columns.add(new ValueColumn(
                handle.name(),
                trials.stream().map(trial -> Optional.of(trial.value())).toList()));
        for (int item : watched()) {
            List<Optional<Value>> values = trials.stream()
                    .map(trial -> trial.variant().values().get(item))
                    .toList();
            columns.add(new ValueColumn(question.items().get(item).label(), values));
        }
        return columns;
    }

    private boolean anyReason() {
        return trials.stream().anyMatch(trial -> !trial.variant().reason().isEmpty());
    }

    private List<Table.Column> columns() {
        List<Table.Column> columns =
                new ArrayList<>(values().stream().map(ValueColumn::head).toList());
        columns.add(Table.Column.words("holds"));
        if (anyReason()) {
            columns.add(Table.Column.words("reason"));
        }
        return columns;
    }

    private List<List<String>> rows() {
        List<ValueColumn> values = values();
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < trials.size(); i++) {
            int number = i;
            List<String> row = new ArrayList<>(
                    values.stream().map(column -> column.cell(number)).toList());
            row.add(trials.get(i).holds() ? "yes" : "no");
            if (anyReason()) {
                row.add(trials.get(i).variant().reason());
            }
            rows.add(row);
        }
        return rows;
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add("Looked for in " + steps + "; the design keeps its own value.");
        if (answer == null) {
            notes.add("Between the values that were tried nothing is known.");
        } else {
            List<String> gaps = gaps();
            if (!gaps.isEmpty()) {
                notes.add("The goal holds in several places and fails between them, at " + String.join(", ", gaps)
                        + ". Between the values that were tried nothing is known.");
            }
            for (int failed : answer.variant().failed()) {
                Require require = (Require) question.design()
                        .definitions()
                        .requirements()
                        .get(failed)
                        .statement();
                notes.add("At " + answer.value().text() + " the design fails: require "
                        + Printer.print(require.condition()));
            }
        }
        return notes;
    }

    /** Values at which the goal does not hold, though it does at smaller and at larger ones. */
    private List<String> gaps() {
        Scale scale = new Scale(handle.low());
        List<Finding.Trial> ordered = trials.stream()
                .sorted(Comparator.comparing((Finding.Trial trial) -> scale.number(trial.value())))
                .toList();
        List<Boolean> holds = ordered.stream().map(Finding.Trial::holds).toList();
        return IntStream.range(0, ordered.size())
                .filter(i -> !holds.get(i) && holds.indexOf(true) < i && i < holds.lastIndexOf(true))
                .mapToObj(i -> ordered.get(i).value().text())
                .toList();
    }
}
