// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

import bandwright.dsl.check.Finding;

/**
 * One step of the bench's work.
 *
 * @param work what kind of work it is, a word or two
 * @param instruction what to do, a sentence
 * @param takesG metal that it takes away by the model, g; empty where that is told with a later step
 * @param checks keys of the checks that it rests on
 * @param subjects parts, rows, cuts and pins that it is about; empty for the whole ring
 */
public record Step(String work, String instruction, OptionalDouble takesG, Set<String> checks, Set<String> subjects) {
    static Step of(String key, String... values) {
        return new Step(
                Sentences.of(key + ".work"), Sentences.of(key, values), OptionalDouble.of(0), Set.of(), Set.of());
    }

    Step taking(double grams) {
        return new Step(work, instruction, OptionalDouble.of(grams), checks, subjects);
    }

    /** What it takes is told with the step that follows: both may cut the same metal. */
    Step takingWithNext() {
        return new Step(work, instruction, OptionalDouble.empty(), checks, subjects);
    }

    /** The checks that must hold for it to go well; those about other things than its own do not concern it. */
    Step restingOn(Set<String> keys, List<String> about) {
        return new Step(work, instruction, takesG, keys, Set.copyOf(about));
    }

    boolean restsOn(Finding finding) {
        return checks.contains(finding.check())
                && (subjects.isEmpty() || finding.subjects().stream().anyMatch(subjects::contains));
    }
}
