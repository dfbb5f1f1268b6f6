// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/**
 * A limit of the checks, set by the user.
 *
 * @param name which limit
 * @param because the reason, without which a limit is not taken
 */
public record Limit(Name name, Expression value, @Nullable Because because, Span span) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.limit(this);
    }
}
