// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

import bandwright.dsl.check.Finding;

/**
 * One step of the bench's work.
 *
 * @param way letter of the way to begin that it belongs to, where there are two; else empty text
 * @param work what kind of work it is, a word or two
 * @param instruction what to do, a sentence
 * @param takes whether it takes metal away, and how that is known
 * @param takesG metal that it takes away by the model, g; 0 unless that is reckoned
 * @param bases the checks that must hold for it to go well
 */
public record Step(String way, String work, String instruction, Takes takes, double takesG, List<Basis> bases) {
    public Step {
        bases = List.copyOf(bases);
    }

    /**
     * What a step rests on.
     *
     * @param checks keys of checks
     * @param subjects parts, rows, cuts and pins that it is about; empty for the whole ring
     */
    public record Basis(Set<String> checks, Set<String> subjects) {
        boolean holds(Finding finding) {
            return checks.contains(finding.check())
                    && (subjects.isEmpty() || finding.subjects().stream().anyMatch(subjects::contains));
        }
    }

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
        return new Step("", Sentences.of(key + ".work"), Sentences.of(key, values), Takes.NOTHING, 0, List.of());
    }

    Step taking(double grams) {
        return new Step(way, work, instruction, Takes.RECKONED, grams, bases);
    }

    Step taking(Takes how) {
        return new Step(way, work, instruction, how, 0, bases);
    }

    Step onWay(String letter) {
        return new Step(letter, work, instruction, takes, takesG, bases);
    }

    /** The checks that must hold for it to go well; those about other things than its own do not concern it. */
    Step restingOn(Set<String> keys, Collection<String> about) {
        List<Basis> all = new ArrayList<>(bases);
        all.add(new Basis(keys, Set.copyOf(about)));
        return new Step(way, work, instruction, takes, takesG, all);
    }

    boolean restsOn(Finding finding) {
        return bases.stream().anyMatch(basis -> basis.holds(finding));
    }
}
