// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * The ring on its way from the wax to the customer: without what the bench cuts, with metal left to file, larger by what
 * shrinks. Each is a design like any other, so all else (solids, measures, files) works on it unchanged. Depends on
 * {@code construct}, {@code model} and {@code geometry}.
 */
@NullMarked
package bandwright.dsl.pattern;

import org.jspecify.annotations.NullMarked;
