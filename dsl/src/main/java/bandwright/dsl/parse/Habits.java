// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.antlr.v4.runtime.Token;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.source.Span;

import static bandwright.dsl.parse.antlr.BandLexer.*;

/**
 * What people write out of habit, from the bench or from other notations, and what they would write here: a karat for a metal, a
 * colon for an equals sign, two slashes for a comment.
 */
final class Habits {
    /** The words people have for what the language calls otherwise. */
    private static final Map<String, String> OTHER_WORDS = Map.ofEntries(
            Map.entry("print", "show"),
            Map.entry("display", "show"),
            Map.entry("draw", "show"),
            Map.entry("delete", "forget"),
            Map.entry("remove", "forget"),
            Map.entry("groove", "cut"),
            Map.entry("seat", "cut"),
            Map.entry("seats", "cut"),
            Map.entry("row", "stone-row"),
            Map.entry("stones", "stone-row"),
            Map.entry("claws", "prongs"),
            Map.entry("pins", "prongs"),
            Map.entry("alloy", "metal"),
            Map.entry("section", "profile"),
            Map.entry("shape", "profile"),
            Map.entry("name", "title"),
            Map.entry("assert", "require"));

    private static final int MOST_RECIPES = 8;

    private final List<Token> words;
    private final Expectation expectation;
    private final Report report;
    private final int index;

    Habits(List<Token> words, Expectation expectation, Report report) {
        this.words = words;
        this.expectation = expectation;
        this.report = report;
        this.index = expectation.index();
    }

    /** What is said about the fault, if it is one of these. */
    Optional<Diagnostic.Builder> said() {
        if (type(-1) == METAL && type(0) == NUMBER) {
            return Optional.of(metalByNumber());
        } else if (index == 0 && type(0) == SLASH && (type(1) == SLASH || type(1) == STAR)) {
            return Optional.of(fault("foreign-comment", index, index + 1)
                    .suggest(report.source().place(span(index, index + 1)), "#"));
        } else if (index == 1 && Words.isName(type(-1)) && type(0) == COLON) {
            return Optional.of(colonForEquals());
        } else if (index == 1 && type(-1) == NAME && Words.isName(type(0)) && type(1) == EQ) {
            return Optional.of(fault("word-before-definition", 0, 0)
                    .with(text(0))
                    .suggest(report.source().place(new Span(start(0), start(1))), ""));
        } else if (lacksColon()) {
            return Optional.of(fault("missing-colon", index, index)
                    .with(text(index - 1))
                    .suggest(report.after(words.get(index - 1)), ":"));
        } else if (type(-2) == STONE && Words.isName(type(-1)) && type(0) == NUMBER) {
            return Optional.of(fault("stone-without-cut", index - 1, index - 1)
                    .suggest(report.source().place(span(index - 1, index - 1)), "round " + text(index - 1)));
        } else if (index == 1 && words.get(0).getType() == RING && type(0) == NAME && type(1) == LBRACE) {
            return Optional.of(
                    fault("ring-for-band", 0, 0).suggest(report.source().place(span(0, 0)), "band"));
        } else if (isMeasureWithoutBrackets()) {
            return Optional.of(fault("measure-without-brackets", index - 1, index)
                    .with(text(index - 1))
                    .suggest(report.source().place(span(index - 1, index)), text(index - 1) + "(" + text(index) + ")"));
        }
        return Optional.empty();
    }

    /** The language's word for one that opens no statement. */
    static Optional<String> otherWord(String word) {
        return Optional.ofNullable(OTHER_WORDS.get(word));
    }

    /** {@code 14k}, {@code 585}: the recipes that are sold under it. */
    private Diagnostic.Builder metalByNumber() {
        boolean karat = type(1) == NAME || type(1) == UNIT;
        int last = karat && index + 1 < words.size() ? index + 1 : index;
        String mark = report.source().text(span(index, last)).replace(" ", "");
        List<String> recipes = MetalCatalogue.recipes(mark.replaceFirst("(?i)kt$", "k")).stream()
                .map(Metal::name)
                .toList();
        Diagnostic.Builder fault = fault("metal-by-number", index, last).with(mark);
        return recipes.isEmpty()
                ? fault
                : fault.expected(String.join(", ", recipes.subList(0, Math.min(MOST_RECIPES, recipes.size())))
                        + (recipes.size() > MOST_RECIPES ? " and others" : ""));
    }

    private Diagnostic.Builder colonForEquals() {
        int last = type(1) == EQ ? index + 1 : index;
        Span sign = span(index, last);
        return fault("colon-for-equals", index, last)
                .with(text(index - 1))
                .suggest(
                        report.source().place(new Span(Report.span(words.get(0)).end(), sign.end())), " =");
    }

    private boolean lacksColon() {
        return expectation.kinds().contains(COLON)
                && Words.isName(type(-1))
                && (type(-2) == LPAREN || type(-2) == COMMA)
                && (type(0) == NUMBER || type(0) == NAME);
    }

    /** {@code weight shank}, alone or after {@code show}. */
    private boolean isMeasureWithoutBrackets() {
        boolean alone = index == 1 || (index == 2 && words.get(0).getType() == SHOW);
        return alone
                && type(-1) == NAME
                && otherWord(text(index - 1)).isEmpty()
                && Words.isName(type(0))
                && index + 1 == words.size();
    }

    private Diagnostic.Builder fault(String code, int first, int last) {
        return Diagnostic.error(code, report.source().place(span(first, last)));
    }

    private Span span(int first, int last) {
        return Report.span(words.get(first)).to(Report.span(words.get(last)));
    }

    private int start(int at) {
        return Report.span(words.get(at)).start();
    }

    private String text(int at) {
        return words.get(at).getText();
    }

    private int type(int offset) {
        int at = index + offset;
        return at < 0 || at >= words.size() ? Token.EOF : words.get(at).getType();
    }
}
