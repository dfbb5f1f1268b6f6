// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.TextRing;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.view.drawing.Drawing;
import bandwright.dsl.view.drawing.Labels;
import bandwright.dsl.view.drawing.Section;
import bandwright.dsl.view.drawing.SvgWriter;
import bandwright.dsl.view.drawing.Views;
import bandwright.dsl.view.drawing.ViewsDrawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class RingViewsTest {
    private static final String TUBE = """
            profile bar = rectangle(width: 4 mm, height: 2 mm)
            band shank { finger DE 18  profile bar  metal silver-925 }
            """;

    private static final String ARC = """
            profile bar = flat(width: 5 mm, height: 2.2 mm)
            band shank { finger ISO 57  profile bar  metal yellow-gold-750 }
            stone-row lights on shank { stone round diamond 1.5 mm  around 100 deg  spacing at least 0.2 mm  sink 0.2 mm }
            cut seats for lights from shank { hole 0.8 mm  bearing 0.35 mm  clearance 0.01 mm }
            prongs pins for lights on shank { diameter 0.5 mm  rise 0.3 mm  reach 0.08 mm }
            """;

    private static Views of(String text) {
        return RingViews.of(TextRing.of(text), Set.of("shank"));
    }

    /** A square tube is two circles from the front, and a rectangle from the side and from above. */
    @Test
    void a_tube_is_circles_and_rectangles() {
        Views views = of(TUBE);

        double inner = 0;
        double outer = 0;
        for (List<Point> line : views.front().metal()) {
            for (Point point : line) {
                double radius = point.distanceTo(new Point(0, 0));
                assertThat(Math.min(Math.abs(radius - 9), Math.abs(radius - 11)))
                        .isLessThan(0.01);
            }
            double length = length(line);
            if (line.get(0).distanceTo(new Point(0, 0)) < 10) {
                inner += length;
            } else {
                outer += length;
            }
        }
        assertThat(inner).isCloseTo(2 * StrictMath.PI * 9, within(0.1));
        assertThat(outer).isCloseTo(2 * StrictMath.PI * 11, within(0.1));
        for (Views.View view : List.of(views.side(), views.plan())) {
            double drawn =
                    view.metal().stream().mapToDouble(RingViewsTest::length).sum();
            // The near rims, and the far silhouette ends: nothing of the inside is seen.
            assertThat(drawn).as(view.name()).isCloseTo(2 * 4 + 2 * 22, within(0.5));
        }
    }

    private static double length(List<Point> line) {
        double length = 0;
        for (int i = 0; i + 1 < line.size(); i++) {
            length += line.get(i).distanceTo(line.get(i + 1));
        }
        return length;
    }

    @Test
    void sizes_are_those_of_the_design() {
        Views views = of(TUBE);

        assertThat(labels(views.front())).containsExactly("inside 18 mm", "outside 22 mm", "thickness 2 mm");
        assertThat(labels(views.side())).containsExactly("width 4 mm");
        assertThat(views.plan().dimensions()).isEmpty();
    }

    private static List<String> labels(Views.View view) {
        return view.dimensions().stream().map(Section.Dimension::label).toList();
    }

    @Test
    void a_row_on_an_arc_tells_how_far_it_reaches() {
        Views views = of(ARC);

        Section.Dimension row = views.plan().dimensions().get(0);
        assertThat(row.label()).startsWith("lights ");
        assertThat(row.from().x()).isCloseTo(-row.to().x(), within(1e-9));
        assertThat(views.plan().stones()).isNotEmpty();
        assertThat(RingViews.asCast(TextRing.of(ARC), Set.of("shank")).plan().stones())
                .isEmpty();
    }

    @Test
    void a_band_that_changes_has_both_ends_measured() {
        Ring ring = TextRing.of("""
                profile bar = flat(width: 7 mm, height: 2.2 mm)
                profile slim = flat(width: 4 mm, height: 1.8 mm)
                band shank { finger ISO 54  profile bar at 0 deg, slim at 180 deg  metal yellow-gold-750 }
                """);
        Views views = RingViews.of(ring, Set.of("shank"));

        assertThat(labels(views.front())).contains("thickness at 0 deg 2.2 mm", "thickness at 180 deg 1.8 mm");
        assertThat(labels(views.side())).containsExactly("width at 0 deg 7 mm", "width at 180 deg 4 mm");
    }

    @Test
    void views_stand_apart_and_stay_small() {
        for (String text : List.of(TUBE, ARC)) {
            Views views = of(text);
            for (double scale : new double[] {1, 2, 5}) {
                Labels.assertApart(ViewsDrawing.of(views, scale));
            }
            Drawing drawing = ViewsDrawing.of(views);
            assertThat(SvgWriter.write(drawing).length()).isLessThan(200_000);
            assertThat(drawing.box().width() * drawing.scale()).isLessThanOrEqualTo(180);
        }
    }
}
