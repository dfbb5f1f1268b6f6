// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A cut for the stones of a row: {@code cut seats for lights from shank { hole 0.8 mm }}. */
public record Seats(
        Name name,
        Name row,
        List<Name> from,
        Block<SeatsProperty> block,
        @Nullable Because because,
        Span span) implements Statement {
    public Seats {
        from = List.copyOf(from);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.seats(this);
    }
}
