// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.measure;

import java.util.OptionalDouble;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.material.GirdleThickness;
import bandwright.dsl.material.StoneAngles;
import bandwright.dsl.material.StoneWeight;
import bandwright.dsl.model.StoneRow;

/** Measures of a row of stones. */
public final class RowMeasures {
    private final StoneLayout layout;
    private final double innerRadiusMm;

    public RowMeasures(Ring ring, String row) {
        this.layout = ring.layout(row);
        this.innerRadiusMm = ring.section(layout.row().part()).band().finger().innerRadiusMm();
    }

    public StoneRow row() {
        return layout.row();
    }

    public int count() {
        return layout.count();
    }

    /** The smallest gap between two girdles; none for a single stone. */
    public OptionalDouble gapMm() {
        return layout.gapMm();
    }

    /** Straight from girdle centre to girdle centre of neighbours; none for a single stone. */
    public OptionalDouble pitchMm() {
        return layout.pitchMm();
    }

    public double caratsEach() {
        return StoneWeight.carats(
                row().cut(), row().material(), row().size(), row().depthMm(), GirdleThickness.THIN_TO_MEDIUM);
    }

    public double caratsTotal() {
        return count() * caratsEach();
    }

    /** From the culet of the deepest stone to the finger, mm: pavilion depth by {@link StoneAngles}, for round stones the published reference. */
    public double depthLeftMm() {
        double pavilion = row().size().widthMm() * row().angles().pavilionShare();
        return layout.places().stream()
                        .map(StoneLayout.Place::line)
                        .mapToDouble(line -> line.girdleRadius() - pavilion * line.axisOut())
                        .min()
                        .orElse(innerRadiusMm)
                - innerRadiusMm;
    }
}
