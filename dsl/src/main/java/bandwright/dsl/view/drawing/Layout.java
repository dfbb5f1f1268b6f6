// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.List;

import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.material.LinearColour;

/**
 * A row of stones and what it stands on, unrolled into a strip and seen from outside, as data. Coordinates in mm: x along the
 * unrolled surface, 0 at the top of the ring and growing counter-clockwise as seen from the fingertip; y across, positive to
 * the fingertip.
 *
 * @param title one line
 * @param description for a reader who cannot see it
 * @param fromMm where the strip begins
 * @param toMm where it ends
 * @param degreesPerMm how much of the round a millimetre of the strip is
 * @param grounds what is seen of the band, in the order it is painted
 * @param stones in the order in which they are numbered
 * @param pins outlines of pins as cast
 * @param slots edges of channels and the bars in them
 * @param joints where a collar or a half meets what it closes
 * @param dimensions of the first stones and of the band's width
 * @param notes sentences below
 */
public record Layout(
        String title,
        String description,
        double fromMm,
        double toMm,
        double degreesPerMm,
        List<Ground> grounds,
        List<Stone> stones,
        List<Outline> pins,
        List<List<Point>> slots,
        List<Joint> joints,
        List<Section.Dimension> dimensions,
        List<String> notes) {
    public Layout {
        grounds = List.copyOf(grounds);
        stones = List.copyOf(stones);
        pins = List.copyOf(pins);
        slots = List.copyOf(slots);
        joints = List.copyOf(joints);
        dimensions = List.copyOf(dimensions);
        notes = List.copyOf(notes);
    }

    /**
     * A part as far as it is seen.
     *
     * @param sunk whether it is the floor of a groove, which is drawn darker
     */
    public record Ground(String name, String metal, LinearColour colour, boolean sunk, Region region) {}

    /** A line on the surface along which two parts are put together, such as {@code joint of collar}. */
    public record Joint(String name, List<Point> line) {
        public Joint {
            line = List.copyOf(line);
        }
    }

    /** A stone's girdle; the number counts from the first stone of the row on. */
    public record Stone(int number, Point centre, Outline girdle) {}
}
