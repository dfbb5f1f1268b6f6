// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Band;

/**
 * A part as its cross-section, before seats and pins.
 *
 * @param band the band it comes from
 * @param region x along the finger, y from the finger's axis, mm
 */
public record PartSection(String name, Band band, Metal metal, Region region) {
    PartSection with(Region other) {
        return new PartSection(name, band, metal, other);
    }
}
