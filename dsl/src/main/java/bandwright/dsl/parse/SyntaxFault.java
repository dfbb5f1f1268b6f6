// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import org.antlr.v4.runtime.Token;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.source.Span;

import static bandwright.dsl.parse.antlr.BandLexer.*;

/**
 * Says what is wrong with a statement that does not parse: the slips people make first, the general case last. Each
 * case looks at the word that does not fit and its neighbours.
 */
final class SyntaxFault {
    private static final Set<String> LENGTHS = Set.of("mm", "cm", "um", "inch");

    private final List<Token> words;
    private final Expectation expectation;
    private final Report report;
    private final int index;
    private final boolean inBlock;

    SyntaxFault(List<Token> words, Expectation expectation, Report report) {
        this.words = words;
        this.expectation = expectation;
        this.report = report;
        this.index = expectation.index();
        this.inBlock = StatementReader.depth(words, Math.min(index, words.size())) > 0;
    }

    /** Reports the fault; true if the words have been mended so that reading on makes sense. */
    boolean report() {
        if (index >= words.size()) {
            return endsTooEarly();
        } else if (Report.span(words.get(index)).length() == 0) {
            // A bracket that was forgotten and put in by the cutter; that has been reported.
            return false;
        }
        Optional<Diagnostic.Builder> habit = new Habits(words, expectation, report).said();
        if (habit.isPresent()) {
            return add(habit.get());
        } else if (stockAt() >= 0) {
            return stockWithoutSide(stockAt());
        } else if (inBlock && lacksValue()) {
            return unfinishedProperty();
        } else if (inBlock && (type(0) == EQ || type(0) == COLON) && Words.isName(type(-1))) {
            return propertyWithSign(index, index - 1);
        } else if (isLimitWithSign()) {
            return limitWithSign();
        } else if (inBlock && isOpenedProperty()) {
            return propertyWithSign(index, index - 1);
        } else if (inBlock && type(0) == COMMA) {
            return propertyWithComma(index);
        } else if (inBlock && type(-2) == COMMA && Words.isSoft(type(-1)) && Words.startsValue(type(0))) {
            return propertyWithComma(index - 2);
        } else if (inBlock && type(0) == LPAREN && Words.isName(type(-1)) && type(-2) == PROFILE) {
            return profileWithForm();
        } else if (inBlock && type(0) == BECAUSE) {
            return reasonInside();
        } else if (inBlock
                && type(0) == NAME
                && type(1) == EQ
                && expectation.properties().isEmpty()) {
            return secondInBraces();
        } else if (inBlock && expectation.kinds().contains(RBRACE) && type(0) == NAME && type(-1) != NUMBER) {
            return unknownProperty();
        } else if (!inBlock && index > 0 && Words.opens(type(0)) && expectation.allowsEnd()) {
            return secondStatement();
        } else if (isReservedName()) {
            return reservedName();
        } else if (index == 1 && Words.isName(words.get(0).getType()) && type(0) != EQ) {
            return unknownStatement();
        } else if (expectation.kinds().contains(EQ) && !expectation.kinds().contains(STAR)) {
            return missingEquals();
        } else if (type(-1) == NUMBER && type(0) == NAME) {
            return unknownUnit();
        } else if (type(0) == UNIT && type(-1) != NUMBER) {
            return add(fault("unit-without-number", words.get(index)).with(text(index)));
        } else if (isClosing() && !isOpen()) {
            return add(fault("unmatched-closing", words.get(index))
                    .with(text(index))
                    .suggest(report.place(words.get(index)), ""));
        } else {
            return unexpected();
        }
    }

    private boolean endsTooEarly() {
        Token last = words.get(words.size() - 1);
        return add(Diagnostic.error("unfinished-statement", report.after(last)).expected(expectation.words()));
    }

    private boolean lacksValue() {
        boolean closes = type(0) == RBRACE && expectation.allowsValueOrName();
        return closes || expectation.isEarlyEnd(words);
    }

    private boolean unfinishedProperty() {
        return add(Diagnostic.error("unfinished-property", report.after(words.get(index - 1)))
                .expected(expectation.words()));
    }

    /** {@code metal = …}: these two words open a statement elsewhere. */
    private boolean isOpenedProperty() {
        return (type(0) == EQ || type(0) == COLON) && (type(-1) == METAL || type(-1) == PROFILE);
    }

    /** {@code limit casting-wall = …}: it reads as a property does. */
    private boolean isLimitWithSign() {
        boolean sign =
                type(0) == COLON || type(0) == EQ || type(0) == GE || type(0) == GT || type(0) == LE || type(0) == LT;
        return index == 2 && words.get(0).getType() == LIMIT && sign;
    }

