// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A property of a band. */
public sealed interface BandProperty extends Property {
    /**
     * {@code finger ISO 57 allow 1/4 US}.
     *
     * @param allowance how much larger the bore is than the size
     * @param system the size system the allowance counts in
     */
    record Finger(
            Expression size,
            @Nullable Expression allowance,
            @Nullable String system,
            Span span) implements BandProperty {
        @Override
        public String word() {
            return "finger";
        }
    }

    /** One profile, or stations round the band. */
    record Profiles(List<Station> stations, Span span) implements BandProperty {
        public Profiles {
            stations = List.copyOf(stations);
        }

        @Override
        public String word() {
            return "profile";
        }
    }

    /** A profile and the place it stands at. */
    record Station(Name profile, @Nullable Expression at, Span span) implements Node {}

    record Metal(Name metal, Span span) implements BandProperty {
        @Override
        public String word() {
            return "metal";
        }
    }
}
