// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.source;

/** A span in a certain text. */
public record Place(SourceText source, Span span) {
    /** As people read it: {@code cell 3, line 7, column 13}. */
    @Override
    public String toString() {
        return source.name() + ", line " + line() + ", column " + column();
    }

    /** The line the span starts on, from 1. */
    public int line() {
        return source.line(span.start());
    }

    /** The column the span starts at, from 1, counted in code points. */
    public int column() {
        return source.column(span.start());
    }

    /** The text the span covers. */
    public String text() {
        return source.text(span);
    }
}
