// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class OutlineTest {
    /** A quarter of a circle from the first axis to the second sets out along the second and arrives against the first. */
    @Test
    void curves_know_where_they_head() {
        Curve quarter = Arc.around(new Point(0, 0), new Point(2, 0), new Point(0, 2), true);

        assertThat(quarter.startHeading()).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(quarter.endHeading()).isCloseTo(Math.PI, within(1e-12));
        assertThat(quarter.reversed().startHeading()).isCloseTo(0, within(1e-12));
        assertThat(new Line(new Point(0, 0), new Point(-1, -1)).endHeading())
                .isCloseTo(-3 * Math.PI / 4, within(1e-12));
    }

    /** A sector of half-angle a: area ar², centroid 2r sin a / 3a from the tip. Archimedes' sector, any table of centroids. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.4, 1, 1.5, 2.5, 3.1})
    void sector_of_a_circle(double half) {
        Point tip = new Point(0.7, 9);
        double r = 1.3;
        Point from = Figures.polar(tip, r, -half);
        Point to = Figures.polar(tip, r, half);
        Outline sector = new Outline(List.of(new Line(tip, from), Arc.around(tip, from, to, true), new Line(to, tip)));
        Moments moments = sector.moments();
        assertThat(moments.area()).isEqualTo(half * r * r, within(1e-13));
        assertThat(moments.centroid().x()).isEqualTo(0.7 + 2 * r * StrictMath.sin(half) / (3 * half), within(1e-12));
        assertThat(moments.centroid().y()).isEqualTo(9, within(1e-12));
    }

    /** A half-circle's centroid lies 4r/3π above its diameter; turned about it, it makes the ball 4πr³/3. */
    @Test
    void half_circle() {
        Point right = new Point(2, 0);
        Point left = new Point(-2, 0);
        Outline half = new Outline(List.of(Arc.through(right, new Point(0, 2), left), new Line(left, right)));
        assertThat(half.moments().centroid().y()).isEqualTo(8 / (3 * StrictMath.PI), within(1e-14));
        assertThat(half.moments().volumeAboutX()).isEqualTo(4 * StrictMath.PI / 3 * 8, within(1e-13));
    }

    @Test
    void the_other_way_round_everything_turns_its_sign() {
        Random random = new Random(3);
        for (int i = 0; i < 500; i++) {
            Outline outline = Figures.random(random).pieces().get(0).outer();
            Moments there = outline.moments();
            Moments back = outline.reversed().moments();
            assertThat(back.area()).isEqualTo(-there.area(), within(1e-12));
            assertThat(back.aboutX()).isEqualTo(-there.aboutX(), within(1e-11));
            Moments moved = outline.translated(1.5, -2).moments();
            assertThat(moved.aboutX()).isEqualTo(there.aboutX() - 2 * there.area(), within(1e-11));
            assertThat(moved.aboutY()).isEqualTo(there.aboutY() + 1.5 * there.area(), within(1e-11));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-2, 1e-3, 1e-4})
    void flattened_arcs_keep_the_area_and_stay_near(double tolerance) {
        Random random = new Random(4);
        for (int i = 0; i < 200; i++) {
            Outline outline = Figures.random(random).pieces().get(0).outer();
            List<Point> points = outline.flattened(tolerance);
            assertThat(Outline.polygon(points).moments().area())
                    .isEqualTo(outline.moments().area(), within(1e-12));
            for (Point point : points) {
                assertThat(outline.curves().stream()
                                .mapToDouble(curve -> curve.carrierDistance(point))
                                .min()
                                .orElseThrow())
                        .isLessThan(tolerance);
            }
        }
    }

    @Test
    void bounds_reach_to_the_outermost_points_of_arcs() {
        assertThat(Figures.circleOutline(1, 9, 2).bounds()).isEqualTo(new Bounds(-1, 7, 3, 11));
        Bounds dome = Figures.dome(new Point(0, 9), 4, 1, 2).bounds();
        assertThat(dome.maxY()).isEqualTo(11, within(1e-12));
        assertThat(dome.minY()).isEqualTo(9);
    }

    @Test
    void validity_finds_where_an_outline_crosses_or_touches_itself() {
        Outline bowTie = Outline.polygon(List.of(new Point(0, 0), new Point(2, 2), new Point(2, 0), new Point(0, 2)));
        Point crossing = OutlineValidity.crossing(bowTie).orElseThrow();
        assertThat(crossing.distanceTo(new Point(1, 1))).isLessThan(1e-9);
        Outline sunkArc = new Outline(List.of(
                new Line(new Point(0, 0), new Point(4, 0)),
                new Line(new Point(4, 0), new Point(4, 1)),
                Arc.through(new Point(4, 1), new Point(2, -0.5), new Point(0, 1)),
                new Line(new Point(0, 1), new Point(0, 0))));
        assertThat(OutlineValidity.crossing(sunkArc)).isPresent();
        Outline touching = Outline.polygon(
                List.of(new Point(0, 0), new Point(4, 0), new Point(4, 2), new Point(2, 0), new Point(0, 2)));
        assertThat(OutlineValidity.crossing(touching)).isPresent();
    }

    @Test
    void validity_lets_sound_outlines_pass() {
        Random random = new Random(5);
        for (int i = 0; i < 300; i++) {
            Outline outline = Figures.random(random).pieces().get(0).outer();
            assertThat(OutlineValidity.crossing(outline)).isEmpty();
        }
    }
}
