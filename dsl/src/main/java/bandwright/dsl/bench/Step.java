// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.List;
import java.util.Set;

import bandwright.dsl.check.Finding;

/**
 * One step of the bench's work.
 *
 * @param work what kind of work it is, a word or two
 * @param instruction what to do, a sentence
 * @param takes whether it takes metal away, and how that is known
 * @param takesG metal that it takes away by the model, g; 0 unless that is reckoned
 * @param checks keys of the checks that it rests on
 * @param subjects parts, rows, cuts and pins that it is about; empty for the whole ring
 */
public record Step(
        String work, String instruction, Takes takes, double takesG, Set<String> checks, Set<String> subjects) {
    /** What a step takes away. */
    public enum Takes {
        NOTHING,
        /** As much as the model loses. */
        RECKONED,
        /** Told with a later step: both may cut the same metal. */
        WITH_LATER,
        /** Filings, sprues, notches: the model does not know how much. */
        NOT_RECKONED
    }

    static Step of(String key, String... values) {
        return new Step(Sentences.of(key + ".work"), Sentences.of(key, values), Takes.NOTHING, 0, Set.of(), Set.of());
    }

    Step taking(double grams) {
        return new Step(work, instruction, Takes.RECKONED, grams, checks, subjects);
    }

    Step taking(Takes how) {
        return new Step(work, instruction, how, 0, checks, subjects);
    }

    /** The checks that must hold for it to go well; those about other things than its own do not concern it. */
    Step restingOn(Set<String> keys, List<String> about) {
        return new Step(work, instruction, takes, takesG, keys, Set.copyOf(about));
    }

    boolean restsOn(Finding finding) {
        return checks.contains(finding.check())
                && (subjects.isEmpty() || finding.subjects().stream().anyMatch(subjects::contains));
    }
}