    /** A limit wants its reason too: said at once, not by the next error. */
    private boolean limitWithSign() {
        if (index + 1 >= words.size()) {
            return add(Diagnostic.error("unfinished-statement", report.after(words.get(index)))
                    .expected("a value"));
        }
        boolean reasoned = words.stream().anyMatch(word -> word.getType() == BECAUSE);
        if (reasoned) {
            return propertyWithSign(index, index - 1);
        }
        Span value = Report.span(words.get(index + 1)).to(Report.span(words.get(words.size() - 1)));
        add(fault("property-with-sign", words.get(index))
                .with(text(index - 1), text(index))
                .suggestLine("limit " + text(index - 1) + " " + report.source().text(value)
                        + " because \"our caster holds this\""));
        words.remove(index);
        return true;
    }

    private boolean propertyWithSign(int sign, int word) {
        add(fault("property-with-sign", words.get(sign))
                .with(text(word), text(sign))
                .suggest(report.source().place(withSpaces(sign)), " "));
        words.remove(sign);
        return true;
    }

    private boolean propertyWithComma(int comma) {
        add(fault("property-with-comma", words.get(comma))
                .suggest(report.source().place(withSpaces(comma)), " "));
        words.remove(comma);
        return true;
    }

    /** Where the figure of a stock begins that is followed by no side; negative if this is not what is wrong. */
    private int stockAt() {
        if (!expectation.kinds().contains(OUTSIDE)) {
            return -1;
        }
        int first = index;
        while (first > 0 && type(first - 1 - index) != STOCK && type(first - 1 - index) != COMMA) {
            first--;
        }
        return first > 0 && first < index ? first : -1;
    }

    /** {@code stock 0.1 mm}, {@code stock 0.1}, {@code stock 2 %}. */
    private boolean stockWithoutSide(int first) {
        Token last = words.get(index - 1);
        Diagnostic.Builder fault = Diagnostic.error("stock-without-side", report.place(words.get(first), last));
        boolean plain = first == index - 1 && type(-1) == NUMBER;
        boolean noLength = words.subList(first, index).stream()
                .anyMatch(word -> word.getType() == UNIT && !LENGTHS.contains(word.getText()));
        boolean second = type(first - 1 - index) == COMMA
                && words.subList(0, first).stream().anyMatch(word -> word.getType() == OUTSIDE);
        int side = second ? INSIDE : OUTSIDE;
        String word = Words.spelling(side);
        add(
                noLength
                        ? fault.expected("a length and its side, such as 0.1 mm " + word)
                        : fault.suggest(report.after(last), (plain ? " mm " : " ") + word));
        int end = Report.span(last).end();
        words.add(index, Scanner.made(side, last, word, new Span(end, end)));
        return true;
    }

    private boolean profileWithForm() {
        int close = index;
        int depth = 0;
        for (; close < words.size() - 1; close++) {
            int type = words.get(close).getType();
            depth += type == LPAREN ? 1 : type == RPAREN ? -1 : 0;
            if (depth == 0) {
                break;
            }
        }
        Token form = words.get(index - 1);
        String written = report.source().text(Report.span(form).to(Report.span(words.get(close))));
        add(Diagnostic.error("profile-with-form", report.place(form))
                .with(form.getText())
                .suggestLine("profile name = " + written));
        words.subList(index, close + 1).clear();
        return true;
    }

    private boolean unknownProperty() {
        Set<String> known = Words.spellings(expectation.properties());
        Diagnostic.Builder fault =
                fault("unknown-property", words.get(index)).with(text(index)).expected(String.join(", ", known));
        Optional<String> meant = OtherWords.property(text(index)).filter(known::contains);
        return add(
                meant.isPresent()
                        ? fault.suggest(report.place(words.get(index)), meant.get())
                        : withNearest(fault, index, known));
    }

    /** A reason is one of the whole statement: with it taken out, reading on makes sense. */
    private boolean reasonInside() {
        boolean said = index + 1 < words.size() && type(1) == STRING;
        Span reason = Report.span(words.get(index)).to(Report.span(words.get(said ? index + 1 : index)));
        add(fault("reason-inside", words.get(index)));
        words.subList(index, said ? index + 2 : index + 1).clear();
        return reason.length() > 0;
    }

    private boolean secondInBraces() {
        return add(fault("second-in-braces", words.get(index))
                .with(text(index))
                .suggest(report.after(words.get(index - 1)), ","));
    }

