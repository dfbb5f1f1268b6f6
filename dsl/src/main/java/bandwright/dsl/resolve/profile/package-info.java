// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * The named forms of cross-sections as exact outlines of lines and arcs, in mm. May depend on {@code geometry.plane} only.
 */
@NullMarked
package bandwright.dsl.resolve.profile;

import org.jspecify.annotations.NullMarked;
