// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.model.StoneRow;

/** Whether two rows stand beside each other somewhere on their way round, or one goes only where the other does not. */
final class StoneArcs {
    private StoneArcs() {}

    /** Each arc is as long as its row says, and half a stone more at either end. */
    static boolean meet(StoneLayout one, StoneLayout other) {
        StoneRow first = one.row();
        StoneRow second = other.row();
        if (first.around().isFull() || second.around().isFull()) {
            return true;
        }
        double apart = Math.abs(StrictMath.IEEEremainder(
                first.around().centredDegrees() - second.around().centredDegrees(), 360));
        return apart < half(one) + half(other);
    }

    private static double half(StoneLayout layout) {
        StoneRow row = layout.row();
        double girdle = layout.lines().get(0).girdleRadius();
        return row.around().degrees() / 2 + StrictMath.atan(row.aroundMm() / 2 / girdle) * (180 / StrictMath.PI);
    }
}
