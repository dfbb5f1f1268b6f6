// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.StoneCatalogue;
import bandwright.dsl.model.Fault;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Name;

/** What is said about a name that stands for nothing, or for something else than is wanted. */
final class NameFaults {
    private static final int MOST_RECIPES = 8;

    private static final String PI = "3.14159265";

    /** What the trade calls stones for short. */
    private static final Map<String, String> STONES = Map.of(
            "cz", "cubic-zirconia", "zirconia", "cubic-zirconia", "brilliant", "diamond", "lapis", "lapis-lazuli");

    /** Shorter words of a metal's name are symbols and marks, which lie too near each other to guess. */
    private static final int LEAST_CORRECTED = 4;

    /** {@code ISO57}, {@code US7}, or a letter alone, which is a finger size in the United Kingdom. */
    private static final Pattern SIZE = Pattern.compile("(US|UK|ISO|JP|CH|DE)(\\d+)|(?:UK)?([A-Z])");

    private final Definitions definitions;

    NameFaults(Definitions definitions) {
        this.definitions = definitions;
    }

    /** A name that nothing defines yet, where any value may stand. */
    Fault undefined(String name, @Nullable Place place) {
        if (name.equals("pi") && place != null) {
            return new Fault(Diagnostic.warning("not-defined-yet", place)
                    .with(name)
                    .suggest(place, PI)
                    .advice("The way round a finger is circumference(…) of its size, the way across diameter(…).")
                    .build());
        }
        Matcher size = SIZE.matcher(name);
        if (size.matches() && place != null) {
            boolean letter = size.group(1) == null;
            return new Fault(Diagnostic.warning("not-defined-yet", place)
                    .with(name)
                    .suggest(place, letter ? "UK " + size.group(3) : size.group(1) + " " + size.group(2))
                    .build());
        }
        Set<String> known = new TreeSet<>(definitions.names());
        if (name.contains("-")) {
            known.addAll(MetalCatalogue.names());
        }
        known.addAll(StoneCatalogue.names());
        return unknown("not-defined-yet", name, place, known);
    }

    /** A name that nothing defines yet, where one of a kind must stand. */
    Fault undefined(String name, @Nullable Place place, Collection<String> known) {
        return unknown("not-defined-yet", name, place, known);
    }

    /** A metal that nobody knows; a mark without a recipe gets the recipes that are sold under it. */
    Fault unknownMetal(String written, @Nullable Place place) {
        // Case counts, but not for what is meant.
        String name = recipes(written).isEmpty() ? written.toLowerCase(Locale.ROOT) : written;
        List<String> recipes = recipes(name);
        if (recipes.isEmpty()) {
            // A family or colour alone, such as gold or red-gold: what there is of it.
            recipes = MetalCatalogue.names().stream()
                    .filter(known -> known.startsWith(name + "-") || known.contains("-" + name + "-"))
                    .toList();
        }
        String meant = name;
        if (recipes.isEmpty() && MetalCatalogue.find(corrected(name)).isEmpty()) {
            meant = corrected(name);
            recipes = recipes(meant);
        }
        if (!recipes.isEmpty()) {
            return new Fault(Diagnostic.warning("karat-without-recipe", place)
                    .with(meant)
                    .found(meant.equals(name) ? null : written)
                    .expected(String.join(", ", recipes.subList(0, Math.min(MOST_RECIPES, recipes.size())))
                            + (recipes.size() > MOST_RECIPES ? " and others" : ""))
                    .build());
        }
        List<String> known = new ArrayList<>(definitions.names(Kind.METAL));
        known.addAll(definitions.names(Kind.DEFINITION));
        known.addAll(MetalCatalogue.names());
        return unknown("unknown-metal", written, place, known);
    }

