// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

/** Bodies whose volumes are known by formulas that anyone can look up; each test names the formula's origin. */
class ClosedFormulaTest {
    private static final double[] ORIGIN = {0, 0, 0};

    /** Pappus of Alexandria, Collection, book VII: a circle of radius r turned at distance R holds 2π²Rr². */
    @Test
    void torus() {
        Region circle = circle(0.3, 9, 1.1);
        double pappus = 2 * StrictMath.PI * StrictMath.PI * 9 * 1.1 * 1.1;
        assertThat(circle.moments().volumeAboutX() / pappus).isEqualTo(1, within(1e-14));
        for (int facets : new int[] {16, 64, 320}) {
            Revolution revolution = new Revolution(circle, 5e-4, curve -> 0);
            double told = revolution.volume(2 * StrictMath.PI);
            Mesh mesh = revolution.ring(facets);
            assertThat(MeshMeasures.closednessFault(mesh)).isEmpty();
            assertThat(MeshMeasures.volume(mesh) / told).isEqualTo(1, within(1e-12));
            // Chords keep the circle's area; by symmetry its centroid stays nearly where it was.
            assertThat(told / pappus).isEqualTo(1, within(1e-5));
        }
    }

    /** Euclid, Elements, book XII, propositions 10 to 15: cylinder πr²h, cone a third of it; a frustum is a difference of two. */
    @ParameterizedTest
    @ValueSource(ints = {6, 24, 48, 96})
    void cylinder_and_cone_are_exact_whatever_the_facets(int facets) {
        double[] aslant = {0.36, 0.48, 0.8};
        double cylinder = MeshMeasures.volume(Primitives.cylinder(new double[] {3, -2, 1}, aslant, 0.75, 2.2, facets));
        assertThat(cylinder).isEqualTo(StrictMath.PI * 0.75 * 0.75 * 2.2, within(1e-11));
        double frustum = MeshMeasures.volume(Primitives.cone(ORIGIN, Primitives.X, 0.4, 0.75, 0.35, facets));
        assertThat(frustum).isEqualTo(StrictMath.PI * 0.35 / 3 * (0.4 * 0.4 + 0.4 * 0.75 + 0.75 * 0.75), within(1e-12));
        double cone = MeshMeasures.volume(Primitives.cone(ORIGIN, Primitives.Y, 1.5, 1e-6, 2, facets));
        assertThat(cone).isEqualTo(StrictMath.PI * 1.5 * 1.5 * 2 / 3, within(1e-5));
    }

    /** Archimedes, On the Sphere and Cylinder, book I: 4πr³/3. The error falls with the square of the number of steps. */
    @Test
    void ball_converges_with_the_square_of_its_steps() {
        double ball = 4 * StrictMath.PI / 3 * 2 * 2 * 2;
        double coarse = ball - MeshMeasures.volume(Primitives.ball(ORIGIN, 2, 32));
        double fine = ball - MeshMeasures.volume(Primitives.ball(ORIGIN, 2, 64));
        assertThat(coarse / fine).isEqualTo(4, within(0.1));
        assertThat(fine / ball).isBetween(0.0, 0.005);
    }

