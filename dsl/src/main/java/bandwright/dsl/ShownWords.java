// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.parse.Expected;
import bandwright.dsl.parse.TradeWords;
import bandwright.dsl.resolve.Kind;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;

/** The language's words for what can be shown, for those who have nearly written one of them. */
final class ShownWords {
    private static final String SHOW = "show ";

    private static final String LAYOUT = "layout";

    /** Fewer letters begin too many words. */
    private static final int LEAST_LETTERS = 3;

    private static final Set<String> BACK = Set.of("undo", "redo");

    private ShownWords() {}

    /**
     * What is said about a name nobody has defined, where it is all that is asked for, and something else than a definition is
     * likely to be meant.
     *
     * @param alone whether it stands without {@code show}
     */
    static Optional<Diagnostic> meant(String name, boolean alone, Place place, Resolution design) {
        if (design.isKnown(name)) {
            return Optional.empty();
        } else if (BACK.contains(name)) {
            return Optional.of(
                    Diagnostic.warning("nothing-undone", place).with(name).build());
        }
        if (name.equals(LAYOUT)) {
            return Optional.of(layout(place, alone, design.definitions().names(Kind.STONE_ROW)));
        }
        Optional<String> here = TradeWords.here(name.toLowerCase(Locale.ROOT));
        if (here.isPresent()) {
            return Optional.of(Diagnostic.warning("trade-word", place)
                    .with(name)
                    .advice(here.get())
                    .build());
        }
        List<String> near = near(name.toLowerCase(Locale.ROOT));
        Set<String> known = new TreeSet<>(design.definitions().names());
        List<String> nearNames = NearNames.nearest(name, known);
        boolean namesAreNearer = !near.isEmpty()
                && !nearNames.isEmpty()
                && NearNames.distance(name, nearNames.get(0)) < NearNames.distance(name, near.get(0));
        if (near.isEmpty() && !alone && design.measureWords().contains(name)) {
            return Optional.of(Diagnostic.warning("not-defined-yet", place)
                    .with(name)
                    .expected(name + "(…), with what is to be measured in the brackets")
                    .build());
        } else if (near.isEmpty() || namesAreNearer) {
            return Optional.empty();
        }
        return Optional.of(Diagnostic.warning("not-defined-yet", place)
                .with(name)
                .suggest(place, (alone ? SHOW : "") + near.get(0))
                .build());
    }

    private static Diagnostic layout(Place place, boolean alone, List<String> rows) {
        Diagnostic.Builder fault = Diagnostic.warning("layout-of-what", place);
        if (rows.isEmpty()) {
            return fault.expected("layout of a row of stones, and this design has none yet")
                    .build();
        }
        return fault.expected("layout of " + String.join(", or of ", rows))
                .suggest(place, (alone ? SHOW : "") + LAYOUT + " of " + rows.get(0))
                .build();
    }

    /** Those that begin so, then those that differ by a slip. */
    private static List<String> near(String word) {
        Set<String> words = Expected.at(new SourceText("", SHOW), SHOW.length()).words();
        List<String> begun = words.stream()
                .filter(known -> word.length() >= LEAST_LETTERS && known.startsWith(word))
                .toList();
        return begun.isEmpty() ? NearNames.nearest(word, words) : begun;
    }
}
