// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;

import bandwright.dsl.diagnostic.Diagnostic;

/**
 * Conditions from outside a design, judged on it.
 *
 * @param requirements one for each {@code require} of the text, in its order; none where the text has an error
 * @param diagnostics what is wrong with the text
 */
public record Judged(List<Answer.Requirement> requirements, List<Diagnostic> diagnostics) {
    public Judged {
        requirements = List.copyOf(requirements);
        diagnostics = List.copyOf(diagnostics);
    }
}
