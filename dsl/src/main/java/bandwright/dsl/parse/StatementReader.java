// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.ParseCancellationException;
import org.antlr.v4.runtime.tree.ParseTree;
import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.syntax.Statement;

import static bandwright.dsl.parse.antlr.BandLexer.*;

/**
 * Reads the words of one statement. At a fault the parser stops, the fault is reported, and the words are read again
 * with the slip mended, or with the faulty line of a block struck out: so all faults of a block are found, and none is
 * the mere consequence of another.
 */
final class StatementReader {
    /** More faults than this in one statement are not looked for. */
    private static final int MOST_FAULTS = 30;

    /** A tree of this depth holds brackets nested {@link StatementCutter#DEEPEST} deep. */
    private static final int DEEPEST_TREE = 1200;

    private StatementReader() {}

    /** The statement, or nothing if there is a fault in it, which is then reported. */
    static @Nullable Statement read(List<Token> words, Report report) {
        List<Token> rest = new ArrayList<>(words);
        boolean sound = true;
        for (int faults = 0; faults < MOST_FAULTS && !report.isFull(); faults++) {
            BandParser.SingleContext tree = parse(rest);
            if (tree != null) {
                if (depth(tree) > DEEPEST_TREE) {
                    report.add(Diagnostic.error("too-deep", report.place(words.get(0)))
                            .with(Integer.toString(StatementCutter.DEEPEST)));
                    return null;
                }
                Statement statement = new StatementBuilder(report).visit(tree.statement());
                return sound ? statement : null;
            }
            sound = false;
            Expectation expectation = fault(rest);
            boolean mended = new SyntaxFault(rest, expectation, report).report();
            if (!mended && !strikeOut(rest, expectation)) {
                return null;
            }
        }
        return null;
    }

    /** The tree of one statement's words, or nothing if they make none. */
    static BandParser.@Nullable SingleContext parse(List<Token> words) {
        BandParser parser = new BandParser(new CommonTokenStream(new ListTokenSource(words)));
        parser.removeErrorListeners();
        parser.setErrorHandler(new BailErrorStrategy());
        try {
            return parser.single();
        } catch (ParseCancellationException fault) {
            return null;
        }
    }

    /**
     * Where the words stop making sense. A property that lacks its value swallows the word that opens the next line,
     * and the fault shows only behind it; then the end of the unfinished line is the better place.
     */
    private static Expectation fault(List<Token> words) {
        Expectation fault = Expectation.of(words);
        int first = Math.min(fault.index(), words.size() - 1);
        while (first > 0 && words.get(first - 1).getLine() == words.get(first).getLine()) {
            first--;
        }
        boolean swallows = first > 0
                && first < fault.index()
                && depth(words, first) > 0
                && Words.isPropertyWord(words.get(first).getType());
        if (!swallows) {
            return fault;
        }
        Expectation earlier = Expectation.of(words.subList(0, first));
        boolean unfinished = earlier.allowsValueOrName()
                && !earlier.kinds().contains(RBRACE)
                && !earlier.kinds().contains(words.get(first).getType());
        return unfinished ? earlier : fault;
    }

    /** Measured without recursion: the point is to know whether recursion is safe. */
    private static int depth(ParseTree root) {
        record Level(ParseTree tree, int depth) {}
        Deque<Level> open = new ArrayDeque<>(List.of(new Level(root, 1)));
        int deepest = 0;
        while (!open.isEmpty()) {
            Level level = open.pop();
            deepest = Math.max(deepest, level.depth);
            for (int child = 0; child < level.tree.getChildCount(); child++) {
                open.push(new Level(level.tree.getChild(child), level.depth + 1));
            }
        }
        return deepest;
    }

    /** Takes the faulty line out of the block it stands in; false if there is no block or nothing to take. */
    private static boolean strikeOut(List<Token> words, Expectation fault) {
        int index = Math.min(fault.index(), words.size() - 1);
        // What ends too early, at a brace or at the next property, is the fault of the word before.
        if (index > 0 && (words.get(index).getType() == RBRACE || fault.isEarlyEnd(words))) {
            index--;
        }
        int start = index;
        while (start > 0 && !bounds(words, start - 1, index)) {
            start--;
        }
        int end = index + 1;
        while (end < words.size() && !bounds(words, end, index)) {
            end++;
        }
        boolean inBlock = depth(words, index) > 0 && words.get(index).getType() != LBRACE;
        if (!inBlock || start == 0) {
            return false;
        }
        words.subList(start, end).clear();
        return true;
    }

    private static boolean bounds(List<Token> words, int at, int index) {
        Token word = words.get(at);
        return word.getType() == LBRACE
                || word.getType() == RBRACE
                || word.getLine() != words.get(index).getLine();
    }

    /** How many braces are open before a word. */
    static int depth(List<Token> words, int before) {
        int depth = 0;
        for (Token word : words.subList(0, before)) {
            depth += word.getType() == LBRACE ? 1 : word.getType() == RBRACE ? -1 : 0;
        }
        return depth;
    }
}
