// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.List;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class OutlineMatchTest {
    /** Width 4; walls up to 1 (a half-round has none), one arc up to 2. */
    private static Outline dome(double side) {
        Point left = new Point(-2, 0);
        Point right = new Point(2, 0);
        Point leftTop = new Point(-2, side);
        Point rightTop = new Point(2, side);
        Arc over = Arc.through(rightTop, new Point(0, 2), leftTop);
        return side == 0
                ? new Outline(List.of(new Line(left, right), over))
                : new Outline(List.of(new Line(left, right), new Line(right, rightTop), over, new Line(leftTop, left)));
    }

    @Test
    void each_outline_stays_what_it_was() {
        List<Outline> outlines = List.of(dome(1), dome(0), Outline.rectangle(-3, 0, 3, 1.5));
        List<List<Curve>> matched = OutlineMatch.match(outlines);
        for (int k = 0; k < outlines.size(); k++) {
            List<Curve> curves = matched.get(k);
            assertThat(curves).hasSameSizeAs(matched.get(0));
            assertThat(new Outline(curves).moments().area())
                    .isCloseTo(outlines.get(k).moments().area(), within(1e-12));
            for (int i = 0; i < curves.size(); i++) {
                assertThat(curves.get(i).end())
                        .isEqualTo(curves.get((i + 1) % curves.size()).start());
                assertThat(curves.get(i).length()).isPositive();
            }
        }
    }

    @Test
    void corners_of_one_form_answer_to_each_other() {
        List<List<Curve>> matched = OutlineMatch.match(List.of(dome(1), dome(1.6)));
        Point low = new Point(2, 1);
        for (int i = 0; i < matched.get(0).size(); i++) {
            if (matched.get(0).get(i).start().equals(low)) {
                assertThat(matched.get(1).get(i).start()).isEqualTo(new Point(2, 1.6));
                return;
            }
        }
        throw new AssertionError("The top of the side is no corner any more");
    }

    @Test
    void the_middles_answer_to_each_other() {
        List<List<Curve>> matched = OutlineMatch.match(List.of(dome(1), dome(0), Outline.rectangle(-1, 0, 4, 3)));
        for (int i = 0; i < matched.get(0).size(); i++) {
            if (Math.abs(matched.get(0).get(i).start().x()) < 1e-9) {
                assertThat(matched.get(1).get(i).start().x()).isCloseTo(0, within(1e-9));
                assertThat(matched.get(2).get(i).start().x()).isCloseTo(1.5, within(1e-9));
            }
        }
        assertThat(matched.get(0).stream()
                        .filter(curve -> Math.abs(curve.start().x()) < 1e-9))
                .hasSize(2);
    }
}
