// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.TextRing;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.view.drawing.Drawing;
import bandwright.dsl.view.drawing.Labels;
import bandwright.dsl.view.drawing.Mark;
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

    /** Nothing of it is symmetric: stones left and behind, a groove left and before, heaviest right of the top. */
    private static final String LOPSIDED = """
            profile wide = d-shape(width: 7 mm, height: 2.6 mm, side: 1.2 mm)
            profile slim = half-round(width: 3.4 mm, height: 1.6 mm)
            band shank {
              finger ISO 54
              profile wide at 0 deg, wide at 45 deg, slim at 140 deg, slim at 300 deg
              metal yellow-gold-750
            }
            stone-row lights on shank {
              stone round diamond 1.5 mm  across -1 mm  around 60 deg centred 30 deg  spacing at least 0.2 mm  sink 0.2 mm
            }
            """;

    /** ISO 5456-2, first angle: angles go from the top to the left as seen from the fingertip, across is positive to the fingertip. */
    @Test
    void the_plan_is_below_the_front_and_the_left_side_is_to_the_right() {
        Views views = of(LOPSIDED);

        Bounds front = bounds(views.front().stones());
        Bounds side = bounds(views.side().stones());
        Bounds plan = bounds(views.plan().stones());
        assertThat(front.maxX()).as("on the left, from the front").isLessThan(0.1);
        assertThat(side.maxX()).as("away from the fingertip, which is right").isBetween(-1.0, 0.0);
        assertThat(side.minX()).isBetween(-2.0, -1.0);
        assertThat(plan.maxX()).as("on the left, from above").isLessThan(0.1);
        assertThat(plan.minY()).as("behind is up").isBetween(0.0, 1.0);
        assertThat(plan.maxY()).isBetween(1.0, 2.0);
        // One thing is at one height in front and side, and at one place from left to right in front and plan.
        assertThat(side.maxY()).isCloseTo(front.maxY(), within(0.05));
        assertThat(plan.minX()).isCloseTo(front.minX(), within(0.05));

        Drawing drawing = ViewsDrawing.of(views, 4);
        List<Bounds> stones = drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Stroke stroke && stroke.colour() == 0x2f5570)
                .map(Mark::bounds)
                .toList();
        Bounds all = stones.stream().reduce(Bounds.NONE, Bounds::with);
        double right = front.maxX() + 5;
        Bounds drawnSide = stones.stream().filter(box -> box.minX() > right).reduce(Bounds.NONE, Bounds::with);
        Bounds drawnPlan = stones.stream().filter(box -> box.maxY() < -12).reduce(Bounds.NONE, Bounds::with);
        assertThat(drawnSide.maxX()).as("the side is right of the front").isEqualTo(all.maxX());
        assertThat(drawnSide.maxY()).as("and level with it").isCloseTo(side.maxY(), within(1e-9));
        assertThat(drawnPlan.minY()).as("the plan is below").isEqualTo(all.minY());
        assertThat(drawnPlan.minX()).as("and in line with it").isCloseTo(plan.minX(), within(1e-9));
    }

    private static Bounds bounds(List<List<Point>> lines) {
        Bounds bounds = Bounds.NONE;
        for (List<Point> line : lines) {
            for (Point point : line) {
                bounds = bounds.with(point);
            }
        }
        return bounds;
    }

    /** What a dimension says is what is drawn, also where a groove has taken the crest or the heaviest place is off the axes. */
    @Test
    void dimensions_end_at_the_lines_they_measure() {
        String crestless = """
                profile dome = d-shape(width: 5 mm, height: 2.4 mm, side: 1.2 mm)
                band shank { finger ISO 54  profile dome  metal silver-925 }
                cut trough from shank { width 2 mm  depth 1 mm }
                """;
        String arc = crestless.replace("depth 1 mm", "depth 1 mm  around 90 deg centred 20 deg");
        String band = LOPSIDED.substring(0, LOPSIDED.indexOf("stone-row"));
        for (String text : List.of(TUBE, crestless, arc, band)) {
            Views views = of(text);
            for (Views.View view : List.of(views.front(), views.side())) {
                Bounds drawn = bounds(view.metal());
                for (Section.Dimension dimension : view.dimensions()) {
                    boolean outside = dimension.label().startsWith("outside");
                    if (outside && dimension.direction() == Section.Direction.ACROSS) {
                        assertThat(dimension.from().x()).as(text).isCloseTo(drawn.minX(), within(0.006));
                        assertThat(dimension.to().x()).as(text).isCloseTo(drawn.maxX(), within(0.006));
                    } else if (outside) {
                        assertThat(dimension.from().y()).as(text).isCloseTo(drawn.minY(), within(0.006));
                        assertThat(dimension.to().y()).as(text).isCloseTo(drawn.maxY(), within(0.006));
                    } else if (dimension.label().startsWith("width 5")) {
                        assertThat(dimension.from().x()).as(text).isCloseTo(drawn.minX(), within(0.006));
                    }
                    double length = dimension.from().distanceTo(dimension.to());
                    String[] words = dimension.label().split(" ", -1);
                    assertThat(Double.parseDouble(words[words.length - 2]))
                            .as(dimension.label())
                            .isCloseTo(length, within(0.005 + 1e-9));
                }
            }
        }
        // The dome's circle through (0, 2.4) and (2.5, 1.2), where the groove's wall comes up 1 mm off the middle.
        double radius = (2.5 * 2.5 + 1.2 * 1.2) / 2.4;
        double lip = 2.4 - radius + StrictMath.sqrt(radius * radius - 1);
        Section.Dimension thickness = of(crestless).front().dimensions().get(2);
        assertThat(thickness.label()).startsWith("thickness ");
        assertThat(thickness.from().distanceTo(thickness.to())).isCloseTo(lip, within(1e-9));
        assertThat(RingSection.of(TextRing.of(crestless), Set.of("shank"), 0).dimensions())
                .filteredOn(dimension -> dimension.label().startsWith("thickness"))
                .allSatisfy(dimension -> assertThat(dimension.to().y()).isCloseTo(lip, within(1e-9)));
    }
}
