// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import bandwright.dsl.source.Span;

/** Tries all combinations of the axes; without asked things, the headline numbers are shown. */
public record Vary(List<Axis> axes, Asked asked, Span span) implements Statement {
    public Vary {
        axes = List.copyOf(axes);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.vary(this);
    }
}
