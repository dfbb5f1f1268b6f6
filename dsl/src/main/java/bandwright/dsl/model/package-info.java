// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * The ring after checking: what each statement means, in mm, degrees and grams, with the place in the text that says so.
 * Immutable. Depends on {@code geometry.plane}, {@code material}, {@code quantity} and {@code source}; knows no solids.
 */
@NullMarked
package bandwright.dsl.model;

import org.jspecify.annotations.NullMarked;
