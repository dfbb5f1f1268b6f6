// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATNState;
import org.antlr.v4.runtime.atn.PrecedencePredicateTransition;
import org.antlr.v4.runtime.atn.RuleStopState;
import org.antlr.v4.runtime.atn.RuleTransition;
import org.antlr.v4.runtime.atn.Transition;
import org.jspecify.annotations.Nullable;

import bandwright.dsl.parse.antlr.BandParser;

/**
 * Where words stop making sense, and what could have stood there.
 *
 * <p>Walks the parser's automaton along the words with all ways of reading them at once: a way is a state and the
 * stack of rules it will return to. The first word that no way can take is the fault; what the ways could have taken
 * is what was expected. Rules that people have a word for ({@code a value}) are not looked into.
 *
 * @param index of the first word that does not fit; the number of words if only more could follow
 * @param kinds the kinds of word that would have fitted
 * @param rules the rules that would have fitted, of those that have a name
 */
record Expectation(int index, Set<Integer> kinds, Set<Integer> rules) {
    private static final Set<Integer> NAMED = Set.of(
            BandParser.RULE_statement,
            BandParser.RULE_expression,
            BandParser.RULE_comparison,
            BandParser.RULE_amount,
            BandParser.RULE_name,
            BandParser.RULE_part,
            BandParser.RULE_unit);

    /** Walks along the words of one statement. */
    static Expectation of(List<Token> words) {
        return new Walk().along(words);
    }

    boolean allowsEnd() {
        return kinds.contains(Token.EOF);
    }

    boolean allowsValue() {
        return rules.contains(BandParser.RULE_amount)
                || rules.contains(BandParser.RULE_expression)
                || rules.contains(BandParser.RULE_comparison);
    }

    boolean allowsName() {
        return rules.contains(BandParser.RULE_name) || rules.contains(BandParser.RULE_part);
    }

    boolean allowsValueOrName() {
        return allowsValue() || allowsName();
    }

    /** Whether the word that does not fit is a property word at the start of a line, and a value lacks before it. */
    boolean isEarlyEnd(List<Token> words) {
        return index > 0
                && index < words.size()
                && allowsValueOrName()
                && Words.isPropertyWord(words.get(index).getType())
                && words.get(index).getLine() != words.get(index - 1).getLine();
    }

    /** The words that would have begun a property. */
    Set<Integer> properties() {
        return kinds.stream()
                .filter(Words::isPropertyWord)
                .filter(kind -> !Words.continuesProperty(kind))
                .collect(Collectors.toSet());
    }

    /** What would have fitted, in people's words. */
    String words() {
        Set<String> words = new LinkedHashSet<>();
        if (rules.contains(BandParser.RULE_statement)) {
            words.add("a statement");
        }
        if (allowsValue()) {
            words.add("a value");
        } else if (allowsName()) {
            words.add("a name");
        }
        if (rules.contains(BandParser.RULE_unit)) {
            words.add("a unit");
        }
        words.addAll(Words.spellings(kinds));
        return String.join(", ", words);
    }

    /** A rule that was entered: where it returns to, and how tightly it binds there. */
    private record Frame(
            int id,
            ATNState follow,
            int precedence,
            @Nullable Frame parent) {}

    /** A state in the automaton, and the rules it stands in. */
    private record Way(ATNState state, @Nullable Frame frame) {
        int key() {
            return frame == null ? 0 : frame.id;
        }
    }

    private record Key(int state, int frame, int precedence) {}

    private static final class Walk {
        private final Map<Key, Frame> frames = new HashMap<>();

        private Expectation along(List<Token> words) {
            Map<Key, Way> ways = new HashMap<>();
            add(ways, new Way(BandParser._ATN.ruleToStartState[BandParser.RULE_single], null));
            int index = 0;
            for (; index <= words.size(); index++) {
                int type = index < words.size() ? words.get(index).getType() : Token.EOF;
                Map<Key, Way> next = step(ways, type);
                if (next.isEmpty() || type == Token.EOF) {
                    break;
                }
                ways = next;
            }
            Set<Integer> kinds = new TreeSet<>();
            Set<Integer> rules = new TreeSet<>();
            explore(ways, (transition, way) -> kinds.addAll(transition.label().toSet()), rules);
            return new Expectation(Math.min(index, words.size()), kinds, rules);
        }

        private Map<Key, Way> step(Map<Key, Way> ways, int type) {
            Map<Key, Way> next = new HashMap<>();
            explore(
                    ways,
                    (transition, way) -> {
                        if (transition.matches(type, Token.MIN_USER_TOKEN_TYPE, BandParser._ATN.maxTokenType)) {
                            add(next, new Way(transition.target, way.frame));
                        }
                    },
                    null);
            return next;
        }

        /** Follows all ways up to where they take a word; named rules are gathered, when asked, and not entered. */
        private void explore(Map<Key, Way> from, Taking taking, @Nullable Set<Integer> named) {
            Map<Key, Way> seen = new HashMap<>(from);
            Deque<Way> open = new ArrayDeque<>(from.values());
            while (!open.isEmpty()) {
                Way way = open.pop();
                if (way.state instanceof RuleStopState) {
                    if (way.frame != null) {
                        visit(new Way(way.frame.follow, way.frame.parent), seen, open);
                    }
                    continue;
                }
                for (Transition transition : way.state.getTransitions()) {
                    if (transition instanceof RuleTransition rule) {
                        if (named != null && NAMED.contains(rule.ruleIndex)) {
                            named.add(rule.ruleIndex);
                        } else {
                            Frame frame = frame(rule.followState, rule.precedence, way.frame);
                            visit(new Way(rule.target, frame), seen, open);
                        }
                    } else if (transition instanceof PrecedencePredicateTransition predicate) {
                        if (way.frame != null && predicate.precedence >= way.frame.precedence) {
                            visit(new Way(transition.target, way.frame), seen, open);
                        }
                    } else if (transition.isEpsilon()) {
                        visit(new Way(transition.target, way.frame), seen, open);
                    } else {
                        taking.take(transition, way);
                    }
                }
            }
        }

        private static void visit(Way way, Map<Key, Way> seen, Deque<Way> open) {
            if (add(seen, way)) {
                open.push(way);
            }
        }

        private static boolean add(Map<Key, Way> ways, Way way) {
            return ways.putIfAbsent(new Key(way.state.stateNumber, way.key(), 0), way) == null;
        }

        /** Equal stacks are one object, so that ways can be told apart by the number of their frame. */
        private Frame frame(ATNState follow, int precedence, @Nullable Frame parent) {
            Key key = new Key(follow.stateNumber, parent == null ? 0 : parent.id, precedence);
            return frames.computeIfAbsent(key, absent -> new Frame(frames.size() + 1, follow, precedence, parent));
        }
    }

    private interface Taking {
        void take(Transition transition, Way way);
    }
}
