// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * Numbers of a ring: weights, volumes, walls of parts; counts, gaps, carats of rows. Depends on {@code construct},
 * {@code model}, {@code material} and the measurer's interface of {@code resolve}.
 */
@NullMarked
package bandwright.dsl.measure;

import org.jspecify.annotations.NullMarked;
