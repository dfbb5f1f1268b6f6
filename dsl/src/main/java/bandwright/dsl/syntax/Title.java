// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** What the ring is called. */
public record Title(String text, @Nullable Because because, Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.title(this);
    }
}
