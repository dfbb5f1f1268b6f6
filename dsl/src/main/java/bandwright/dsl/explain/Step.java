// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

import java.util.List;

/**
 * One step of an explanation.
 *
 * @param text a formula with its numbers and result, or a sentence
 * @param source where it comes from: a cell and line, a data row's source, a theorem; may be empty
 * @param parts what it rests on
 */
public record Step(String text, String source, List<Step> parts) {
    public Step {
        parts = List.copyOf(parts);
    }

    static Step of(String text, String source) {
        return new Step(text, source, List.of());
    }
}
