// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import bandwright.dsl.source.Span;

/** What stands in the braces of {@code vary} and {@code what-if}: values asked for, and definitions they may use. */
public record Asked(List<Definition> definitions, List<Expression> values, Span span) implements Node {
    public Asked {
        definitions = List.copyOf(definitions);
        values = List.copyOf(values);
    }

    /** Whether nothing was asked, so that the headline numbers answer. */
    public boolean isEmpty() {
        return definitions.isEmpty() && values.isEmpty();
    }
}
