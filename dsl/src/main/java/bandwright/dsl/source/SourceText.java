// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.source;

import java.util.Arrays;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * A text with the name people know it by ({@code cell 3}, or a file name). Offsets, lines and columns count code
 * points, so that an accent or an emoji never shifts what is underlined. Lines end with {@code \n}, {@code \r\n} or
 * {@code \r}.
 */
public final class SourceText {
    private final String name;
    private final String text;
    private final int[] codePoints;
    private final int[] lineStarts;

    public SourceText(String name, String text) {
        this.name = name;
        this.text = text;
        this.codePoints = text.codePoints().toArray();
        this.lineStarts = IntStream.rangeClosed(0, codePoints.length)
                .filter(this::startsLine)
                .toArray();
    }

    public String name() {
        return name;
    }

    public String text() {
        return text;
    }

    /** Length in code points. */
    public int length() {
        return codePoints.length;
    }

    /** A copy of the text as code points. */
    public int[] codePoints() {
        return codePoints.clone();
    }

    public int lineCount() {
        return lineStarts.length;
    }

    /** The line an offset lies on, from 1; an offset past the end lies on the last line. */
    public int line(int offset) {
        int found = Arrays.binarySearch(lineStarts, offset);
        return found >= 0 ? found + 1 : -found - 1;
    }

    /** The column of an offset, from 1. */
    public int column(int offset) {
        return offset - lineStart(line(offset)) + 1;
    }

    /** The offset at which a line, counted from 1, starts. */
    public int lineStart(int line) {
        return lineStarts[line - 1];
    }

    /** The text of a line, counted from 1, without its end. */
    public String lineText(int line) {
        return text(lineSpan(line));
    }

    /** The span of a line, counted from 1, without its end. */
    public Span lineSpan(int line) {
        int start = lineStart(line);
        int end = line < lineStarts.length ? lineStarts[line] : codePoints.length;
        while (end > start && isLineEnd(codePoints[end - 1])) {
            end--;
        }
        return new Span(start, end);
    }

    /** The text a span covers; what lies past the end is left out. */
    public String text(Span span) {
        int start = Math.min(span.start(), codePoints.length);
        int end = Math.min(span.end(), codePoints.length);
        return new String(codePoints, start, end - start);
    }

    public Place place(Span span) {
        return new Place(this, span);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SourceText that && name.equals(that.name) && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, text);
    }

    @Override
    public String toString() {
        return name;
    }

    private boolean startsLine(int offset) {
        if (offset == 0) {
            return true;
        }
        int before = codePoints[offset - 1];
        boolean insideLineEnd = before == '\r' && offset < codePoints.length && codePoints[offset] == '\n';
        return isLineEnd(before) && !insideLineEnd;
    }

    private static boolean isLineEnd(int codePoint) {
        return codePoint == '\n' || codePoint == '\r';
    }
}
