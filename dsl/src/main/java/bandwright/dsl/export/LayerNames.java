// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Names of layers in files that take letters without accents, figures and a few signs only; each is another. */
public final class LayerNames {
    private LayerNames() {}

    /**
     * The name of each layer in a file.
     *
     * @param longest how many signs a name may have
     */
    public static Map<String, String> of(List<PlanLayer> layers, int longest) {
        Map<String, String> names = new LinkedHashMap<>();
        Set<String> taken = new HashSet<>();
        for (PlanLayer layer : layers) {
            String plain = layer.name().replaceAll("[^A-Za-z0-9_-]", "_");
            String name = plain.substring(0, Math.min(longest, plain.length()));
            for (int number = 2; !taken.add(name); number++) {
                String end = "_" + number;
                name = plain.substring(0, Math.min(longest - end.length(), plain.length())) + end;
            }
            names.put(layer.name(), name);
        }
        return names;
    }
}
