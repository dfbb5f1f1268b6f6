// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A metal of one&#39;s own, by what it is made of or by its density. */
public record MetalDefinition(
        Name name, Block<MetalProperty> block, @Nullable Because because, Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.metal(this);
    }
}
