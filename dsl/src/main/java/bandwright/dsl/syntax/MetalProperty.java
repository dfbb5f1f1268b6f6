// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import bandwright.dsl.source.Span;

/** A property of a metal: its density, or shares of what it is made of. */
public sealed interface MetalProperty extends Property permits MetalProperty.Share, Property.Amount {
    /** {@code gold 58.5 %}. */
    record Share(Name element, Expression share, Span span) implements MetalProperty {
        @Override
        public String word() {
            return element.text();
        }
    }
}
