// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.view.Table;

/** Variants as a table: what varies, what was asked, which requirements fail, and why a row has no numbers. */
final class VaryTable {
    private final Variants variants;
    private final List<ValueColumn> columns;
    private final List<String> requirements;
    private final boolean anyFails;
    private final boolean anyReason;

    private VaryTable(Variants variants) {
        this.variants = variants;
        List<Variant> rows = variants.rows();
        columns = new ArrayList<>(variants.axisColumns());
        columns.addAll(variants.itemColumns());
        requirements = variants.question().requirements();
        anyFails = rows.stream().anyMatch(row -> !row.failed().isEmpty());
        anyReason = rows.stream().anyMatch(row -> !row.reason().isEmpty());
    }

    static Table of(Variants variants) {
        return new VaryTable(variants).table();
    }

    private Table table() {
        List<Table.Column> heads =
                new ArrayList<>(columns.stream().map(ValueColumn::head).toList());
        if (anyFails) {
            heads.add(Table.Column.words("failed"));
        }
        if (anyReason) {
            heads.add(Table.Column.words("reason"));
        }
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < variants.rows().size(); i++) {
            rows.add(row(i, variants.rows().get(i)));
        }
        return new Table("Variants of " + String.join(", ", variants.axisNames()), heads, rows, footnotes());
    }

    private List<String> row(int number, Variant variant) {
        List<String> row = new ArrayList<>(
                columns.stream().map(column -> column.cell(number)).toList());
        if (anyFails) {
            row.add(variant.failedNumbers());
        }
        if (anyReason) {
            row.add(variant.reasonInWords());
        }
        return row;
    }

    private List<String> footnotes() {
        List<String> notes = new ArrayList<>();
        long unmade = variants.rows().stream().filter(row -> !row.made()).count();
        notes.add(Texts.counted(variants.rows().size(), "variant")
                + (unmade > 0 ? ", of which " + Texts.count((double) unmade) + " cannot be made" : "") + ".");
        if (anyFails) {
            for (int i = 0; i < requirements.size(); i++) {
                int number = i;
                long failed = variants.rows().stream()
                        .filter(row -> row.failed().contains(number))
                        .count();
                if (failed > 0) {
                    notes.add("Failed " + (i + 1) + ": " + requirements.get(i) + ", in "
                            + Texts.counted((int) failed, "variant") + ".");
                }
            }
        } else if (!requirements.isEmpty() && unmade < variants.rows().size()) {
            notes.add("All requirements of the design hold in "
                    + (unmade > 0 ? "every variant that can be made." : "every variant."));
        }
        return notes;
    }

    /** Only the first rows of a long table, and a note that tells so. */
    static Table shown(Table table, int most) {
        if (table.rows().size() <= most) {
            return table;
        }
        List<String> notes = new ArrayList<>(table.footnotes());
        notes.add("Shown are the first " + Texts.count(most) + " of "
                + Texts.counted(table.rows().size(), "row") + ".");
        return new Table(table.title(), table.columns(), table.rows().subList(0, most), notes);
    }
}
