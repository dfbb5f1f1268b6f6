// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;

import static org.assertj.core.api.Assertions.assertThat;

/** What holds of the labels of every drawing. */
public final class Labels {
    private Labels() {}

    /** No label lies over another, and none beyond the paper. */
    public static void assertApart(Drawing drawing) {
        List<Mark.Label> labels = drawing.marks().stream()
                .filter(Mark.Label.class::isInstance)
                .map(Mark.Label.class::cast)
                .toList();
        for (int i = 0; i < labels.size(); i++) {
            Bounds one = labels.get(i).bounds();
            assertThat(one.minX() >= drawing.box().minX()
                            && one.maxX() <= drawing.box().maxX())
                    .as("%s is on the paper", labels.get(i).text())
                    .isTrue();
            for (int j = 0; j < i; j++) {
                Bounds other = labels.get(j).bounds();
                boolean apart = one.maxX() <= other.minX()
                        || other.maxX() <= one.minX()
                        || one.maxY() <= other.minY()
                        || other.maxY() <= one.minY();
                assertThat(apart)
                        .as("%s and %s", labels.get(i).text(), labels.get(j).text())
                        .isTrue();
            }
        }
    }
}
