// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * Drawings to scale: a list of marks in millimetres, written as SVG or painted into pixels, and the section of a ring with its dimensions as such a list. May depend on {@code geometry}, {@code material}, {@code view} and {@code view.image}.
 */
@NullMarked
package bandwright.dsl.view.drawing;

import org.jspecify.annotations.NullMarked;
