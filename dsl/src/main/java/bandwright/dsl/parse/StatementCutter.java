// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;

import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.Span;

import static bandwright.dsl.parse.antlr.BandLexer.*;

/**
 * Cuts words into statements and decides which line ends matter.
 *
 * <ul>
 *   <li>A word that opens a statement, at the start of a line, always starts one; so does {@code name =} outside
 *       braces. A bracket still open there was forgotten, and is closed.
 *   <li>Inside parentheses and braces line ends carry no meaning, except in the braces of {@code vary}, {@code what-if}
 *       and {@code option}, where they separate. The first two and {@code quote} may stand in the braces of {@code export}.
 *   <li>Elsewhere a line end ends the statement, unless one of the two lines says that it goes on.
 * </ul>
 */
final class StatementCutter {
    /** How deep brackets, signs and powers may nest. */
    static final int DEEPEST = 200;

    /** Words in a statement. */
    static final int LONGEST = 20_000;

    private static final Set<Integer> LINES_MATTER = Set.of(VARY, WHAT_IF, OPTION);

    private final List<Token> words;
    private final Report report;
    private final List<List<Token>> statements = new ArrayList<>();
    private final Deque<Token> open = new ArrayDeque<>();
    private List<Token> current = new ArrayList<>();
    private boolean tooDeep;
    private int lookedUpTo;
    private boolean forgotten;

    private StatementCutter(List<Token> words, Report report) {
        this.words = words;
        this.report = report;
    }

    static List<List<Token>> cut(List<Token> words, Report report) {
        StatementCutter cutter = new StatementCutter(words, report);
        cutter.cut();
        return cutter.statements;
    }

    private void cut() {
        for (int at = 0; at < words.size(); at++) {
            Token word = words.get(at);
            if (word.getType() == NEWLINE) {
                at = lineEnd(at);
            } else {
                add(word);
            }
        }
        finish();
    }

    /** Decides about the line ends from here to the next word; answers the last of them. */
    private int lineEnd(int at) {
        int last = at;
        while (type(last + 1) == NEWLINE) {
            last++;
        }
        int next = last + 1;
        if (current.isEmpty()) {
            return last;
        }
        int before = current.get(current.size() - 1).getType();
        boolean goesOn = Words.continuesAfter(before) || Words.continuesBefore(type(next));
        if (next >= words.size() || startsStatement(next) || startsDefinition(next)) {
            finish();
        } else if (open.isEmpty()) {
            if (!goesOn) {
                finish();
            }
        } else if (linesMatter() && !goesOn && before != LBRACE && type(next) != RBRACE) {
            current.add(words.get(at));
        }
        return last;
    }

    private boolean startsStatement(int at) {
        if (!Words.opens(type(at))) {
            return false;
        }
        // These are properties as well.
        return switch (type(at)) {
            case PROFILE -> open.isEmpty() || (Words.isName(type(at + 1)) && type(at + 2) == EQ);
            case METAL -> open.isEmpty() || (Words.isName(type(at + 1)) && type(at + 2) == LBRACE);
            case VARY, WHAT_IF, QUOTE -> !isHeld(at);
            default -> true;
        };
    }

    /** Whether a question stands in the braces of an export, which are closed before a statement opens. */
    private boolean isHeld(int at) {
        if (open.size() != 1 || current.isEmpty() || current.get(0).getType() != EXPORT) {
            return false;
        }
        int depth = 1;
        for (int next = at + 1; next < words.size() && depth > 0; next++) {
            int type = type(next);
            depth += type == LBRACE ? 1 : type == RBRACE ? -1 : 0;
            if (type(next - 1) == NEWLINE && Words.opens(type) && type != METAL && type != PROFILE) {
                return false;
            }
        }
        return depth == 0;
    }

    private boolean startsDefinition(int at) {
        if (!Words.isName(type(at)) || type(at + 1) != EQ) {
            return false;
        }
        boolean inBraces = open.stream().anyMatch(bracket -> bracket.getType() == LBRACE);
        return !inBraces || (type(at) == NAME && !linesMatter() && isForgotten(at));
    }

