// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A stone material of one&#39;s own. */
public record StoneMaterial(
        Name name,
        Block<StoneMaterialProperty> block,
        @Nullable Because because,
        Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.stoneMaterial(this);
    }
}
