// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * Pixels, and what is drawn into them without any window system or installed font: filled outlines, lines, letters made of strokes, and the PNG file. May depend on {@code view}.
 */
@NullMarked
package bandwright.dsl.view.image;

import org.jspecify.annotations.NullMarked;
