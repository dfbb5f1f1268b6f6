// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;

import bandwright.dsl.export.pdf.PageItem;
import bandwright.dsl.view.Table;
import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.NotebookCell;

import static org.assertj.core.api.Assertions.assertThat;

/** Tables in Markdown cells, which Jupyter shows as tables too. */
class MarkdownTablesTest {
    private static final String TEXT = """
            Two ways:

            | way | good for |
            | --- | --- |
            | a collar | a *seamless* stripe |
            | `halves` | <b>repairs</b> |

            And on.
            """;

    private static NotebookCell cell() {
        return new NotebookCell("a", CellKind.MARKDOWN, TEXT, Set.of(), Map.of());
    }

    @Test
    void the_page_shows_a_table_that_scrolls_by_itself() {
        String html = MarkdownPart.of(cell(), 3, false).html();

        assertThat(html)
                .contains(
                        "aria-label=\"Table: way, good for\"", "<th>way</th>", "<td>a collar</td>", "<em>seamless</em>")
                .contains("&lt;b&gt;repairs&lt;/b&gt;", "<p>And on.</p>")
                .doesNotContain("---");
    }

    @Test
    void paper_shows_a_grid() {
        List<PageItem> items = MarkdownItems.of(cell(), false);

        assertThat(items).hasSize(3);
        Table table = ((PageItem.Grid) items.get(1)).table();
        assertThat(table.columns()).extracting(Table.Column::name).containsExactly("way", "good for");
        assertThat(table.rows())
                .containsExactly(List.of("a collar", "a seamless stripe"), List.of("halves", "repairs"));
    }
}
