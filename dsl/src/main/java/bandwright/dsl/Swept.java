// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;

/**
 * A catalogue that can be worked out, or why it cannot.
 *
 * @param sweep present if and only if there are no diagnostics
 */
public record Swept(@Nullable Sweep sweep, List<Diagnostic> diagnostics) {
    public Swept {
        diagnostics = List.copyOf(diagnostics);
    }
}
