// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The elements with a density on file ({@code elements.csv}), in the file's order: gold, silver, copper, zinc … */
public final class Elements {
    private Elements() {}

    /** All of them, always in the same order. */
    public static List<Element> all() {
        return Loaded.ALL;
    }

    /** By the language's word ({@code gold}) or the chemical symbol ({@code Au}); case counts. */
    public static Optional<Element> find(String nameOrSymbol) {
        return all().stream()
                .filter(element ->
                        element.name().equals(nameOrSymbol) || element.symbol().equals(nameOrSymbol))
                .findFirst();
    }

    /** An element our own data names: one that is missing is our fault. */
    static Element require(String symbol) {
        return find(symbol).orElseThrow(() -> new IllegalStateException("no element " + symbol));
    }

    private static final class Loaded {
        static final List<Element> ALL = read();

        private static List<Element> read() {
            List<Element> elements = new ArrayList<>();
            for (DataTable.Row row : DataTable.read("elements.csv")) {
                elements.add(new Element(
                        row.text("symbol"),
                        row.text("name"),
                        row.number("density_gcm3"),
                        row.number("melting_c"),
                        MaterialSource.of(row.text("source_id"), row.text("how")),
                        row.text("note")));
            }
            return List.copyOf(elements);
        }
    }
}
