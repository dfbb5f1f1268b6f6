// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.Optional;

/** The shapes a stone of a row may have, seen from above. */
public enum StoneCut {
    /** The round brilliant: one size, its diameter. */
    ROUND("round", 0.605, "GIA reference brilliant (57 % table, 34 and 40.7 deg) with a girdle of 3 %"),
    /** The square brilliant with sharp corners. */
    PRINCESS("princess", 0.70, "common practice, from memory; no published source found"),
    /** The step-cut rectangle. */
    BAGUETTE("baguette", 0.60, "common practice, from memory; no published source found"),
    OVAL("oval", 0.605, "as the round brilliant; common practice, from memory");

    private final String word;
    private final double depthShare;
    private final String depthSource;

    StoneCut(String word, double depthShare, String depthSource) {
        this.word = word;
        this.depthShare = depthShare;
        this.depthSource = depthSource;
    }

    /** The language's word. */
    public String word() {
        return word;
    }

    /** Total depth as a share of the width (of the diameter, if round) where none is measured. */
    public double depthShare() {
        return depthShare;
    }

    /** Where {@link #depthShare()} comes from. */
    public String depthSource() {
        return depthSource;
    }

    /** Whether it has no corners. */
    public boolean isRounded() {
        return this == ROUND || this == OVAL;
    }

    /** Whether the cut may be longer than wide. */
    public boolean hasTwoSizes() {
        return this != ROUND;
    }

    /** The cut of that word; case counts. */
    public static Optional<StoneCut> find(String word) {
        for (StoneCut cut : values()) {
            if (cut.word.equals(word)) {
                return Optional.of(cut);
            }
        }
        return Optional.empty();
    }
}
