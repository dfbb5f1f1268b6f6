// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.antlr.v4.runtime.Token;

import static bandwright.dsl.parse.antlr.BandLexer.*;

/** The names that a statement would make, read from its first words alone: there need be no sense in the rest. */
final class NamesMeant {
    private static final Set<Integer> MAKERS = Set.of(PROFILE, BAND, CUT, STONE_ROW, PRONGS, METAL, STONE_MATERIAL);

    private NamesMeant() {}

    /** In alphabetical order. */
    static Set<String> by(List<List<Token>> statements) {
        Set<String> names = new TreeSet<>();
        statements.forEach(words -> add(words, names));
        return names;
    }

    private static void add(List<Token> words, Set<String> names) {
        if (type(words, 1) == EQ) {
            addName(words, 0, names);
        } else if (MAKERS.contains(type(words, 0))) {
            addName(words, 1, names);
        }
        for (int at = 2; at < words.size() && type(words, 0) == CUT; at++) {
            if (type(words, at - 1) == KEEP || type(words, at - 1) == LEAVING) {
                addName(words, at, names);
                // Further pieces follow after commas.
                for (int next = at + 1; type(words, next) == COMMA; next += 2) {
                    addName(words, next + 1, names);
                }
            }
        }
    }

    private static void addName(List<Token> words, int at, Set<String> names) {
        if (Words.isName(type(words, at))) {
            names.add(words.get(at).getText());
        }
    }

    private static int type(List<Token> words, int at) {
        return at < words.size() ? words.get(at).getType() : Token.EOF;
    }
}
