// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

/** The Java of a cell: all below its first line, in pieces that the compiler takes one at a time. */
final class JavaText {
    static final String WORD = "java";

    private final SourceText cell;
    /** Where Java starts, counted as Java counts, in UTF-16. */
    private final int start;

    JavaText(SourceText cell) {
        this.cell = cell;
        int first = cell.lineCount() > 1 ? cell.lineStart(2) : cell.length();
        this.start = cell.text(new Span(0, first)).length();
    }

    /** Whether a cell is in Java: its first line is the word alone. */
    static boolean isJava(SourceText cell) {
        return cell.lineText(1).strip().equals(WORD);
    }

    SourceText cell() {
        return cell;
    }

    String code() {
        return cell.text().substring(start);
    }

    /**
     * A piece of code.
     *
     * @param start where it starts in the cell, in UTF-16
     */
    record Piece(JavaText text, int start, String code) {
        /** A part of the piece as a place in the cell; offsets in UTF-16. */
        Place place(int from, int to) {
            return text.place(start + from, start + Math.max(from, to));
        }

        /** A line of the piece, from 1, without the space around it. */
        Place line(int number) {
            return text.line(firstLine() + number - 1);
        }

        int firstLine() {
            return text.cell.line(text.offset(start));
        }
    }

    /** Pieces in order; nothing where code is broken so that it cannot be cut, and then the rest as one piece is last. */
    List<Piece> pieces(SourceCodeAnalysis analysis) {
        List<Piece> pieces = new ArrayList<>();
        String rest = code();
        while (true) {
            int at = cell.text().length() - rest.length();
            int blank = rest.length() - rest.stripLeading().length();
            rest = rest.substring(blank);
            if (rest.isEmpty()) {
                return pieces;
            }
            CompletionInfo info = analysis.analyzeCompletion(rest);
            String code = info.source() == null ? rest : info.source();
            String remaining = info.source() == null || info.remaining() == null ? "" : info.remaining();
            boolean empty = info.completeness() == SourceCodeAnalysis.Completeness.EMPTY;
            if (!empty) {
                pieces.add(new Piece(this, at + blank, code));
            }
            if (empty || remaining.length() >= rest.length()) {
                return pieces;
            }
            rest = remaining;
        }
    }

    /** The offset in code points of one in UTF-16. */
    int offset(int utf16) {
        int within = Math.max(0, Math.min(utf16, cell.text().length()));
        return cell.text().codePointCount(0, within);
    }

    /** The offset in UTF-16 within {@link #code} of one in code points of the cell; nothing if it lies above the code. */
    Optional<Integer> inCode(int offset) {
        if (cell.line(offset) == 1) {
            return Optional.empty();
        }
        return Optional.of(cell.text().offsetByCodePoints(0, Math.min(offset, cell.length())) - start);
    }

    /** A place in the cell of an offset within {@link #code}. */
    int fromCode(int utf16) {
        return offset(start + utf16);
    }

    private Place place(int from, int to) {
        return cell.place(new Span(offset(from), Math.max(offset(from), offset(to))));
    }

    /** A line of the cell, from 1, without the space around it. */
    Place line(int number) {
        Span line = cell.lineSpan(Math.max(1, Math.min(number, cell.lineCount())));
        String text = cell.text(line);
        int before = text.length() - text.stripLeading().length();
        return cell.place(new Span(
                line.start() + before,
                Math.max(
                        line.start() + before,
                        line.start()
                                + text.codePointCount(0, text.stripTrailing().length()))));
    }
}
