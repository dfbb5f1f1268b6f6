// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** Asks for a table, a picture or a value; an expression alone is the same as {@code show} with it. */
public record Show(ShowSubject subject, @Nullable Viewpoint viewpoint, Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.show(this);
    }
}
