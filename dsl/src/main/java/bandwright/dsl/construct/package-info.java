// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * From the checked model to bodies: cross-sections of the parts, places of stones, seats and pins, and the solids they make.
 * Depends on {@code model} and {@code geometry}.
 *
 * <p>Ring coordinates, in mm: z along the finger, positive to the fingertip; x to the top of the ring (0 deg); angles grow
 * counter-clockwise seen from the fingertip. A section's x is z, its y the distance from the axis.
 */
@NullMarked
package bandwright.dsl.construct;

import org.jspecify.annotations.NullMarked;