    private boolean secondStatement() {
        Span rest = Report.span(words.get(index)).to(Report.span(words.get(words.size() - 1)));
        return add(fault("second-statement", words.get(index))
                .with(text(index))
                .suggestLine(report.source().text(rest)));
    }

    /** A word of the language where only a name fits, or before the {@code =} of a definition. */
    private boolean isReservedName() {
        boolean nameWanted = expectation.allowsName() && !expectation.allowsValue();
        boolean wanted = Words.isReserved(type(0)) && (nameWanted || (index == 0 && type(1) == EQ));
        return wanted || (index == 1 && type(0) == EQ && Words.isReserved(type(-1)));
    }

    private boolean reservedName() {
        Token word = words.get(type(0) == EQ ? index - 1 : index);
        return add(fault("reserved-name", word).with(word.getText()));
    }

    private boolean unknownStatement() {
        Token first = words.get(0);
        String lower = first.getText().toLowerCase(Locale.ROOT);
        boolean nearOpener = !NearNames.nearest(lower, Words.openers()).isEmpty()
                || Words.openers().contains(lower);
        boolean value = Words.startsValue(type(0)) && !Words.isName(type(0)) && type(0) != LPAREN;
        Optional<String> here = TradeWords.here(lower);
        if (here.isPresent() && type(0) != NUMBER) {
            return add(fault("trade-word", first).with(first.getText()).advice(here.get()));
        } else if (value && !nearOpener) {
            return missingEquals();
        }
        Diagnostic.Builder fault = fault("unknown-statement", first).with(first.getText());
        Optional<String> meant = OtherWords.statement(lower);
        if (meant.isPresent()) {
            return add(fault.suggest(report.place(first), meant.get()));
        }
        return add(withNearest(fault, 0, Set.copyOf(Words.openers())));
    }

    private boolean missingEquals() {
        Token name = words.get(index - 1);
        Diagnostic.Builder fault = fault("missing-equals", words.get(index)).with(name.getText());
        if (Words.startsValue(type(0))) {
            fault.suggest(report.after(name), " =");
        }
        return add(fault);
    }

    private boolean unknownUnit() {
        Diagnostic.Builder fault = fault("unknown-unit", words.get(index)).with(text(index));
        String unit = UnitNames.nearest(text(index));
        return add(unit == null ? fault : fault.suggest(report.place(words.get(index)), unit));
    }

    private boolean unexpected() {
        if (index > 0 && report.hasErrorBetween(Report.span(words.get(index - 1)), Report.span(words.get(index)))) {
            // A sign that nobody knows stood here, and has been told.
            return false;
        }
        Set<String> known = Words.spellings(expectation.kinds());
        Diagnostic.Builder fault =
                fault("unexpected-word", words.get(index)).with(text(index)).expected(expectation.words());
        return add(type(0) == NAME ? withNearest(fault, index, known) : fault);
    }

    private Diagnostic.Builder withNearest(Diagnostic.Builder fault, int at, Set<String> known) {
        String word = text(at);
        String lower = word.toLowerCase(Locale.ROOT);
        List<String> near = known.contains(lower) ? List.of(lower) : NearNames.nearest(lower, known);
        return near.isEmpty() ? fault : fault.suggest(report.place(words.get(at)), near.get(0));
    }

    private boolean isClosing() {
        return type(0) == RPAREN || type(0) == RBRACE;
    }

    private boolean isOpen() {
        int opening = type(0) == RPAREN ? LPAREN : LBRACE;
        int depth = 0;
        for (Token word : words.subList(0, index)) {
            depth += word.getType() == opening ? 1 : word.getType() == type(0) ? -1 : 0;
        }
        return depth > 0;
    }

    /** A sign with the spaces round it. */
    private Span withSpaces(int sign) {
        Span span = Report.span(words.get(sign));
        int start = sign > 0 ? Report.span(words.get(sign - 1)).end() : span.start();
        boolean sameLine = sign + 1 < words.size()
                && words.get(sign + 1).getLine() == words.get(sign).getLine();
        int end = sameLine ? Report.span(words.get(sign + 1)).start() : span.end();
        return new Span(Math.min(start, span.start()), Math.max(end, span.end()));
    }

    private Diagnostic.Builder fault(String code, Token word) {
        return Diagnostic.error(code, report.place(word));
    }

    private boolean add(Diagnostic.Builder fault) {
        report.add(fault);
        return false;
    }

    private String text(int at) {
        Token word = words.get(at);
        return word.getType() == NEWLINE ? "a new line" : word.getText();
    }

    private int type(int offset) {
        int at = index + offset;
        return at < 0 || at >= words.size() ? Token.EOF : words.get(at).getType();
    }
}
