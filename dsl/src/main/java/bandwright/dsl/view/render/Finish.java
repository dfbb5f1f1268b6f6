// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import bandwright.dsl.material.LinearColour;

/** How a body takes the light. */
public sealed interface Finish {
    /**
     * Metal.
     *
     * @param reflectance what it throws back of light falling straight on
     * @param roughness 0 for a mirror, 0.1 for a good polish, 0.5 for a matt brushing
     */
    record Metal(LinearColour reflectance, double roughness) implements Finish {
        public static Metal polished(LinearColour reflectance) {
            return new Metal(reflectance, 0.1);
        }
    }

    /**
     * A cut stone, clear; its mesh must be convex.
     *
     * @param body the share of light that passes, each colour
     * @param refractiveIndex 1.5 to 2.7
     */
    record Stone(LinearColour body, double refractiveIndex) implements Finish {}
}
