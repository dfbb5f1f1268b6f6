// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.antlr.v4.runtime.Token;

import bandwright.dsl.parse.antlr.BandLexer;
import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

import static bandwright.dsl.parse.antlr.BandLexer.*;

/**
 * What could be written at a place of a text, by the grammar.
 *
 * @param words words of the language that may come there, in alphabetical order
 * @param statement whether a statement may begin there
 * @param value whether a value may
 * @param name whether a name may
 * @param unit whether a unit may
 * @param before the words of the statement up to there, without line ends
 * @param typed the word being typed, empty if none is
 */
public record Expected(
        Set<String> words,
        boolean statement,
        boolean value,
        boolean name,
        boolean unit,
        List<TextWord> before,
        Span typed) {
    /** What fits at an offset, counted in code points; words behind it are not looked at. */
    public static Expected at(SourceText source, int offset) {
        int end = Math.min(Math.max(0, offset), source.length());
        Span typed = typed(source, end);
        List<Token> open = open(new SourceText(source.name(), source.text(new Span(0, typed.start()))));
        Expectation expectation = Expectation.of(open);
        List<TextWord> before = open.stream()
                .map(token -> new TextWord(TextWords.role(token.getType()), Report.span(token), token.getText()))
                .toList();
        if (expectation.index() < open.size()) {
            return new Expected(Set.of(), false, false, false, false, before, typed);
        }
        Set<String> words = new TreeSet<>();
        for (int kind : expectation.kinds()) {
            if (kind > 0 && (Words.isReserved(kind) || Words.isSoft(kind)) && kind != SYSTEM && kind != UNIT) {
                words.add(Words.spelling(kind));
            }
        }
        boolean statement = expectation.rules().contains(BandParser.RULE_statement);
        if (statement) {
            words.addAll(Words.openers());
        }
        return new Expected(
                words,
                statement,
                statement || expectation.allowsValue(),
                expectation.allowsName(),
                expectation.rules().contains(BandParser.RULE_unit)
                        || expectation.kinds().contains(UNIT),
                before,
                typed);
    }

    /** All words of the language that are spelled out, in alphabetical order. */
    public static Set<String> allWords() {
        Set<String> words = new TreeSet<>();
        for (int kind = 1; kind <= BandLexer.VOCABULARY.getMaxTokenType(); kind++) {
            boolean word = Words.isReserved(kind) || Words.isSoft(kind);
            if (word && kind != SYSTEM && kind != UNIT) {
                words.add(Words.spelling(kind));
            }
        }
        return words;
    }

    /** The letters, digits and hyphens that end at an offset. */
    private static Span typed(SourceText source, int end) {
        int[] points = source.codePoints();
        int start = end;
        while (start > 0 && (Character.isLetterOrDigit(points[start - 1]) || points[start - 1] == '-')) {
            start--;
        }
        // A number is not the beginning of a word: after "5" a unit may come.
        while (start < end && !Character.isLetter(points[start])) {
            start++;
        }
        return new Span(start, end);
    }

    /** The words of the statement that the text ends in; none if it ends between statements. */
    private static List<Token> open(SourceText source) {
        Report report = new Report(source);
        List<Token> words = Scanner.scan(source, report);
        List<List<Token>> statements = StatementCutter.cut(words, report);
        if (statements.isEmpty()) {
            return List.of();
        }
        List<Token> last = new ArrayList<>(statements.get(statements.size() - 1));
        boolean open = false;
        // Brackets that the cutter put in are still to be written.
        while (!last.isEmpty() && Report.span(last.get(last.size() - 1)).length() == 0) {
            last.remove(last.size() - 1);
            open = true;
        }
        boolean lineEnded = words.get(words.size() - 1).getType() == NEWLINE;
        boolean goesOn = !last.isEmpty()
                && Words.continuesAfter(last.get(last.size() - 1).getType());
        return lineEnded && !open && !goesOn ? List.of() : last;
    }
}
