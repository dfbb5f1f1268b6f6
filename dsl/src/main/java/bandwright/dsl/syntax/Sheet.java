// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** Writes a bench sheet; without a block, on A4 and with the ring's own metals. */
public record Sheet(String file, @Nullable Block<ExportProperty> block, Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.sheet(this);
    }
}
