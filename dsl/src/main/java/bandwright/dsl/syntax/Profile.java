// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A closed cross-section: {@code profile dome = d-shape(width: breadth, height: 1.9 mm)}. */
public record Profile(
        Name name, ProfileShape shape, @Nullable Because because, Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.profile(this);
    }
}
