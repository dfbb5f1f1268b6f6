// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Figures published by others, in the test resources; each row names its source. */
public final class OutsideData {
    private OutsideData() {}

    /** One row; a field is found by the name at the head of its column. */
    public record Row(Map<String, String> fields) {
        public String text(String column) {
            return Objects.requireNonNull(fields.get(column), column);
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        public boolean has(String column) {
            return !fields.getOrDefault(column, "").isEmpty();
        }
    }

    /** All rows of a file. */
    public static List<Row> rows(String file) {
        try (InputStream stream = OutsideData.class.getResourceAsStream("/bandwright/dsl/outside/" + file)) {
            String text = new String(Objects.requireNonNull(stream, file).readAllBytes(), StandardCharsets.UTF_8);
            return DataTable.parse(text).stream()
                    .map(row -> new Row(row.fields()))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
