// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view;

import java.util.List;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

class TableTest {
    private static final Table WEIGHTS = new Table(
            "Weights of \"Harbour light\"",
            List.of(
                    Table.Column.words("part"),
                    Table.Column.words("metal"),
                    Table.Column.numbers("weight", "g"),
                    Table.Column.numbers("share", "%")),
            List.of(
                    List.of("shank", "white gold 585, palladium", "5.12", "81.5"),
                    List.of("stripe <red>", "red gold 585", "1.16", "18.5"),
                    List.of("größe", "", "", "")),
            List.of("Without stones & solder."));

    @Test
    void plain_text_lines_up_words_left_and_numbers_right() {
        GoldenView.check("weights.txt", WEIGHTS.plainText());
    }

    @Test
    void html_names_columns_and_rows_and_needs_no_style() {
        GoldenView.check("weights.html", WEIGHTS.html());
    }

    @Test
    void csv_quotes_only_what_needs_it() {
        GoldenView.check("weights.csv", WEIGHTS.csv());
    }

    @Test
    void a_row_of_another_length_is_refused() {
        List<Table.Column> columns = List.of(Table.Column.words("part"));
        List<List<String>> rows = List.of(List.of("shank", "stripe"));
        List<String> footnotes = List.of();

        assertThatThrownBy(() -> new Table("", columns, rows, footnotes)).isInstanceOf(IllegalArgumentException.class);
    }
}
