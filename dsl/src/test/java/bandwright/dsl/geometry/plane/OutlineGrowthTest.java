// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class OutlineGrowthTest {
    @Test
    void a_rectangle_grows_by_as_much_on_each_side() {
        Outline grown = OutlineGrowth.of(Outline.rectangle(-2, 0, 2, 1.5), curve -> 0.1);

        assertThat(grown.bounds()).isEqualTo(new Bounds(-2.1, -0.1, 2.1, 1.6));
        assertThat(grown.moments().area()).isCloseTo(4.2 * 1.7, within(1e-12));
    }

    @Test
    void one_side_alone_grows_straight_out() {
        Outline grown = OutlineGrowth.of(
                Outline.rectangle(-2, 0, 2, 1.5),
                curve -> curve.start().y() == 0 && curve.end().y() == 0 ? 0.25 : 0);

        assertThat(grown.moments().area()).isCloseTo(4 * 1.75, within(1e-12));
    }

    @Test
    void a_circle_stays_one() {
        Outline grown = OutlineGrowth.of(Figures.circleOutline(1, 2, 3), curve -> 0.2);

        assertThat(grown.moments().area()).isCloseTo(StrictMath.PI * 3.2 * 3.2, within(1e-9));
    }

    @Test
    void a_hollow_arc_gets_tighter_and_its_corners_meet() {
        // A flat bar whose top is a hollow arc of radius 5: its crown sinks, its flanks rise.
        Point left = new Point(-2, 2);
        Point right = new Point(2, 2);
        Arc hollow = Arc.through(right, new Point(0, 1.6), left);
        Outline bar = new Outline(List.of(
                new Line(new Point(-2, 0), new Point(2, 0)),
                new Line(new Point(2, 0), right),
                hollow,
                new Line(left, new Point(-2, 0))));

        Outline grown = OutlineGrowth.of(bar, curve -> 0.1);

        assertThat(grown.curves().stream().filter(Arc.class::isInstance).map(Arc.class::cast))
                .singleElement()
                .satisfies(arc -> {
                    assertThat(arc.radius()).isCloseTo(hollow.radius() - 0.1, within(1e-9));
                    assertThat(arc.middle().y()).isCloseTo(1.7, within(1e-9));
                });
        assertThat(OutlineValidity.crossing(grown)).isEmpty();
    }

    @Test
    void polygons_with_corners_inwards_grow_as_the_plane_library_says() {
        Random random = new Random(20261127);
        for (int i = 0; i < 200; i++) {
            List<Point> corners = star(random);
            double amount = 0.02 + 0.1 * random.nextDouble();

            Outline grown = OutlineGrowth.of(Outline.polygon(corners), curve -> amount);

            // JTS cuts a mitre that is too long square, we cut it straight across: both hold what round corners hold or
            // more.
            assertThat(grown.moments().area())
                    .as("polygon %s", i)
                    .isBetween(
                            buffered(corners, amount, BufferParameters.JOIN_BEVEL) - 1e-4,
                            buffered(corners, amount, BufferParameters.JOIN_MITRE) + 1e-4);
            assertThat(OutlineValidity.crossing(grown)).isEmpty();
        }
    }

    private static List<Point> star(Random random) {
        List<Point> corners = new ArrayList<>();
        for (int k = 0; k < 9; k++) {
            double radius = 1 + random.nextDouble();
            corners.add(Figures.polar(new Point(0, 0), radius, 2 * StrictMath.PI * k / 9));
        }
        return corners;
    }

    private static double buffered(List<Point> corners, double amount, int join) {
        List<Coordinate> ring = new ArrayList<>();
        corners.forEach(corner -> ring.add(new Coordinate(corner.x(), corner.y())));
        ring.add(ring.get(0));
        BufferParameters parameters = new BufferParameters(8, BufferParameters.CAP_FLAT, join, 10);
        return BufferOp.bufferOp(
                        new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new)), amount, parameters)
                .getArea();
    }
}
