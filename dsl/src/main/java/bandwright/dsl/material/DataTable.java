// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

/**
 * A data file with a header row, read whole: comma-separated text after RFC 4180 (Y. Shafranovich, 2005), UTF-8, fields
 * in double quotes where they hold a comma, a quote or a line break.
 */
public final class DataTable {
    private DataTable() {}

    /** One row; a field is found by the name at the head of its column. */
    public record Row(Map<String, String> fields) {
        public String text(String column) {
            String text = fields.get(column);
            if (text == null) {
                throw new IllegalStateException("no column " + column);
            }
            return text;
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        @Nullable
        Double numberOrNull(String column) {
            return text(column).isEmpty() ? null : Double.valueOf(text(column));
        }
    }

    /** Reads a file of this package. */
    static List<Row> read(String file) {
        return read(DataTable.class, file);
    }

    /** Reads a file beside a class; the files belong to the product, so one that is missing is our fault. */
    public static List<Row> read(Class<?> beside, String file) {
        try (InputStream stream = beside.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("no data file " + file);
            }
            return parse(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Row> parse(String text) {
        List<List<String>> records = records(text);
        List<String> header = records.get(0);
        List<Row> rows = new ArrayList<>();
        for (List<String> fields : records.subList(1, records.size())) {
            if (fields.size() != header.size()) {
                throw new IllegalStateException(
                        "a row of " + fields.size() + " fields under " + header.size() + " columns: " + fields);
            }
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < header.size(); i++) {
                row.put(header.get(i), fields.get(i));
            }
            rows.add(new Row(row));
        }
        return List.copyOf(rows);
    }

    private static List<List<String>> records(String text) {
        List<List<String>> records = new ArrayList<>();
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted) {
                if (c != '"') {
                    field.append(c);
                } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    field.append(c);
                    i++;
                } else {
                    quoted = false;
                }
            } else if (c == '"') {
                quoted = true;
            } else if (c == ',' || c == '\n') {
                fields.add(field.toString());
                field.setLength(0);
                if (c == '\n') {
                    records.add(fields);
                    fields = new ArrayList<>();
                }
            } else if (c != '\r') {
                field.append(c);
            }
        }
        return records;
    }
}
