// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.expression;

import java.util.List;

import bandwright.dsl.model.Design;

/** Measures the ring that a design describes. */
public interface Measurer {
    /** Whether a word is a measure: {@code weight}, {@code gap}. */
    boolean knows(String word);

    /** All its words, for suggestions. */
    List<String> words();

    /**
     * A measure of a part, of a row, or of {@code ring}.
     *
     * @param modifiers further words, such as {@code pattern} for the piece as cast
     * @param design what the subject depends on, and nothing else; all of the design for {@code ring}
     * @throws bandwright.dsl.model.Fault if there is no such measure of that subject, or the subject cannot be made
     */
    Value measure(String word, String subject, List<String> modifiers, Design design);
}
