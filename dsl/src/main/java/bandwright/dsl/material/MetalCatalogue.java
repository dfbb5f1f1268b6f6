// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

/**
 * The built-in metals ({@code metals.csv}), in the file's order.
 *
 * <p>A name says colour, metal, fineness and, where recipes differ, what is in it: {@code red-gold-585} is 8 % silver and
 * copper, {@code rose-gold-585} (also {@code red-gold-585-ag200}) 20 % silver; {@code ag200} is 200 parts of silver in a
 * thousand, {@code pd160} 160 of palladium. {@code caster} marks a casting house's alloy whose recipe is not stated.
 */
public final class MetalCatalogue {
    private static final Pattern KARAT = Pattern.compile("(\\d{1,2})\\s*([kK]|ct|carat|karat)");

    private MetalCatalogue() {}

    /** All metals, always in the same order. */
    public static List<Metal> all() {
        return Loaded.ALL;
    }

    /** A metal by its name or one of its other names; case counts. */
    public static Optional<Metal> find(String name) {
        return Optional.ofNullable(Loaded.BY_NAME.get(name));
    }

    /** Every name that {@link #find} knows, first names and others, in the order of the metals. */
    public static List<String> names() {
        return List.copyOf(Loaded.BY_NAME.keySet());
    }

    /**
     * The metals of a fineness ({@code 585}, in a thousand) or a karat ({@code 14K}, {@code 18ct}: gold only). Never one
     * alone where several recipes are sold under the same mark: they differ by up to a tenth in density.
     */
    public static List<Metal> recipes(String mark) {
        Matcher karat = KARAT.matcher(mark);
        if (karat.matches()) {
            long karats = Long.parseLong(karat.group(1));
            return all().stream()
                    .filter(metal -> metal.family().equals("gold") && karats(metal) == karats)
                    .toList();
        }
        return all().stream()
                .filter(metal ->
                        metal.fineness() != null && metal.fineness().toString().equals(mark))
                .toList();
    }

    private static long karats(Metal metal) {
        Integer fineness = metal.fineness();
        return fineness == null ? -1 : Math.round(fineness * 24 / 1000.0);
    }

    private static final class Loaded {
        static final List<Metal> ALL = read();
        static final Map<String, Metal> BY_NAME = byName();

        private static List<Metal> read() {
            List<DataTable.Row> rows = DataTable.read("metals.csv");
            Map<String, Map<Element, Double>> recipes = new LinkedHashMap<>();
            for (DataTable.Row row : rows) {
                recipes.put(row.text("name"), composition(row.text("composition")));
            }
            List<Metal> metals = new ArrayList<>();
            for (DataTable.Row row : rows) {
                metals.add(metal(row, recipes));
            }
            return List.copyOf(metals);
        }

        private static Metal metal(DataTable.Row row, Map<String, Map<Element, Double>> recipes) {
            String name = row.text("name");
            // A metal without a stated recipe looks like the one the file names for it.
            String pictured = row.text("pictured_as").isEmpty() ? name : row.text("pictured_as");
            DensityOrigin origin = DensityOrigin.of(row.text("density_is"));
            Map<Element, Double> composition = recipes.getOrDefault(name, Map.of());
            // The file rounds what the rule gives; the rule itself is as good as its elements.
            double density =
                    origin == DensityOrigin.MIXING_RULE ? MixingRule.density(composition) : row.number("density_gcm3");
            return new Metal(
                    name,
                    words(row.text("also")),
                    row.text("title"),
                    row.text("metal"),
                    row.text("colour"),
                    fineness(row.text("fineness")),
                    composition,
                    density,
                    origin,
                    row.numberOrNull("solidus_c"),
                    row.numberOrNull("liquidus_c"),
                    row.text("melting_how").equals("from memory"),
                    nickel(row.text("nickel")),
                    MetalColour.of(recipes.getOrDefault(pictured, Map.of())),
                    MaterialSource.of(row.text("source_id"), row.text("how")),
                    row.text("note"));
        }

        private static @Nullable Integer fineness(String text) {
            return text.isEmpty() ? null : Integer.valueOf(text);
        }

        private static Nickel nickel(String text) {
            return switch (text) {
                case "yes" -> Nickel.YES;
                case "no" -> Nickel.NO;
                default -> Nickel.UNKNOWN;
            };
        }

        /** {@code Au 58.5 Ag 20 Cu 21.5}: symbols and per cent by mass. */
        private static Map<Element, Double> composition(String text) {
            Map<Element, Double> composition = new LinkedHashMap<>();
            List<String> words = words(text);
            for (int i = 0; i + 1 < words.size(); i += 2) {
                composition.put(Elements.require(words.get(i)), Double.parseDouble(words.get(i + 1)) / 100);
            }
            return composition;
        }

        private static List<String> words(String text) {
            return text.isEmpty() ? List.of() : List.of(text.split(" ", -1));
        }

        private static Map<String, Metal> byName() {
            Map<String, Metal> byName = new LinkedHashMap<>();
            for (Metal metal : ALL) {
                add(byName, metal.name(), metal);
                metal.otherNames().forEach(name -> add(byName, name, metal));
            }
            return byName;
        }

        private static void add(Map<String, Metal> byName, String name, Metal metal) {
            if (byName.put(name, metal) != null) {
                throw new IllegalStateException("two metals named " + name);
            }
        }
    }
}
