// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;

/** How far a plan reaches; texts count as the points they stand on. */
public final class PlanBox {
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
                box = box.with(note.at());
            }
        }
        return box;
    }
}
