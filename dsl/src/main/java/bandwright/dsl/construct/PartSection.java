// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Band;

/**
 * A part before seats and pins: a cross-section that is turned, or, where a section alone does not tell it, how it is carved.
 *
 * @param band the band it comes from
 * @param region x along the finger, y from the finger's axis, mm; empty if carved
 * @param makers whose outlines the region's curves lie on, the last that fits
 */
public record PartSection(
        String name, Band band, Metal metal, Region region, List<Maker> makers, Optional<Solid> carved) {
    public PartSection {
        makers = List.copyOf(makers);
    }

    /**
     * A definition and an outline that it gave.
     *
     * @param faces what the outline's curves make, one for each; empty where they have no names
     */
    record Maker(String definition, Region outline, List<String> faces) {
        Maker {
            faces = List.copyOf(faces);
        }

        Maker(String definition, Region outline) {
            this(definition, outline, List.of());
        }
    }

    static PartSection turned(String name, Band band, Metal metal, Region region, List<Maker> makers) {
        return new PartSection(name, band, metal, region, makers, Optional.empty());
    }

    static PartSection carved(String name, Band band, Metal metal, Solid solid) {
        return new PartSection(name, band, metal, Region.EMPTY, List.of(), Optional.of(solid));
    }

    /** Whether it is a cross-section turned all the way round. */
    public boolean isTurned() {
        return carved.isEmpty();
    }

    PartSection with(Region other) {
        return turned(name, band, metal, other, makers);
    }

    PartSection madeBy(String definition, Region outline) {
        return madeBy(new Maker(definition, outline));
    }

    PartSection madeBy(Maker maker) {
        List<Maker> more = new ArrayList<>(makers);
        more.add(maker);
        return turned(name, band, metal, region, more);
    }
}
