// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.ParseTree;

import bandwright.dsl.parse.TextWord.Role;
import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.source.SourceText;

import static bandwright.dsl.parse.antlr.BandLexer.*;

/**
 * A text as the words it is made of, comments and line ends among them, for editors: nothing is left out but spaces. What a word
 * is follows from the grammar where the statement parses, and from the word alone where it does not.
 */
public final class TextWords {
    private TextWords() {}

    /** The words of a text, in order; none of a text too long to be read. */
    public static List<TextWord> of(SourceText source) {
        if (source.length() > RingParser.LONGEST) {
            return List.of();
        }
        Map<Integer, Role> roles = new HashMap<>();
        Report report = new Report(source);
        for (List<Token> statement : StatementCutter.cut(Scanner.scan(source, report), report)) {
            BandParser.SingleContext tree = StatementReader.parse(statement);
            guess(statement, tree == null, roles);
            if (tree != null) {
                read(tree, roles);
            }
        }
        List<TextWord> words = new ArrayList<>();
        for (Token token : Scanner.raw(source)) {
            Role role = roles.getOrDefault(token.getStartIndex(), role(token.getType()));
            words.add(new TextWord(role, Report.span(token), token.getText()));
        }
        return words;
    }

    static Role role(int type) {
        if (Words.opens(type)) {
            return Role.STATEMENT;
        } else if (type == SYSTEM) {
            return Role.SYSTEM;
        } else if (type == UNIT) {
            return Role.UNIT;
        } else if (Words.isReserved(type) || Words.isSoft(type)) {
            return Role.WORD;
        } else if (Words.isOperator(type) || type == SUPERSCRIPT || type == COMMA || type == COLON) {
            return Role.SIGN;
        }
        return switch (type) {
            case NAME -> Role.NAME;
            case NUMBER -> Role.NUMBER;
            case STRING -> Role.TEXT;
            case LPAREN, RPAREN, LBRACE, RBRACE -> Role.BRACKET;
            case COMMENT -> Role.COMMENT;
            case NEWLINE -> Role.LINE_END;
            default -> Role.SLIP;
        };
    }

    /** What a glance tells: a word that opens a statement is one only there; without a tree, a word before a parenthesis is a call. */
    private static void guess(List<Token> statement, boolean calls, Map<Integer, Role> roles) {
        for (int i = 0; i < statement.size(); i++) {
            Token token = statement.get(i);
            int type = token.getType();
            int next = i + 1 < statement.size() ? statement.get(i + 1).getType() : Token.EOF;
            if (Words.opens(type) && i > 0) {
                roles.put(token.getStartIndex(), Role.WORD);
            } else if (calls && Words.isName(type) && next == LPAREN) {
                roles.put(token.getStartIndex(), Role.CALL);
            } else if (type == UNIT) {
                // A currency is a name to the lexer.
                roles.put(token.getStartIndex(), Role.UNIT);
            }
        }
    }

    private static void read(ParseTree tree, Map<Integer, Role> roles) {
        Deque<ParseTree> open = new ArrayDeque<>(List.of(tree));
        while (!open.isEmpty()) {
            ParseTree node = open.pop();
            if (node instanceof BandParser.NameContext name) {
                roles.put(name.getStart().getStartIndex(), role(name));
            }
            for (int child = 0; child < node.getChildCount(); child++) {
                open.push(node.getChild(child));
            }
        }
    }

    private static Role role(BandParser.NameContext name) {
        ParserRuleContext parent = name.getParent();
        if (parent instanceof BandParser.FormContext || parent instanceof BandParser.CallContext) {
            return Role.CALL;
        } else if (parent instanceof BandParser.ArgumentContext) {
            return Role.WORD;
        }
        boolean first = parent.getChild(0) == name || parent.getChild(1) == name;
        boolean defines = (parent instanceof BandParser.StatementContext
                        && !(parent instanceof BandParser.ForgetContext)
                        && first)
                || parent instanceof BandParser.HandleDifferenceContext
                || parent instanceof BandParser.PlainDifferenceContext
                || (parent instanceof BandParser.KeepContext keep && keep.kept == name)
                || parent instanceof BandParser.LetInFromContext;
        return defines ? Role.DEFINED : Role.NAME;
    }
}