    /** Archimedes, On the Sphere and Cylinder, book II: a cap of height h holds πh²(3r − h)/3. */
    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.8, 1.5, 2})
    void cap_of_a_ball(double height) {
        Mesh ball = Primitives.ball(ORIGIN, 1.5, 192);
        Mesh above = Primitives.box(-3, -3, 1.5 - height, 3, 3, 3);
        Mesh cap = closed(SolidBoolean.intersection(ball, above));
        double formula = StrictMath.PI * height * height * (3 * 1.5 - height) / 3;
        assertThat(MeshMeasures.volume(cap) / formula).isEqualTo(1, within(2e-3));
        Mesh rest = closed(SolidBoolean.difference(ball, above));
        assertThat(MeshMeasures.volume(cap) + MeshMeasures.volume(rest))
                .isEqualTo(MeshMeasures.volume(ball), within(1e-9));
    }

    /**
     * The napkin ring (Smith and Mikami, A History of Japanese Mathematics, 1914, of Seki Takakazu's "arc ring"): what is left
     * of a ball drilled through to the height h holds πh³/6, whatever the ball's size.
     */
    @ParameterizedTest
    @CsvSource({"1.2, 2", "2, 2", "2.5, 1.4", "1.6, 3"})
    void napkin_ring(double radius, double height) {
        double coarse = napkinRing(radius, height, 96);
        double fine = napkinRing(radius, height, 192);
        double formula = StrictMath.PI * height * height * height / 6;
        // The meridian's chords lie inside the ball, which tells most in the thinnest ring.
        assertThat(fine / formula).isEqualTo(1, within(4e-3));
        assertThat(Math.abs(fine - formula)).isLessThan(Math.abs(coarse - formula));
    }

    private static double napkinRing(double radius, double height, int facets) {
        Mesh ball = Primitives.ball(ORIGIN, radius, facets);
        double hole = Math.sqrt(radius * radius - height * height / 4);
        Mesh drill = Primitives.cylinder(new double[] {0, 0, -5}, Primitives.Z, hole, 10, facets);
        return MeshMeasures.volume(closed(SolidBoolean.difference(ball, drill)));
    }

    /**
     * Archimedes, The Method; named after C. P. Steinmetz: two round bars that cross squarely share 16r³/3. Facets that keep
     * the circle's area make the error fall with the fourth power of their number.
     */
    @Test
    void steinmetz_body() {
        double formula = 16 * 0.75 * 0.75 * 0.75 / 3;
        double coarse = formula - steinmetz(24);
        double fine = formula - steinmetz(48);
        double finest = formula - steinmetz(96);
        assertThat(coarse / fine).isEqualTo(16, within(1.0));
        assertThat(fine / finest).isEqualTo(16, within(1.0));
        assertThat(finest / formula).isEqualTo(0, within(1e-5));
    }

    private static double steinmetz(int facets) {
        Mesh along = Primitives.cylinder(new double[] {-2, 0, 0}, Primitives.X, 0.75, 4, facets);
        Mesh across = Primitives.cylinder(new double[] {0, -2, 0}, Primitives.Y, 0.75, 4, facets);
        closed(SolidBoolean.union(along, across));
        closed(SolidBoolean.difference(along, across));
        return MeshMeasures.volume(closed(SolidBoolean.intersection(along, across)));
    }

    /** A cut at a facet's edge shows the section, wider by the outward move of the corners; its hole too. */
    @Test
    void the_slice_of_a_turned_body_is_its_section() {
        Outline outer = Outline.rectangle(-2, 8, 2, 10);
        Region section = new Region(List.of(new Region.Piece(
                outer, List.of(circle(0.2, 9, 0.4).pieces().get(0).outer().reversed()))));
        int facets = 64;
        Mesh mesh = new Revolution(section, 1e-4, curve -> 0).ring(facets);
        double step = 2 * StrictMath.PI / facets;
        double scale = Math.sqrt(step / StrictMath.sin(step));
        for (double angle : new double[] {0.5 * step, 10.5 * step}) {
            Region slice = HalfPlaneSlice.of(mesh, angle);
            assertThat(slice.pieces()).hasSize(1);
            assertThat(slice.pieces().get(0).holes()).hasSize(1);
            assertThat(slice.moments().area()).isEqualTo(section.moments().area() * scale, within(1e-9));
            assertThat(slice.bounds().maxY()).isCloseTo(10 * scale, offset(1e-9));
            assertThat(slice.bounds().minX()).isCloseTo(-2, offset(1e-9));
        }
        Region middle = HalfPlaneSlice.of(mesh, 7 * step);
        assertThat(middle.moments().area())
                .isEqualTo(section.moments().area() * scale * StrictMath.cos(step / 2), within(1e-9));
    }

    private static Mesh closed(Mesh mesh) {
        assertThat(MeshMeasures.closednessFault(mesh)).isEmpty();
        return mesh;
    }

    private static Region circle(double x, double y, double radius) {
        Point centre = new Point(x, y);
        Point right = new Point(x + radius, y);
        Point left = new Point(x - radius, y);
        return Region.of(
                new Outline(List.of(Arc.around(centre, right, left, true), Arc.around(centre, left, right, true))));
    }
}
