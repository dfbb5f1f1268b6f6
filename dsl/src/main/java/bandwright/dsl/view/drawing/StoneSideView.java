// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.List;

import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.material.BrilliantProportions;

/** Side views of stones for sections, the table upwards. */
public final class StoneSideView {
    private StoneSideView() {}

    /** A round brilliant, the lower edge of its girdle at the given place, mm. */
    public static Outline roundBrilliant(double diameterMm, BrilliantProportions proportions, Point girdle) {
        double radius = diameterMm / 2;
        double percent = diameterMm / 100;
        double girdleHeight = percent * proportions.girdlePercent();
        double table = radius * proportions.tablePercent() / 100;
        double top = girdleHeight + percent * proportions.crownHeightPercent();
        return Outline.polygon(List.of(
                girdle.plus(0, -percent * proportions.pavilionDepthPercent()),
                girdle.plus(radius, 0),
                girdle.plus(radius, girdleHeight),
                girdle.plus(table, top),
                girdle.plus(-table, top),
                girdle.plus(-radius, girdleHeight),
                girdle.plus(-radius, 0)));
    }
}
