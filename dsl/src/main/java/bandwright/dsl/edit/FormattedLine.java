// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import java.util.List;
import java.util.Set;

import bandwright.dsl.parse.TextWord;
import bandwright.dsl.parse.TextWord.Role;

/** One line of a text that is being set. */
final class FormattedLine {
    private static final Set<String> GO_ON = Set.of("between", "step", "because", "then", "else", "and", "or");

    private final List<TextWord> words;
    private final int depth;
    private final boolean continued;

    /** How wide the first word is set; 0 for as wide as it is. */
    private int firstWidth;

    private FormattedLine(List<TextWord> words, int depth, boolean continued) {
        this.words = words;
        this.depth = depth;
        this.continued = continued;
    }

    /**
     * @param depth brackets open at the end of the line before
     * @param wentOn whether the line before ends with a word that wants more
     */
    static FormattedLine of(List<TextWord> words, int depth, boolean wentOn) {
        boolean continued = !words.isEmpty() && (wentOn || startsInTheMiddle(words.get(0)));
        return new FormattedLine(List.copyOf(words), depth, continued);
    }

    private static boolean startsInTheMiddle(TextWord first) {
        return GO_ON.contains(first.text())
                || (first.is(Role.SIGN) && !first.text().equals("-"));
    }

    boolean isBlank() {
        return words.isEmpty();
    }

    int depth() {
        return depth;
    }

    /** How many more brackets it opens than it closes. */
    int opens() {
        return words.stream().mapToInt(FormattedLine::opens).sum();
    }

    private static int opens(TextWord word) {
        if (!word.is(Role.BRACKET)) {
            return 0;
        }
        return word.text().equals("{") || word.text().equals("(") ? 1 : -1;
    }

    boolean goesOn() {
        TextWord last = words.get(words.size() - 1);
        return last.is(Role.SIGN) || last.text().equals("not");
    }

    boolean isDefinition() {
        return words.size() > 2
                && words.get(0).is(Role.DEFINED)
                && words.get(1).text().equals("=");
    }

    /** Whether it is a property with a value, on a line of its own. */
    boolean isProperty() {
        return depth > 0
                && !continued
                && words.size() > 1
                && (words.get(0).is(Role.WORD) || words.get(0).is(Role.NAME) || isStatementWord())
                && !words.get(1).is(Role.BRACKET)
                && !words.get(1).is(Role.SIGN)
                && !words.get(1).is(Role.COMMENT);
    }

    /** {@code profile} and {@code metal} are properties as well. */
    private boolean isStatementWord() {
        return words.get(0).is(Role.STATEMENT);
    }

    int firstLength() {
        return length(words.get(0));
    }

    private static int length(TextWord word) {
        return word.text().codePointCount(0, word.text().length());
    }

    void setFirstWidth(int width) {
        firstWidth = width;
    }

    String text() {
        if (words.isEmpty()) {
            return "";
        }
        int closing = 0;
        while (closing < words.size() && opens(words.get(closing)) < 0) {
            closing++;
        }
        int indent = Math.max(0, depth - closing) + (continued ? 1 : 0);
        StringBuilder text = new StringBuilder(Layout.INDENT.repeat(indent));
        int open = depth;
        for (int i = 0; i < words.size(); i++) {
            TextWord word = words.get(i);
            if (i == 1 && firstWidth > 0) {
                text.append(" ".repeat(Math.max(1, firstWidth - firstLength())));
            } else if (i > 0) {
                text.append(gap(i, open));
            }
            text.append(word.is(Role.COMMENT) ? word.text().stripTrailing() : word.text());
            open += opens(word);
        }
        return text.toString();
    }

    private String gap(int at, int open) {
        TextWord before = words.get(at - 1);
        TextWord word = words.get(at);
        if (isTight(at)) {
            return "";
        } else if (word.is(Role.COMMENT)) {
            return Layout.INDENT;
        } else if (word.text().equals("because") || (word.text().equals("between") && isDefinition())) {
            return Layout.CLAUSE_GAP;
        }
        // Several properties on one line are told apart by a wider space, if the writer left one.
        boolean wide = open > 0 && Formatter.written(before.span(), word.span()) > 1;
        return wide ? "  " : " ";
    }

    private boolean isTight(int at) {
        String before = words.get(at - 1).text();
        String text = words.get(at).text();
        if (Set.of(",", ")", ":", "^", "²", "³").contains(text) || before.equals("(") || before.equals("^")) {
            return true;
        } else if (text.equals("(")) {
            return words.get(at - 1).is(Role.CALL);
        } else if (text.equals("/")) {
            return isUnit(at - 1) && isUnit(at + 1);
        } else if (before.equals("/")) {
            return isUnit(at - 2) && isUnit(at);
        }
        boolean sign = before.equals("-") || before.equals("+") || before.equals("−");
        return sign && (at == 1 || !endsValue(words.get(at - 2)));
    }

    private boolean isUnit(int at) {
        return at >= 0 && at < words.size() && words.get(at).is(Role.UNIT);
    }

    private static boolean endsValue(TextWord word) {
        return switch (word.role()) {
            case NUMBER, UNIT, NAME, DEFINED, TEXT, CALL, SYSTEM -> true;
            case BRACKET -> word.text().equals(")");
            case STATEMENT, WORD, SIGN, COMMENT, LINE_END, SLIP -> false;
        };
    }
}
