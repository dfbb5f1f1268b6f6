// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Point;

/**
 * A ring from three sides, as data. Coordinates of each view in mm from the middle of the finger's axis.
 *
 * @param title one line
 * @param description for a reader who cannot see it
 * @param front through the finger from the fingertip's side, the top of the ring up
 * @param side from the left of the front, the fingertip to the right
 * @param plan down on the top of the ring, the fingertip below
 * @param notes sentences below
 */
public record Views(String title, String description, View front, View side, View plan, List<String> notes) {
    public Views {
        notes = List.copyOf(notes);
    }

    /**
     * @param name such as {@code front}
     * @param metal lines of metal
     * @param stones lines of stones
     * @param axes centre lines
     */
    public record View(
            String name,
            List<List<Point>> metal,
            List<List<Point>> stones,
            List<List<Point>> axes,
            List<Section.Dimension> dimensions) {
        public View {
            metal = List.copyOf(metal);
            stones = List.copyOf(stones);
            axes = List.copyOf(axes);
            dimensions = List.copyOf(dimensions);
        }

        /** About all of its lines, dimensions left out. */
        public Bounds bounds() {
            Bounds bounds = Bounds.NONE;
            for (List<List<Point>> lines : List.of(metal, stones, axes)) {
                for (List<Point> line : lines) {
                    for (Point point : line) {
                        bounds = bounds.with(point);
                    }
                }
            }
            return bounds;
        }
    }
}
