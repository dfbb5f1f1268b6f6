// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.antlr.v4.runtime.CodePointBuffer;
import org.antlr.v4.runtime.CodePointCharStream;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.parse.antlr.BandLexer;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

import static bandwright.dsl.parse.antlr.BandLexer.*;

/**
 * From text to words. Slips of spelling are reported here and mended on the spot, so that the words after this step
 * are only those of the language and the rest of the statement is read as if nothing had been wrong.
 */
final class Scanner {
    /** En dash, em dash: from one bound to the other, in print. */
    private static final Set<String> DASHES = Set.of("\u2013", "\u2014");

    /** Fifty thousand definitions; more is no text that a person wrote. */
    static final int MOST_WORDS = 300_000;

    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");
    private static final Pattern GLUED = Pattern.compile("(.+)-(\\d+(?:\\.\\d+)?)");
    private static final Map<String, String> CURRENCY_SIGNS = Map.of("€", "EUR", "£", "GBP", "$", "USD", "¥", "JPY");
    private static final Map<String, Integer> FOREIGN = Map.of("==", EQ, "!=", NE, "&&", AND, "||", OR, "**", CARET);

    private final Report report;
    private final List<Token> raw;
    private final List<Token> words = new ArrayList<>();

    private Scanner(List<Token> raw, Report report) {
        this.raw = raw;
        this.report = report;
    }

    static List<Token> scan(SourceText source, Report report) {
        List<Token> all = raw(source);
        if (all.size() > MOST_WORDS) {
            report.add(Diagnostic.error("too-many-words", report.place(all.get(MOST_WORDS)))
                    .with(Integer.toString(MOST_WORDS)));
            return List.of();
        }
        List<Token> raw = all.stream()
                .filter(token -> token.getChannel() == Token.DEFAULT_CHANNEL)
                .toList();
        Scanner scanner = new Scanner(raw, report);
        for (int at = 0; at < raw.size() && !report.isFull(); at++) {
            scanner.word(at);
        }
        return scanner.words;
    }

    /** All words as they are written, slips and comments too; of a text with too many, one more than are read. */
    static List<Token> raw(SourceText source) {
        CodePointBuffer buffer = CodePointBuffer.withInts(IntBuffer.wrap(source.codePoints()));
        BandLexer lexer = new BandLexer(CodePointCharStream.fromBuffer(buffer, source.name()));
        lexer.removeErrorListeners();
        List<Token> raw = new ArrayList<>();
        for (Token token = lexer.nextToken();
                token.getType() != Token.EOF && raw.size() <= MOST_WORDS;
                token = lexer.nextToken()) {
            raw.add(token);
        }
        return raw;
    }

    private void word(int at) {
        Token token = raw.get(at);
        String text = token.getText();
        switch (token.getType()) {
            case NAME -> name(at);
            case IN -> in(at);
            case COMMA_NUMBER -> number("decimal-comma", token, text.replace(',', '.'));
            case HYPHEN_NUMBER -> number("hyphen-in-number", token, Spelling.plain(text.replace('-', ' ')));
            case EXPONENT_NUMBER -> number("exponent-in-number", token, null);
            case LEADING_POINT -> number("point-in-number", token, "0" + text);
            case TRAILING_POINT -> number("point-in-number", token, text.substring(0, text.length() - 1));
            case FRACTION_POINT -> number("point-in-number", token, text.replace("/", " / "));
            case LETTER_FRACTION -> letterFraction(token);
            case GLUED_MINUS -> gluedMinus(token, text);
            case FOREIGN_SIGN -> foreignSign(token);
            case OPEN_STRING -> openString(at);
            case UNKNOWN -> unknown(at);
            case NUMBER -> amount(at);
            default -> words.add(token);
        }
    }

    /** Three capital letters are a currency after a number and in a quotient; a name before a unit hides a minus. */
    private void name(int at) {
        Token token = raw.get(at);
        boolean quotient =
                (type(at - 1) == SLASH && type(at - 2) == UNIT) || (type(at + 1) == SLASH && type(at + 2) == UNIT);
        if (CURRENCY.matcher(token.getText()).matches() && (type(at - 1) == NUMBER || quotient)) {
            words.add(made(UNIT, token, token.getText(), span(token)));
        } else if (type(at + 1) == UNIT && GLUED.matcher(token.getText()).matches()) {
            gluedMinus(token, token.getText());
        } else {
            words.add(token);
        }
    }

    private void in(int at) {
        Token token = raw.get(at);
        int next = type(at + 1);
        boolean asUnit = type(at - 1) == NUMBER && next != UNIT && next != SYSTEM && next != NAME;
        if (!asUnit) {
            words.add(token);
            return;
        }
        report.add(Diagnostic.error("in-as-unit", report.place(token)).suggest(report.place(token), "inch"));
        words.add(made(UNIT, token, "inch", span(token)));
    }

    private void number(String code, Token token, @Nullable String right) {
        Diagnostic.Builder diagnostic =
                Diagnostic.error(code, report.place(token)).with(token.getText());
        report.add(right == null ? diagnostic : diagnostic.suggest(report.place(token), right));
        words.add(made(NUMBER, token, "1", span(token)));
    }

    private void letterFraction(Token token) {
        String text = token.getText();
        String right = text.substring(0, 1) + " " + text.substring(1);
        report.add(Diagnostic.error("letter-without-space", report.place(token))
                .with(text)
                .suggest(report.place(token), right));
        Span span = span(token);
        words.add(made(NAME, token, text.substring(0, 1), new Span(span.start(), span.start() + 1)));
        words.add(made(NUMBER, token, text.substring(1), new Span(span.start() + 1, span.end())));
    }

