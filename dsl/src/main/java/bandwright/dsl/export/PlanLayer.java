// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.util.List;

import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;

/**
 * All of a plan that means the same.
 *
 * @param name what it is, in the language's names: {@code part shank}, {@code stones lights}, {@code dimensions}
 * @param colour 0xRRGGBB
 * @param closed outlines
 * @param lines open ones
 * @param notes texts
 */
public record PlanLayer(String name, int colour, List<Outline> closed, List<List<Point>> lines, List<Note> notes) {
    public PlanLayer {
        closed = List.copyOf(closed);
        lines = lines.stream().map(List::copyOf).toList();
        notes = List.copyOf(notes);
    }

    public boolean isEmpty() {
        return closed.isEmpty() && lines.isEmpty() && notes.isEmpty();
    }

    /** A text whose middle stands on a point, its capitals so many mm high. */
    public record Note(Point at, double heightMm, String text) {}
}
