// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

import org.antlr.v4.runtime.Token;

import bandwright.dsl.parse.antlr.BandLexer;

import static bandwright.dsl.parse.antlr.BandLexer.*;

/** What kinds of words there are, and how people call them. */
final class Words {
    /** Signs and words that stand between two values. */
    static final Set<Integer> OPERATORS = Set.of(EQ, NE, LT, LE, GT, GE, PLUS, MINUS, STAR, SLASH, CARET, AND, OR);

    private static final Set<Integer> CONTINUES_BEFORE = Set.of(LBRACE, BETWEEN, STEP, BECAUSE, THEN, ELSE);
    private static final Set<Integer> STARTS_VALUE =
            Set.of(NUMBER, SYSTEM, STRING, TRUE, FALSE, LPAREN, NAME, RING, IF, NOT);

    private Words() {}

    /** Whether a word opens a statement. */
    static boolean opens(int type) {
        return type >= TITLE && type <= SHEET;
    }

    /** Whether a word is kept for the language and can name nothing. */
    static boolean isReserved(int type) {
        return type >= TITLE && type <= UNIT;
    }

    /** Whether a word is special in some places and a name in others. */
    static boolean isSoft(int type) {
        return type >= FINGER && type <= OUTSIDE;
    }

    /** Whether a word may open a property: the soft words, and the two that open statements as well. */
    static boolean isPropertyWord(int type) {
        return isSoft(type) || type == PROFILE || type == METAL;
    }

    static boolean isName(int type) {
        return type == NAME || isSoft(type);
    }

    static boolean isOperator(int type) {
        return OPERATORS.contains(type);
    }

    static boolean startsValue(int type) {
        return STARTS_VALUE.contains(type) || isSoft(type);
    }

    /** Whether a word goes on with the property before it. */
    static boolean continuesProperty(int type) {
        return type == WITHIN || type == CENTRED || type == ALLOW;
    }

    /** Whether a line that ends with this word goes on in the next. */
    static boolean continuesAfter(int type) {
        return isOperator(type) || type == NOT || type == COMMA;
    }

    /** Whether a line that begins with this word belongs to the line before. */
    static boolean continuesBefore(int type) {
        return isOperator(type) || CONTINUES_BEFORE.contains(type);
    }

    /** The words that open a statement. */
    static List<String> openers() {
        return IntStream.rangeClosed(TITLE, SHEET).mapToObj(Words::spelling).toList();
    }

    /** How a word is written, or what a kind of word is called. */
    static String spelling(int type) {
        String literal = BandLexer.VOCABULARY.getLiteralName(type);
        if (literal != null) {
            return literal.substring(1, literal.length() - 1);
        }
        return switch (type) {
            case Token.EOF -> "the end of the line";
            case NEWLINE -> "a new line";
            case NAME -> "a name";
            case NUMBER -> "a number";
            case STRING -> "a text in quotes";
            case SYSTEM -> "a size system";
            case UNIT -> "a unit";
            case NE -> "<>";
            case LE -> "<=";
            case GE -> ">=";
            case MINUS -> "-";
            case STAR -> "*";
            case SUPERSCRIPT -> "²";
            default -> "a word";
        };
    }

    /** All kinds in a set as people write them, operators folded into one. */
    static Set<String> spellings(Set<Integer> types) {
        // After a complete value any operator may follow; naming all of them would drown the rest.
        boolean anyOperator = types.contains(STAR);
        Set<String> words = new TreeSet<>();
        for (int type : types) {
            boolean folded = isOperator(type)
                    || type == SUPERSCRIPT
                    || type == LPAREN
                    || type == IN
                    || type == BETWEEN
                    || type == WITHIN;
            // Between the commas of a list a comma is not seen.
            words.add(anyOperator && folded ? "an operator" : type == COMMA ? "a comma" : spelling(type));
        }
        return words;
    }
}
