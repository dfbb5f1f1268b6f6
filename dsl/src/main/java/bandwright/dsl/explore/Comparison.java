// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.syntax.Require;
import bandwright.dsl.view.Table;

/**
 * Designs side by side: what differs in them, what was asked, how the requirements come out.
 *
 * @param changed names of the definitions that differ
 * @param sides the design as it is first
 */
record Comparison(Question question, List<String> changed, List<Side> sides) {
    Comparison {
        changed = List.copyOf(changed);
        sides = List.copyOf(sides);
    }

    /** The design and one other: before, after, difference. */
    Table beforeAndAfter(String title) {
        Side before = sides.get(0);
        Side after = sides.get(1);
        List<List<String>> rows = new ArrayList<>();
        List<Optional<Value>> old = values(before);
        List<Optional<Value>> fresh = values(after);
        List<String> names = names();
        for (int i = 0; i < names.size(); i++) {
            rows.add(List.of(
                    names.get(i),
                    Texts.text(old.get(i)),
                    Texts.text(fresh.get(i)),
                    Texts.difference(old.get(i), fresh.get(i)),
                    Texts.percent(old.get(i), fresh.get(i))));
        }
        List<String> requirements = requirements();
        for (int i = 0; i < requirements.size(); i++) {
            rows.add(List.of(requirements.get(i), before.requirement(i), after.requirement(i), "", ""));
        }
        return new Table(
                title,
                List.of(
                        Table.Column.words("what"),
                        Table.Column.numbers(before.name(), ""),
                        Table.Column.numbers(after.name(), ""),
                        Table.Column.numbers("difference", ""),
                        Table.Column.numbers("per cent", "")),
                rows,
                notes());
    }

    /** All designs, a column each. */
    Table sideBySide(String title, List<String> notes) {
        List<Table.Column> columns = new ArrayList<>(List.of(Table.Column.words("what")));
        sides.forEach(side -> columns.add(Table.Column.numbers(side.name(), "")));
        List<List<String>> rows = new ArrayList<>();
        List<String> names = names();
        for (int i = 0; i < names.size(); i++) {
            int number = i;
            rows.add(row(names.get(i), side -> Texts.text(values(side).get(number))));
        }
        List<String> requirements = requirements();
        for (int i = 0; i < requirements.size(); i++) {
            int number = i;
            rows.add(row(requirements.get(i), side -> side.requirement(number)));
        }
        List<String> all = new ArrayList<>(notes);
        all.addAll(notes());
        return new Table(title, columns, rows, all);
    }

    private List<String> row(String name, Function<Side, String> cell) {
        List<String> row = new ArrayList<>(List.of(name));
        sides.forEach(side -> row.add(cell.apply(side)));
        return row;
    }

    private List<String> names() {
        List<String> names = new ArrayList<>(changed);
        question.items().forEach(item -> names.add(item.label()));
        return names;
    }

    private List<Optional<Value>> values(Side side) {
        List<Optional<Value>> values = new ArrayList<>(side.definitions(changed));
        values.addAll(side.variant().values());
        return values;
    }

    private List<String> requirements() {
        return question.design().definitions().requirements().stream()
                .map(entry -> "require " + Printer.print(((Require) entry.statement()).condition()))
                .toList();
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        for (Side side : sides) {
            Variant variant = side.variant();
            if (!variant.made()) {
                notes.add("\"" + side.name() + "\" cannot be made: " + variant.reason() + ".");
            } else if (!variant.reason().isEmpty()) {
                notes.add("\"" + side.name() + "\": " + variant.reason() + ".");
            }
        }
        return notes;
    }
}
