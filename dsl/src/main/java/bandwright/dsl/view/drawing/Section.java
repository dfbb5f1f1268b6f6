// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.material.LinearColour;

/**
 * A cut through a ring's band, as data. Coordinates in mm: x across (positive to the fingertip), y out from the inner wall in the
 * middle of the band.
 *
 * @param title one line
 * @param description for a reader who cannot see it
 * @param innerRadiusMm from the finger's axis to y = 0
 * @param parts in the order they are painted
 * @param stones side views of stones, painted over the parts
 * @param pins side views of pins that stand behind the cut, painted under the parts; a pin that is cut is a part
 * @param notes what the drawing alone would not tell, a line each
 */
public record Section(
        String title,
        String description,
        double innerRadiusMm,
        List<Part> parts,
        List<Silhouette> stones,
        List<Silhouette> pins,
        List<Dimension> dimensions,
        List<String> notes) {
    public Section {
        parts = List.copyOf(parts);
        stones = List.copyOf(stones);
        pins = List.copyOf(pins);
        dimensions = List.copyOf(dimensions);
        notes = List.copyOf(notes);
    }

    /**
     * @param metal its name for people, such as {@code white gold 585}
     */
    public record Part(String name, String metal, LinearColour colour, Region region) {}

    /** Something seen from its side; those of one name share a line of the legend, and an empty name has none. */
    public record Silhouette(String name, Outline outline) {}

    /** Which way a dimension is measured. */
    public enum Direction {
        /** Along x; its line goes below the section. */
        ACROSS,
        /** Along y; its line goes to the right of the section. */
        OUT
    }

    /**
     * @param label the whole text, such as {@code breadth 4.6 mm}
     */
    public record Dimension(Direction direction, Point from, Point to, String label) {}

    /** The box round parts, stones and pins. */
    Bounds bounds() {
        Bounds bounds = Bounds.NONE;
        for (Part part : parts) {
            bounds = bounds.with(part.region().bounds());
        }
        for (Silhouette stone : stones) {
            bounds = bounds.with(stone.outline().bounds());
        }
        for (Silhouette pin : pins) {
            bounds = bounds.with(pin.outline().bounds());
        }
        return bounds;
    }
}
