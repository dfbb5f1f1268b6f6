// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import bandwright.dsl.geometry.solid.Mesh;

/**
 * One thing in the picture.
 *
 * @param mesh in mm, in the ring's coordinates: the finger's axis is z, positive to the fingertip; the top of the ring is
 *     at +x; angles grow counter-clockwise seen from the fingertip
 */
public record Body(String name, Mesh mesh, Finish finish) {}
