// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.Locale;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A property in a block; this file holds those that several kinds of block share. */
public sealed interface Property extends Node
        permits BandProperty,
                ChannelProperty,
                ExportProperty,
                GrooveProperty,
                MetalProperty,
                ProngsProperty,
                QuoteProperty,
                SeatsProperty,
                StoneMaterialProperty,
                StoneRowProperty {

    /** The word a property of this kind is known by; two of one word in a block are one too many. */
    String word();

    /** A word and its value, no more: {@code width 1.9 mm}. */
    record Amount(Word kind, Expression value, Span span)
            implements ChannelProperty,
                    ExportProperty,
                    GrooveProperty,
                    MetalProperty,
                    ProngsProperty,
                    QuoteProperty,
                    SeatsProperty,
                    StoneMaterialProperty,
                    StoneRowProperty {
        @Override
        public String word() {
            return kind.word();
        }
    }

    /** The words that take a plain value. */
    enum Word {
        ACROSS,
        BARS_EVERY,
        BEARING,
        BUTTON,
        CLEARANCE,
        COUNT,
        DENSITY,
        DEPTH,
        DIAMETER,
        FINISHING,
        FIT,
        FLOOR,
        GIRDLE,
        HOLE,
        LIP,
        LOSS,
        NOTCH,
        PATTERN,
        PER_GAP,
        REACH,
        RISE,
        ROOT,
        SETTING,
        SET_HEIGHT,
        SINK,
        SPARES,
        WIDTH;

        /** As it is written. */
        public String word() {
            String lower = name().toLowerCase(Locale.ROOT);
            return this == BARS_EVERY ? "bars every" : lower.replace('_', '-');
        }
    }

    /**
     * How much of the round: {@code around full}, {@code around 120 deg centred 0 deg}.
     *
     * @param arc the amount; none means all the way
     * @param centred the place of its middle; 0 deg when not given
     */
    record Around(@Nullable Expression arc, @Nullable Expression centred, Span span)
            implements GrooveProperty, StoneRowProperty {
        @Override
        public String word() {
            return "around";
        }
    }

    /** Whether a cut is made by hand after casting, or cast. */
    record Made(boolean atBench, Span span) implements GrooveProperty, SeatsProperty {
        @Override
        public String word() {
            return "made";
        }
    }
}
