// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.source;

/**
 * A stretch of text from {@code start} up to but not including {@code end}, both counted in code points from 0. An
 * empty span is a place between two characters.
 */
public record Span(int start, int end) {
    public Span {
        if (start < 0 || end < start) {
            throw new IllegalArgumentException("span from " + start + " to " + end);
        }
    }

    /** The least span that holds both. */
    public Span to(Span other) {
        return new Span(Math.min(start, other.start), Math.max(end, other.end));
    }

    public int length() {
        return end - start;
    }

    public boolean contains(int offset) {
        return start <= offset && offset < end;
    }
}
