// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.OptionalDouble;

/**
 * One step of the bench's work.
 *
 * @param work what kind of work it is, a word or two
 * @param instruction what to do, a sentence
 * @param takesG metal that it takes away, g; empty where that is not known
 */
public record Step(String work, String instruction, OptionalDouble takesG) {
    static Step of(String key, String... values) {
        return new Step(Sentences.of(key + ".work"), Sentences.of(key, values), OptionalDouble.empty());
    }

    Step taking(double grams) {
        return new Step(work, instruction, OptionalDouble.of(grams));
    }
}
