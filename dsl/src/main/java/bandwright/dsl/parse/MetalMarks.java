// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.material.Metal;
import bandwright.dsl.material.MetalCatalogue;

/** The recipes that are sold under a mark, such as {@code 14k}, {@code 585} or {@code 18k-white-gold}. */
final class MetalMarks {
    private static final int MOST_RECIPES = 8;

    private MetalMarks() {}

    /** Those of the mark, and where it names a colour, those of that colour if there are any. */
    static List<String> recipes(String mark) {
        List<String> said = List.of(mark.split("-", -1));
        List<String> recipes = MetalCatalogue.recipes(said.get(0).replaceFirst("(?i)kt$", "k")).stream()
                .map(Metal::name)
                .toList();
        List<String> coloured = recipes.stream()
                .filter(name -> List.of(name.split("-", -1)).containsAll(said.subList(1, said.size())))
                .toList();
        return firstOfEachColour(coloured.isEmpty() ? recipes : coloured);
    }

    /** The first recipe of each colour before the second of any, so that a short list names them all. */
    private static List<String> firstOfEachColour(List<String> recipes) {
        Map<String, List<String>> colours = new LinkedHashMap<>();
        recipes.forEach(name -> colours.computeIfAbsent(name.split("-", -1)[0], colour -> new ArrayList<>())
                .add(name));
        List<String> ordered = new ArrayList<>();
        for (int i = 0; ordered.size() < recipes.size(); i++) {
            for (List<String> colour : colours.values()) {
                if (i < colour.size()) {
                    ordered.add(colour.get(i));
                }
            }
        }
        return ordered;
    }

    /** As many as fit into a line. */
    static String listed(List<String> recipes) {
        return String.join(", ", recipes.subList(0, Math.min(MOST_RECIPES, recipes.size())))
                + (recipes.size() > MOST_RECIPES ? " and others" : "");
    }
}
