// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Suggestion;

import bandwright.dsl.edit.Completeness;
import bandwright.dsl.edit.Completion;
import bandwright.dsl.edit.Documentation;
import bandwright.dsl.edit.Proposal;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

/** Help with writing a cell, by JShell. Offsets are in code points outside and in UTF-16 inside. */
final class JavaHelp {
    private static final String INDENT = "    ";

    private JavaHelp() {}

    static Completion completion(SourceCodeAnalysis analysis, SourceText cell, int offset) {
        JavaText text = new JavaText(cell);
        Optional<Integer> cursor = text.inCode(offset);
        if (cursor.isEmpty()) {
            return new Completion(new Span(offset, offset), List.of());
        }
        Piece piece = pieceAt(analysis, text, cursor.get());
        int[] anchor = {piece.cursor()};
        List<Suggestion> suggestions = analysis.completionSuggestions(piece.code(), piece.cursor(), anchor);
        Set<Proposal> proposals = new LinkedHashSet<>();
        boolean typesFit = suggestions.stream().anyMatch(Suggestion::matchesType);
        suggestions.stream()
                .filter(suggestion -> !typesFit || suggestion.matchesType())
                .forEach(suggestion -> proposals.add(proposal(suggestion)));
        suggestions.forEach(suggestion -> proposals.add(proposal(suggestion)));
        int start = text.fromCode(piece.start() + anchor[0]);
        return new Completion(new Span(Math.min(start, offset), offset), List.copyOf(proposals));
    }

    private static Proposal proposal(Suggestion suggestion) {
        String text = suggestion.continuation();
        boolean call = text.endsWith("(") || text.endsWith(")");
        return new Proposal(text, call ? Proposal.Sort.FUNCTION : Proposal.Sort.NAME, "");
    }

    static Optional<Documentation> documentation(SourceCodeAnalysis analysis, SourceText cell, int offset) {
        JavaText text = new JavaText(cell);
        Optional<Integer> cursor = text.inCode(offset);
        if (cursor.isEmpty()) {
            return Optional.empty();
        }
        Piece piece = pieceAt(analysis, text, cursor.get());
        int from = wordStart(piece.code(), piece.cursor());
        int to = wordEnd(piece.code(), piece.cursor());
        // JShell explains a call once its bracket is open, and a type at its end.
        boolean isCall = piece.code().startsWith("(", to);
        List<SourceCodeAnalysis.Documentation> found = analysis.documentation(piece.code(), isCall ? to + 1 : to, true);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        List<String> lines = new ArrayList<>();
        for (SourceCodeAnalysis.Documentation one : found) {
            lines.add(one.signature());
            String words = one.javadoc();
            if (words != null && !words.isBlank()) {
                words.replaceAll("<[^>]+>", "")
                        .lines()
                        .map(String::strip)
                        .limit(12)
                        .forEach(lines::add);
            }
        }
        Span word = new Span(text.fromCode(piece.start() + from), text.fromCode(piece.start() + to));
        return Optional.of(new Documentation(word, lines.get(0), lines.subList(1, lines.size())));
    }

    private static int wordStart(String code, int cursor) {
        int start = cursor;
        while (start > 0 && Character.isJavaIdentifierPart(code.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private static int wordEnd(String code, int cursor) {
        int end = cursor;
        while (end < code.length() && Character.isJavaIdentifierPart(code.charAt(end))) {
            end++;
        }
        return end;
    }

    static Optional<Completeness> completeness(SourceCodeAnalysis analysis, SourceText cell) {
        String rest = new JavaText(cell).code();
        while (true) {
            SourceCodeAnalysis.CompletionInfo info = analysis.analyzeCompletion(rest);
            String remaining = info.remaining() == null ? "" : info.remaining();
            switch (info.completeness()) {
                case COMPLETE -> {
                    if (remaining.isBlank() || remaining.length() >= rest.length()) {
                        return Optional.of(new Completeness(Completeness.State.COMPLETE, ""));
                    }
                    rest = remaining;
                }
                case COMPLETE_WITH_SEMI, CONSIDERED_INCOMPLETE, EMPTY -> {
                    return Optional.of(new Completeness(Completeness.State.COMPLETE, ""));
                }
                case DEFINITELY_INCOMPLETE -> {
                    String indent = INDENT.repeat(depth(rest));
                    return Optional.of(new Completeness(Completeness.State.INCOMPLETE, indent));
                }
                case UNKNOWN -> {
                    return Optional.of(new Completeness(Completeness.State.INVALID, ""));
                }
            }
        }
    }

    /** How many braces are open. Those in texts and comments are rare and cost a wrong indent only. */
    private static int depth(String code) {
        long open = code.chars().filter(letter -> letter == '{').count();
        long closed = code.chars().filter(letter -> letter == '}').count();
        return (int) Math.max(0, open - closed);
    }

    /** The piece of code the cursor is in, for JShell looks at one piece at a time. */
    private record Piece(int start, String code, int cursor) {}

    private static Piece pieceAt(SourceCodeAnalysis analysis, JavaText text, int cursor) {
        String code = text.code();
        int start = 0;
        while (true) {
            SourceCodeAnalysis.CompletionInfo info = analysis.analyzeCompletion(code.substring(start));
            String remaining = info.remaining() == null ? "" : info.remaining();
            int next = code.length() - remaining.length();
            if (next <= start || next >= cursor || remaining.isEmpty()) {
                return new Piece(start, code.substring(start), cursor - start);
            }
            start = next;
        }
    }
}
