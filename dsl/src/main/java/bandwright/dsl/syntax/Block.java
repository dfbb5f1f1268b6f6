// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** The properties between braces, in the order they were written, no kind of them twice. */
public record Block<P extends Property>(List<P> properties, Span span) implements Node {
    public Block {
        properties = List.copyOf(properties);
    }

    /** The property of a kind, or nothing. */
    public <T extends Property> @Nullable T find(Class<T> kind) {
        for (P property : properties) {
            if (kind.isInstance(property)) {
                return kind.cast(property);
            }
        }
        return null;
    }

    /** The property that gives a plain value to a word, or nothing. */
    public Property.@Nullable Amount amount(Property.Word word) {
        for (P property : properties) {
            if (property instanceof Property.Amount amount && amount.kind() == word) {
                return amount;
            }
        }
        return null;
    }
}