    private void gluedMinus(Token token, String text) {
        Matcher matcher = GLUED.matcher(text);
        if (!matcher.matches()) {
            words.add(token);
            return;
        }
        String left = matcher.group(1);
        report.add(Diagnostic.error("minus-without-spaces", report.place(token))
                .with(text)
                .suggest(report.place(token), left + " - " + matcher.group(2)));
        Span span = span(token);
        int minus = span.start() + left.codePointCount(0, left.length());
        boolean afterNumber = !words.isEmpty() && words.get(words.size() - 1).getType() == NUMBER;
        words.add(made(afterNumber ? UNIT : NAME, token, left, new Span(span.start(), minus)));
        words.add(made(MINUS, token, "-", new Span(minus, minus + 1)));
        words.add(made(NUMBER, token, matcher.group(2), new Span(minus + 1, span.end())));
    }

    private void foreignSign(Token token) {
        int type = FOREIGN.getOrDefault(token.getText(), EQ);
        String right = Words.spelling(type);
        report.add(Diagnostic.error("foreign-sign", report.place(token))
                .with(token.getText(), right)
                .suggest(report.place(token), right));
        words.add(made(type, token, right, span(token)));
    }

    /** After a number, a quote alone is what people write for inches. */
    private void openString(int at) {
        Token token = raw.get(at);
        boolean inches = type(at - 1) == NUMBER && token.getText().strip().length() == 1;
        if (inches) {
            report.add(Diagnostic.error("inch-sign", report.place(token)).suggest(report.place(token), " inch"));
            words.add(made(UNIT, token, "inch", span(token)));
            return;
        }
        report.add(Diagnostic.error("open-text", report.place(token))
                .suggest(report.place(token), token.getText().stripTrailing() + "\""));
        words.add(made(STRING, token, token.getText() + "\"", span(token)));
    }

    /** A number; a currency's sign in front of it goes behind it. */
    private void amount(int at) {
        Token token = raw.get(at);
        words.add(token);
        String currency = CURRENCY_SIGNS.get(text(at - 1));
        if (currency != null && type(at - 2) != NUMBER) {
            words.add(made(UNIT, raw.get(at - 1), currency, span(raw.get(at - 1))));
        }
    }

    /** {@code 60 €/g}, {@code €60}: the currency's letters stand after the number. */
    private void currencySign(int at, String currency) {
        Token sign = raw.get(at);
        Diagnostic.Builder fault =
                Diagnostic.error("foreign-sign", report.place(sign)).with(sign.getText(), currency);
        if (type(at - 1) != NUMBER && type(at + 1) == NUMBER) {
            Token number = raw.get(at + 1);
            report.add(fault.suggest(report.place(sign, number), number.getText() + " " + currency));
            return;
        }
        boolean glued = type(at - 1) == NUMBER && raw.get(at - 1).getStopIndex() + 1 == sign.getStartIndex();
        report.add(fault.suggest(report.place(sign), glued ? " " + currency : currency));
        words.add(made(UNIT, sign, currency, span(sign)));
    }

    /** Signs the language does not know are left out; a run of them is one error. */
    private void unknown(int at) {
        Token token = raw.get(at);
        String currency = CURRENCY_SIGNS.get(token.getText());
        if (currency != null && (type(at - 1) == NUMBER || type(at + 1) == NUMBER || isQuotient(at))) {
            currencySign(at, currency);
            return;
        }
        boolean runs = type(at - 1) == UNKNOWN && raw.get(at - 1).getStopIndex() + 1 == token.getStartIndex();
        if (runs) {
            return;
        }
        int last = at;
        while (type(last + 1) == UNKNOWN
                && raw.get(last + 1).getStartIndex() == raw.get(last).getStopIndex() + 1) {
            last++;
        }
        Span span = span(token).to(span(raw.get(last)));
        String text = report.source().text(span);
        Diagnostic.Builder fault =
                Diagnostic.error("unknown-sign", report.source().place(span)).with(visible(text));
        if (DASHES.contains(text) && isInRange(at)) {
            report.add(fault.suggest(report.source().place(span), "and"));
            return;
        }
        // Left out between two numbers it would leave nonsense behind.
        boolean between = type(at - 1) == NUMBER && type(last + 1) == NUMBER;
        report.add(between ? fault : fault.suggest(report.source().place(span), ""));
    }

    /** Whether {@code between} stands before it on the same line, without its {@code and}. */
    private boolean isInRange(int at) {
        for (int i = at - 1; i >= 0 && type(i) != NEWLINE && type(i) != AND; i--) {
            if (type(i) == BETWEEN) {
                return true;
            }
        }
        return false;
    }

    /** Signs nobody can see are named by their number. */
    private static String visible(String text) {
        int point = text.codePointAt(0);
        int type = Character.getType(point);
        boolean unseen = type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.UNASSIGNED
                || type == Character.PRIVATE_USE;
        return unseen ? String.format(Locale.ROOT, "U+%04X", point) : text;
    }

    private boolean isQuotient(int at) {
        return type(at + 1) == SLASH && type(at + 2) == UNIT;
    }

    private String text(int at) {
        return at < 0 || at >= raw.size() ? "" : raw.get(at).getText();
    }

    private int type(int at) {
        return at < 0 || at >= raw.size() ? NEWLINE : raw.get(at).getType();
    }

    private static Span span(Token token) {
        return Report.span(token);
    }

    static Token made(int type, Token like, String text, Span span) {
        CommonToken token = new CommonToken(like);
        token.setType(type);
        token.setText(text);
        token.setStartIndex(span.start());
        token.setStopIndex(span.end() - 1);
        return token;
    }
}
