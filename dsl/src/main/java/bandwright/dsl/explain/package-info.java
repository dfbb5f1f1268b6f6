// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * The way to a number, told backwards: formulas with the values in, down to definitions with their place and data with their
 * source. Computes nothing of its own but the stages in between; depends on {@code resolve}, {@code construct}, {@code measure}.
 */
@NullMarked
package bandwright.dsl.explain;

import org.jspecify.annotations.NullMarked;
