// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/**
 * Asks for a table, a picture or a value; an expression alone is the same as {@code show} with it.
 *
 * @param state in which state of the work a picture shows the ring; absent where nothing is said
 * @param viewpoint absent where nothing is said
 */
public record Show(
        ShowSubject subject,
        @Nullable State state,
        @Nullable Viewpoint viewpoint,
        Span span) implements Statement {
    /** States of the work that a picture can show. */
    public enum State {
        /** Finished, the pins dressed over the stones. */
        SET,
        /** From the caster: without stones and without what the bench cuts. */
        CAST
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.show(this);
    }
}
