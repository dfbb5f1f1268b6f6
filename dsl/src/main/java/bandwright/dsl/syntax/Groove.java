// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A cut along the band: {@code cut trough from shank { width 1.9 mm depth 1 mm }}. */
public record Groove(
        Name name,
        List<Name> from,
        Block<GrooveProperty> block,
        @Nullable Because because,
        Span span) implements Statement {
    public Groove {
        from = List.copyOf(from);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.groove(this);
    }
}
