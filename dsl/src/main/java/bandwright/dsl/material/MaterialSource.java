// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where a datum was read.
 *
 * @param id short key, for example {@code GOSTTAB}
 * @param text title; publisher; year; section
 * @param how how far the datum is the source's own: published, derived, common practice, from memory
 */
public record MaterialSource(String id, String text, String how) {
    /** Where the user's own materials come from. */
    static final MaterialSource USER = new MaterialSource("USER", "given in the design", "given");

    /** The sources of a row: keys joined by {@code +}, in the order in which they are named. */
    static List<MaterialSource> of(String ids, String how) {
        List<MaterialSource> sources = new ArrayList<>();
        for (String id : ids.split("\\+", -1)) {
            String text = Texts.BY_ID.get(id);
            if (text == null) {
                throw new IllegalStateException("no source " + id);
            }
            sources.add(new MaterialSource(id, text, how));
        }
        return List.copyOf(sources);
    }

    private static final class Texts {
        static final Map<String, String> BY_ID = read();

        private static Map<String, String> read() {
            Map<String, String> texts = new LinkedHashMap<>();
            for (DataTable.Row row : DataTable.read("sources.csv")) {
                String text = Stream.of("title", "publisher", "year", "section")
                        .map(row::text)
                        .filter(part -> !part.isEmpty())
                        .collect(Collectors.joining("; "));
                texts.put(row.text("id"), text);
            }
            return texts;
        }
    }
}
