// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** What {@code show} shows. */
public sealed interface ShowSubject extends Node {
    /** {@code ring}, or several parts; a single part is a {@link Value}. */
    record Parts(List<Name> parts, Span span) implements ShowSubject {
        public Parts {
            parts = List.copyOf(parts);
        }
    }

    /**
     * A section across the band.
     *
     * @param parts what is cut; empty for the whole ring
     * @param at the place around the ring; 0 deg when not given
     */
    record Section(List<Name> parts, @Nullable Expression at, Span span) implements ShowSubject {
        public Section {
            parts = List.copyOf(parts);
        }
    }

    /** The band unrolled, with the stones of a row. */
    record Layout(Name row, Span span) implements ShowSubject {}

    /**
     * Front, side and plan with their dimensions.
     *
     * @param parts what is drawn; empty for the whole ring
     */
    record Views(List<Name> parts, Span span) implements ShowSubject {
        public Views {
            parts = List.copyOf(parts);
        }
    }

    /** The weights of all parts, in their metals or in all there are. */
    record Weights(boolean inAllMetals, Span span) implements ShowSubject {}

    /**
     * What goes to the caster.
     *
     * @param block how the patterns are made; absent if nothing is said
     */
    record Casting(@Nullable Block<ExportProperty> block, Span span) implements ShowSubject {}

    /** One of the things that need no more words. */
    record Topic(Word word, Span span) implements ShowSubject {
        /** The words themselves. */
        public enum Word {
            STONES,
            CHECKS,
            DECISIONS,
            BLANK,
            STEPS,
            OPTIONS,
            FINGERPRINT,
            SIZE
        }
    }

    /** Any expression, a single part among them. */
    record Value(Expression value, Span span) implements ShowSubject {}
}
