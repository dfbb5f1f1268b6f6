// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import bandwright.dsl.geometry.plane.Point;

/**
 * A check that failed or is close, at its place on a drawing.
 *
 * @param failed a square points there; otherwise a circle
 * @param at in the drawing's own coordinates, mm
 * @param sentence what is so
 */
public record CheckMark(boolean failed, Point at, String sentence) {
    /** What stands before the sentence, so that neither colour nor shape is needed to tell. */
    String words() {
        return (failed ? "failed: " : "close: ") + sentence;
    }
}