    Fault unknownStone(String name, @Nullable Place place) {
        String meant = STONES.get(name.toLowerCase(Locale.ROOT));
        if (meant != null && place != null) {
            return new Fault(Diagnostic.warning("unknown-stone", place)
                    .with(name)
                    .suggest(place, meant)
                    .build());
        }
        List<String> known = new ArrayList<>(definitions.names(Kind.STONE_MATERIAL));
        known.addAll(definitions.names(Kind.DEFINITION));
        known.addAll(StoneCatalogue.names());
        return unknown("unknown-stone", name, place, known);
    }

    /** A name of something else. */
    Fault wrongKind(String name, Kind kind, String wanted, @Nullable Place place) {
        Diagnostic.Builder fault = Diagnostic.error("wrong-kind-of-name", place).with(name, kind.words(), wanted);
        definitions.find(name).ifPresent(entry -> {
            fault.label(place, "");
            fault.label(entry.place(), kind.words());
        });
        return new Fault(fault.build());
    }

    /** What needs a name that cannot be made waits; the first reason is told, however long the chain. */
    static Fault waits(Name name, SourceText source, Fault reason) {
        Diagnostic first = reason.diagnostics().get(0);
        String why = first.code().equals("waits") && first.found() != null ? first.found() : first.message();
        return new Fault(Diagnostic.note("waits", source.place(name.span()))
                .with(name.text())
                .found(why)
                .build());
    }

    /** Things that need each other. */
    Fault loop(List<String> links) {
        String first = links.get(0);
        List<String> names = new ArrayList<>(links);
        names.add(first);
        Diagnostic.Builder loop = Diagnostic.error(
                        "definition-loop", definedAt(first).orElse(null))
                .with(String.join(" -> ", names));
        links.forEach(link -> definedAt(link).ifPresent(at -> loop.label(at, "")));
        return new Fault(loop.build());
    }

    /** Where a link is defined: {@code shank}, or {@code metal of shank}. */
    private Optional<Place> definedAt(String link) {
        return definitions.find(link.substring(link.lastIndexOf(' ') + 1)).map(Entry::place);
    }

    private static Fault unknown(String code, String name, @Nullable Place place, Collection<String> known) {
        List<String> near = NearNames.nearest(name, known);
        Diagnostic.Builder fault = Diagnostic.warning(code, place).with(name);
        if (near.size() == 1 && place != null) {
            fault.suggest(place, near.get(0));
        } else {
            fault.expected(CellRun.near(near));
        }
        return new Fault(fault.build());
    }

    /** The same with each word of it that no metal's name has replaced by the one that is nearest, if there is one. */
    private static String corrected(String name) {
        Set<String> known = new TreeSet<>();
        MetalCatalogue.names().forEach(metal -> known.addAll(List.of(metal.split("-", -1))));
        List<String> words = new ArrayList<>();
        for (String word : name.split("-", -1)) {
            boolean kept = known.contains(word) || word.length() < LEAST_CORRECTED;
            List<String> near = kept ? List.of(word) : NearNames.nearest(word, known);
            words.add(near.isEmpty() ? word : near.get(0));
        }
        return String.join("-", words);
    }

    /** The recipes for a name such as {@code gold-14k} or {@code white-gold-750}; none if it says something else. */
    private static List<String> recipes(String name) {
        List<Metal> recipes = List.of();
        List<String> words = new ArrayList<>();
        for (String word : name.split("-", -1)) {
            boolean mark = word.matches("\\d{1,2}(k|K|kt|ct)|\\d{3}");
            if (mark) {
                recipes = MetalCatalogue.recipes(word.replace("kt", "k"));
            } else {
                words.add(word);
            }
        }
        List<Metal> named = recipes.stream()
                .filter(metal -> List.of(metal.name().split("-", -1)).containsAll(words))
                .toList();
        boolean allKnown = words.stream()
                .allMatch(word -> MetalCatalogue.names().stream()
                        .anyMatch(known -> List.of(known.split("-", -1)).contains(word)));
        List<Metal> best = named.isEmpty() && allKnown ? recipes : named;
        return best.stream().map(Metal::name).toList();
    }
}
