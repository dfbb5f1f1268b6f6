// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A property of what is made from patterns: of an export, and of a look at the casting. */
public sealed interface ExportProperty extends Property
        permits ExportProperty.Parts,
                ExportProperty.Shrinkage,
                ExportProperty.DirectedShrinkage,
                ExportProperty.Stock,
                Property.Amount {
    record Parts(List<Name> parts, Span span) implements ExportProperty {
        public Parts {
            parts = List.copyOf(parts);
        }

        @Override
        public String word() {
            return "parts";
        }
    }

    /** One figure for all directions. */
    record Shrinkage(Expression amount, Span span) implements ExportProperty {
        @Override
        public String word() {
            return "shrinkage";
        }
    }

    /** A figure for each direction. */
    record DirectedShrinkage(Expression around, Expression across, Expression out, Span span)
            implements ExportProperty {
        @Override
        public String word() {
            return "shrinkage";
        }
    }

    /** Metal left for filing and polishing. */
    record Stock(@Nullable Expression outside, @Nullable Expression inside, Span span) implements ExportProperty {
        @Override
        public String word() {
            return "stock";
        }
    }
}
