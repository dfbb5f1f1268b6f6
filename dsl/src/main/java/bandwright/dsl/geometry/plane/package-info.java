// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * Figures of the plane made of lines and arcs: outlines, regions, their exact moments, and booleans between them. Knows no
 * rings; depends on nothing of ours. JTS decides topology; the arcs it is shown as chords are put back exactly afterwards.
 */
@NullMarked
package bandwright.dsl.geometry.plane;

import org.jspecify.annotations.NullMarked;
