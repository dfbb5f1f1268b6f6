// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;

/**
 * A drawing: marks on white, in the order they are laid down.
 *
 * @param title one line, what it is
 * @param description what it shows, for a reader who cannot see it
 * @param box what of the plane is on it, mm of the thing drawn
 * @param scale millimetres of paper for a millimetre of the thing, 10 for 10 : 1
 */
public record Drawing(String title, String description, Bounds box, double scale, List<Mark> marks) {
    public Drawing {
        marks = List.copyOf(marks);
    }

    /** The same no larger than so many mm of paper: all of it smaller, its letters too, where it would be larger. */
    public Drawing within(double widthMm, double heightMm) {
        double fitting = Math.min(widthMm / box.width(), heightMm / box.height());
        return fitting >= scale ? this : new Drawing(title, description, box, fitting, marks);
    }
}
