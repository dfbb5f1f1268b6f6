// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;

/** How far a plan reaches; the width of a text is a guess on the wide side, as nobody knows the reader's typeface. */
public final class PlanBox {
    /** Six tenths of the type size for a sign; capitals are seven tenths of it high. */
    private static final double SIGN_WIDTH = 0.6 / 0.7;

    private PlanBox() {}

    public static Bounds of(Content.Plan plan) {
        Bounds box = Bounds.NONE;
        for (PlanLayer layer : plan.layers()) {
            for (Outline outline : layer.closed()) {
                box = box.with(outline.bounds());
            }
            for (List<Point> line : layer.lines()) {
                for (Point point : line) {
                    box = box.with(point);
                }
            }
            for (PlanLayer.Note note : layer.notes()) {
                double half = note.text().length() * SIGN_WIDTH * note.heightMm() / 2;
                Point at = note.at();
                box = box.with(new Point(at.x() - half, at.y() - note.heightMm()));
                box = box.with(new Point(at.x() + half, at.y() + note.heightMm()));
            }
        }
        return box;
    }
}