    /** Whether the braces open here are not closed before the next statement opens. */
    private boolean isForgotten(int at) {
        // Looked up once for all lines of a block, or a long block of slips would cost its length squared.
        if (at < lookedUpTo) {
            return forgotten;
        }
        int depth = open.size();
        int next = at;
        forgotten = true;
        for (; next < words.size(); next++) {
            int type = type(next);
            depth += type == LBRACE || type == LPAREN ? 1 : type == RBRACE || type == RPAREN ? -1 : 0;
            if (depth == 0) {
                forgotten = false;
                break;
            }
            if (type(next - 1) == NEWLINE && startsStatement(next)) {
                break;
            }
        }
        lookedUpTo = next;
        return forgotten;
    }

    private boolean linesMatter() {
        Token innermost = open.peek();
        return innermost != null && innermost.getType() == LBRACE && LINES_MATTER.contains(opener());
    }

    /** The word that opens the statement, or the question in the braces of an export. */
    private int opener() {
        int first = current.get(0).getType();
        if (first != EXPORT || open.size() < 2) {
            return first;
        }
        return current.stream()
                .mapToInt(Token::getType)
                .filter(LINES_MATTER::contains)
                .findFirst()
                .orElse(first);
    }

    private void add(Token word) {
        switch (word.getType()) {
            case LPAREN, LBRACE -> {
                open.push(word);
                if (open.size() == DEEPEST + 1) {
                    tooDeep(word);
                }
            }
            case RPAREN -> close(word, LPAREN);
            case RBRACE -> close(word, LBRACE);
            default -> {}
        }
        current.add(word);
    }

    /** A closing bracket closes its own kind; what was opened inside and not closed was forgotten. */
    private void close(Token word, int kind) {
        if (open.stream().noneMatch(bracket -> bracket.getType() == kind)) {
            return;
        }
        while (true) {
            Token innermost = open.pop();
            if (innermost.getType() == kind) {
                return;
            }
            if (kind == LPAREN) {
                // A parenthesis never reaches out of braces: leave it to the grammar.
                open.push(innermost);
                return;
            }
            forgotten(innermost, word);
        }
    }

    private void finish() {
        if (current.isEmpty()) {
            return;
        }
        while (!open.isEmpty()) {
            Token last = current.get(current.size() - 1);
            forgotten(open.pop(), last);
        }
        if (current.size() > LONGEST) {
            report.add(Diagnostic.error("statement-too-long", report.place(current.get(0)))
                    .with(Integer.toString(LONGEST)));
            current = new ArrayList<>();
            tooDeep = false;
            return;
        }
        if (!tooDeep) {
            Token deep = deepest();
            if (deep != null) {
                tooDeep(deep);
            }
        }
        if (!tooDeep) {
            statements.add(current);
        }
        current = new ArrayList<>();
        tooDeep = false;
    }

    private void tooDeep(Token word) {
        tooDeep = true;
        report.add(Diagnostic.error("too-deep", report.place(word)).with(Integer.toString(DEEPEST)));
    }

    /** The word with which signs, conditions or powers nest too deep; none where they do not. */
    private @Nullable Token deepest() {
        int signs = 0;
        int powers = 0;
        for (Token word : current) {
            switch (word.getType()) {
                case PLUS, MINUS, NOT -> signs++;
                case IF, CARET -> powers++;
                default -> signs = 0;
            }
            if (signs > DEEPEST || powers > DEEPEST) {
                return word;
            }
        }
        return null;
    }

    private void forgotten(Token bracket, Token last) {
        int closing = bracket.getType() == LBRACE ? RBRACE : RPAREN;
        String sign = Words.spelling(closing);
        Token before = current.get(current.size() - 1);
        int end = Report.span(before).end();
        report.add(Diagnostic.error("missing-closing", report.place(bracket))
                .with(Words.spelling(bracket.getType()), sign)
                .label(report.place(bracket), "opened here")
                .label(report.after(before), sign + " belongs here at the latest"));
        current.add(Scanner.made(closing, last, sign, new Span(end, end)));
    }

    private int type(int at) {
        return at < 0 || at >= words.size() ? Token.EOF : words.get(at).getType();
    }
}
