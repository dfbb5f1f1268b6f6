// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A property of a file, and of what is made from patterns: of an export, a sheet, and a look at the casting. */
public sealed interface ExportProperty extends Property
        permits ExportProperty.Parts,
                ExportProperty.Shrinkage,
                ExportProperty.DirectedShrinkage,
                ExportProperty.Stock,
                ExportProperty.Stage,
                ExportProperty.Assembled,
                ExportProperty.LaidOut,
                ExportProperty.Replace,
                ExportProperty.Held,
                ExportProperty.Paper,
                ExportProperty.Metals,
                Property.Amount {
    record Parts(List<Name> parts, Span span) implements ExportProperty {
        public Parts {
            parts = List.copyOf(parts);
        }

        @Override
        public String word() {
            return "parts";
        }
    }

    /** One figure for all directions. */
    record Shrinkage(Expression amount, Span span) implements ExportProperty {
        @Override
        public String word() {
            return "shrinkage";
        }
    }

    /** A figure for each direction. */
    record DirectedShrinkage(Expression around, Expression across, Expression out, Span span)
            implements ExportProperty {
        @Override
        public String word() {
            return "shrinkage";
        }
    }

    /** Metal left for filing and polishing. */
    record Stock(@Nullable Expression outside, @Nullable Expression inside, Span span) implements ExportProperty {
        @Override
        public String word() {
            return "stock";
        }
    }

    /** Whether parts are as they come from the caster, or finished. */
    record Stage(boolean cast, Span span) implements ExportProperty {
        @Override
        public String word() {
            return "as";
        }
    }

    /** Each part where it belongs. */
    record Assembled(Span span) implements ExportProperty {
        @Override
        public String word() {
            return LaidOut.WORD;
        }
    }

    /** Parts side by side. */
    record LaidOut(@Nullable Expression spacing, Span span) implements ExportProperty {
        /** Parts lie one way or the other. */
        private static final String WORD = "how parts lie";

        @Override
        public String word() {
            return WORD;
        }
    }

    /** An older file of the name may go. */
    record Replace(Span span) implements ExportProperty {
        @Override
        public String word() {
            return "replace";
        }
    }

    /** The size of a sheet's pages. */
    record Paper(Name size, Span span) implements ExportProperty {
        @Override
        public String word() {
            return "paper";
        }
    }

    /** Further metals in which a sheet weighs the parts. */
    record Metals(List<Name> metals, Span span) implements ExportProperty {
        public Metals {
            metals = List.copyOf(metals);
        }

        @Override
        public String word() {
            return "metals";
        }
    }

    /** What a drawing or a table is of, as the statement that asks for it. */
    record Held(Statement question, Span span) implements ExportProperty {
        /** Of whatever kind: a file is of one thing. */
        @Override
        public String word() {
            return "what a file is of";
        }
    }
}
