// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The built-in stone materials ({@code stones.csv}), in the file's order, diamond first. */
public final class StoneCatalogue {
    private StoneCatalogue() {}

    /** All materials, always in the same order. */
    public static List<StoneMaterial> all() {
        return Loaded.ALL;
    }

    /** A material by its name or one of its other names; case counts. */
    public static Optional<StoneMaterial> find(String name) {
        return Optional.ofNullable(Loaded.BY_NAME.get(name));
    }

    /** Every name that {@link #find} knows. */
    public static List<String> names() {
        return List.copyOf(Loaded.BY_NAME.keySet());
    }

    private static final class Loaded {
        static final List<StoneMaterial> ALL = read();
        static final Map<String, StoneMaterial> BY_NAME = byName();

        private static List<StoneMaterial> read() {
            List<StoneMaterial> materials = new ArrayList<>();
            for (DataTable.Row row : DataTable.read("stones.csv")) {
                String also = row.text("also");
                materials.add(new StoneMaterial(
                        row.text("name"),
                        also.isEmpty() ? List.of() : List.of(also.split(" ", -1)),
                        row.text("title"),
                        row.number("density_gcm3"),
                        row.numberOrNull("refractive_index_low"),
                        row.numberOrNull("refractive_index_high"),
                        new LinearColour(row.number("red"), row.number("green"), row.number("blue")),
                        MaterialSource.of(row.text("source_id"), row.text("how")),
                        row.text("note")));
            }
            return List.copyOf(materials);
        }

        private static Map<String, StoneMaterial> byName() {
            Map<String, StoneMaterial> byName = new LinkedHashMap<>();
            for (StoneMaterial material : ALL) {
                add(byName, material.name(), material);
                material.otherNames().forEach(name -> add(byName, name, material));
            }
            return byName;
        }

        private static void add(Map<String, StoneMaterial> byName, String name, StoneMaterial material) {
            if (byName.put(name, material) != null) {
                throw new IllegalStateException("two stone materials named " + name);
            }
        }
    }
}
