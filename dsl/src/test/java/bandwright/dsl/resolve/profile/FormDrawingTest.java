// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.profile;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Moments;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.OutlineValidity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class FormDrawingTest {
    private static final double TIGHT = 1e-9;

    @Test
    void a_rectangle_has_the_area_of_its_sides() {
        assertMoments(draw(Form.RECTANGLE, Map.of("width", 4.0, "height", 2.0)), 8, 8);
    }

    @Test
    void rounded_corners_lose_what_a_quarter_circle_leaves() {
        double edge = 0.5;
        Moments moments = draw(Form.FLAT, Map.of("width", 4.0, "height", 2.0, "edge", edge))
                .moments();
        assertThat(moments.area()).isCloseTo(8 - 2 * edge * edge * (1 - Math.PI / 4), within(TIGHT));
        assertThat(moments.centroid().x()).isCloseTo(0, within(TIGHT));
    }

    @Test
    void a_d_shape_is_a_rectangle_and_a_circular_segment() {
        double width = 4.6;
        double side = 1.25;
        double height = 1.9;
        double[] segment = segment(width, height - side);
        assertMoments(
                draw(Form.D_SHAPE, Map.of("width", width, "height", height, "side", side)),
                width * side + segment[0],
                width * side * side / 2 + segment[0] * (side + segment[1]));
    }

    @Test
    void a_half_round_of_half_its_width_is_half_a_disc() {
        double radius = 1.7;
        assertMoments(
                draw(Form.HALF_ROUND, Map.of("width", 2 * radius, "height", radius)),
                Math.PI * radius * radius / 2,
                2 * radius * radius * radius / 3);
    }

    @Test
    void a_court_loses_the_segments_of_its_inner_curve() {
        double[] outer = segment(5, 0.8);
        double[] inner = segment(5, 0.3);
        // Walls from 0.3 to 1.2 mm; the inner arc hangs below its chord at 0.3 mm and adds its segment.
        assertMoments(
                draw(Form.COURT, Map.of("width", 5.0, "height", 2.0, "side", 1.2, "inside", 0.3)),
                5 * 0.9 + outer[0] + inner[0],
                5 * 0.9 * 0.75 + outer[0] * (1.2 + outer[1]) + inner[0] * (0.3 - inner[1]));
    }

    @Test
    void a_flat_court_is_flat_outside() {
        double[] inner = segment(5, 0.3);
        assertMoments(
                draw(Form.FLAT_COURT, Map.of("width", 5.0, "height", 2.0, "inside", 0.3)),
                5 * 1.7 + inner[0],
                5 * 1.7 * 1.15 + inner[0] * (0.3 - inner[1]));
    }

    @Test
    void a_knife_edge_is_a_rectangle_and_a_triangle() {
        assertMoments(
                draw(Form.KNIFE_EDGE, Map.of("width", 4.0, "height", 2.0, "side", 0.8)),
                4 * 0.8 + 4 * 1.2 / 2,
                4 * 0.8 * 0.4 + 4 * 1.2 / 2 * (0.8 + 0.4));
    }

    @Test
    void a_bevel_takes_two_triangles() {
        assertMoments(
                draw(Form.BEVELLED, Map.of("width", 4.0, "height", 2.0, "bevel", 0.6, "side", 1.1)),
                8 - 0.6 * 0.9,
                8 - 0.6 * 0.9 * (2 - 0.3));
    }

    @Test
    void a_hollow_takes_a_segment() {
        double[] dip = segment(4, 0.25);
        assertMoments(
                draw(Form.CONCAVE, Map.of("width", 4.0, "height", 2.0, "dip", 0.25)),
                8 - dip[0],
                8 - dip[0] * (2 - dip[1]));
    }

    @Test
    void a_side_as_high_as_the_height_leaves_a_flat_top() {
        assertMoments(draw(Form.D_SHAPE, Map.of("width", 4.0, "height", 2.0, "side", 2.0)), 8, 8);
    }

    @Test
    void a_side_higher_than_the_height_cannot_be() {
        assertThat(FormDrawing.draw(Form.D_SHAPE, Map.of("width", 4.0, "height", 2.0, "side", 2.5)))
                .isEqualTo(new Drawing.Impossible("side", "the side", 2.5, "the height", 2.0));
    }

    @Test
    void an_edge_that_does_not_fit_is_told_with_the_largest_that_does() {
        Drawing drawing = FormDrawing.draw(Form.FLAT, Map.of("width", 3.0, "height", 2.0, "edge", 1.6));
        assertThat(drawing)
                .isInstanceOfSatisfying(
                        Drawing.Impossible.class,
                        impossible -> assertThat(impossible.limitMm()).isEqualTo(1.5));
    }

    /** Tangent where they meet, inside the sharp form, nowhere crossing: over many forms and sizes. */
    @Test
    void rounded_forms_run_on_without_a_kink_where_they_were_rounded() {
        Random random = new Random(20);
        List<Form> forms = List.of(Form.values());
        int drawn = 0;
        for (int i = 0; i < 600; i++) {
            Form form = forms.get(i % forms.size());
            Map<String, Double> sizes = new HashMap<>();
            sizes.put("width", 2 + 6 * random.nextDouble());
            sizes.put("height", 1 + 1.5 * random.nextDouble());
            double sharp = FormDrawing.draw(form, sizes) instanceof Drawing.Drawn plain
                    ? plain.outline().moments().area()
                    : 0;
            double edge = 0.05 + 0.3 * random.nextDouble();
            sizes.put("edge", edge);
            if (FormDrawing.draw(form, sizes) instanceof Drawing.Drawn rounded) {
                drawn++;
                assertThat(OutlineValidity.crossing(rounded.outline()))
                        .as("%s %s", form, sizes)
                        .isEmpty();
                assertThat(rounded.outline().moments().area()).isLessThan(sharp);
                assertThat(rounded.outline().bounds().height())
                        .isCloseTo(sizes.get("height"), within(form == Form.CONCAVE ? edge : TIGHT));
                assertThat(rounded.outline().curves())
                        .filteredOn(curve ->
                                curve instanceof Arc arc && Math.abs(arc.radius() - edge) < TIGHT && arc.sweep() > 0)
                        .as("%s %s", form, sizes)
                        .hasSizeGreaterThanOrEqualTo(2);
                assertClosed(rounded.outline());
            }
        }
        assertThat(drawn).isGreaterThan(400);
    }

    private static void assertClosed(Outline outline) {
        for (int i = 0; i < outline.curves().size(); i++) {
            assertThat(outline.curves()
                            .get(i)
                            .end()
                            .distanceTo(outline.curves()
                                    .get((i + 1) % outline.curves().size())
                                    .start()))
                    .isLessThan(TIGHT);
        }
    }

    private static void assertMoments(Outline outline, double area, double aboutX) {
        assertThat(outline.moments().area()).isCloseTo(area, within(TIGHT));
        assertThat(outline.moments().aboutX()).isCloseTo(aboutX, within(TIGHT));
        assertThat(outline.moments().aboutY()).isCloseTo(0, within(TIGHT));
        assertThat(OutlineValidity.crossing(outline)).isEmpty();
    }

    /** Area of a circular segment by chord and rise, and the distance of its centroid from the chord. */
    private static double[] segment(double chord, double rise) {
        double radius = (chord * chord / 4 + rise * rise) / (2 * rise);
        double angle = 2 * Math.asin(chord / (2 * radius));
        double area = radius * radius / 2 * (angle - Math.sin(angle));
        double fromCentre = chord * chord * chord / (12 * area);
        return new double[] {area, fromCentre - (radius - rise)};
    }

    private static Outline draw(Form form, Map<String, Double> sizes) {
        Drawing drawing = FormDrawing.draw(form, sizes);
        assertThat(drawing).isInstanceOf(Drawing.Drawn.class);
        return ((Drawing.Drawn) drawing).outline();
    }
}
