// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;

/**
 * What an expression is worth, or why it is worth nothing.
 *
 * @param worth present if and only if there are no diagnostics
 */
public record Worked(@Nullable Worth worth, List<Diagnostic> diagnostics) {
    public Worked {
        diagnostics = List.copyOf(diagnostics);
    }

    /**
     * A value.
     *
     * @param text as the language shows it: {@code 42 mm}, {@code US 7 1/4}, {@code true}, {@code silver-925}
     * @param kind in words, with an article: {@code a length}, {@code a finger size}
     * @param quantity where it is a number or a quantity
     * @param size where it is a finger size
     */
    public record Worth(
            String text,
            String kind,
            @Nullable Quantity quantity,
            @Nullable FingerSize size) {}
}
