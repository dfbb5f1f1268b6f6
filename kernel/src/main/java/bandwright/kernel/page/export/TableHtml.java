// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.List;

import bandwright.dsl.view.Table;

/** A table that scrolls by itself where the screen is narrow; its footnotes stand below it and wrap to the screen. */
final class TableHtml {
    private TableHtml() {}

    static String of(Table table) {
        Table bare = new Table(table.title(), table.columns(), table.rows(), List.of());
        StringBuilder html = new StringBuilder("<div class=\"tabled\">\n")
                .append(Html.frame(table.title().isEmpty() ? "Table" : table.title(), bare.html()));
        table.footnotes()
                .forEach(note -> html.append("<p class=\"footnote\">")
                        .append(Html.escape(note))
                        .append("</p>\n"));
        return html.append("</div>\n").toString();
    }
}
