// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * Questions about designs beside the one that stands: variants, what-if, options, the value that meets a goal, and how a casting compares. The design itself is never changed. May depend on {@code resolve}, {@code construct}, {@code measure}, {@code view} and all that they depend on.
 */
@NullMarked
package bandwright.dsl.explore;

import org.jspecify.annotations.NullMarked;
