// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class DataTableTest {
    @Test
    void quoted_fields_hold_commas_quotes_and_line_breaks() {
        DataTable.Row row = DataTable.parse("a,b,c\n\"1,5\",\"say \"\"so\"\"\",\"two\nlines\"\n")
                .get(0);
        assertThat(row.text("a")).isEqualTo("1,5");
        assertThat(row.text("b")).isEqualTo("say \"so\"");
        assertThat(row.text("c")).isEqualTo("two\nlines");
    }

    @Test
    void an_empty_field_is_no_number() {
        DataTable.Row row = DataTable.parse("a,b\r\n,2.5\r\n").get(0);
        assertThat(row.numberOrNull("a")).isNull();
        assertThat(row.number("b")).isEqualTo(2.5);
    }

    @Test
    void a_row_of_another_length_is_refused() {
        assertThatThrownBy(() -> DataTable.parse("a,b\n1\n")).hasMessageContaining("1 fields under 2 columns");
    }
}
