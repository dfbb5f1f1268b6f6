// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.ForkJoinPool;

import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;
import bandwright.dsl.material.LinearColour;
import bandwright.dsl.view.GoldenView;
import bandwright.dsl.view.Picture;
import bandwright.dsl.view.image.Pixels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class RendererTest {
    private static final Finish GOLD = Finish.Metal.polished(new LinearColour(1, 0.71, 0.29));
    private static final Scene RING = StandInRing.scene();

    @Test
    void the_stand_in_ring_looks_as_it_did() {
        Renderer renderer = new Renderer(RING);

        GoldenView.check("ring-three-quarter.pixels", renderer.pixels(Camera.THREE_QUARTER, 200, 150));
        GoldenView.check("ring-top.pixels", renderer.pixels(Camera.TOP, 200, 150));
    }

    @Test
    void the_number_of_threads_cannot_show() {
        String alone = GoldenView.fingerprint(onThreads(1));

        assertThat(GoldenView.fingerprint(onThreads(2))).isEqualTo(alone);
        assertThat(GoldenView.fingerprint(onThreads(7))).isEqualTo(alone);
    }

    private static Pixels onThreads(int threads) {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> new Renderer(RING).pixels(Camera.THREE_QUARTER, 160, 120))
                    .join();
        } finally {
            pool.shutdown();
        }
    }

    /** Seen along its axis, a torus is a ring of area π((R + r)² − (R − r)²). */
    @Test
    void the_silhouette_of_a_torus_has_the_area_it_should() {
        PreparedScene scene = new PreparedScene(new Scene(List.of(new Body("torus", torus(9, 1.5), GOLD))));
        Viewpoint viewpoint = new Viewpoint(Camera.FRONT, scene.soup(), 500, 400);
        Visible.Seen seen = new Visible(viewpoint, scene.soup(), 500, 400).look(0, 400, Points.MIDDLE, all(500 * 400));
        int hits = 0;
        for (int y = 0; y < 400; y++) {
            for (int x = 0; x < 500; x++) {
                hits += seen.at(x, y, 0) == Ray.NOTHING ? 0 : 1;
            }
        }

        double area = hits / (viewpoint.pixelsPerMm() * viewpoint.pixelsPerMm());
        assertThat(area / (4 * StrictMath.PI * 9 * 1.5)).isCloseTo(1, within(0.002));
    }

    @Test
    void gold_is_more_red_than_green_and_more_green_than_blue() {
        Pixels pixels = new Renderer(new Scene(List.of(new Body("torus", torus(9, 1.5), GOLD))))
                .pixels(Camera.THREE_QUARTER, 200, 150);

        long[] sums = new long[3];
        for (int y = 0; y < 150; y++) {
            for (int x = 0; x < 200; x++) {
                int colour = pixels.at(x, y);
                if (isGolden(colour)) {
                    sums[0] += colour >> 16;
                    sums[1] += colour >> 8 & 255;
                    sums[2] += colour & 255;
                }
            }
        }
        assertThat(sums[0]).isGreaterThan(sums[1]);
        assertThat(sums[1]).isGreaterThan(sums[2]);
    }

    /** By the ratio of blue to red light, which tells metals apart at any brightness. */
    @Test
    void white_and_red_and_yellow_gold_can_be_told_apart() {
        double white = blueToRed("white-gold-585-pd");
        double yellow = blueToRed("yellow-gold-585");
        double red = blueToRed("red-gold-585");

        assertThat(white).isGreaterThan(0.85);
        assertThat(yellow).isLessThan(white - 0.08);
        assertThat(red).isLessThan(white - 0.08);
    }

    private static double blueToRed(String metal) {
        Finish finish = Finish.Metal.polished(StandInRing.colour(metal));
        Pixels pixels =
                new Renderer(new Scene(List.of(new Body("torus", torus(9, 3), finish)))).pixels(Camera.FRONT, 100, 80);
        double red = 0;
        double blue = 0;
        // The torus fills the row through its middle from about a tenth to a fifth of its breadth.
        for (int x = 20; x < 28; x++) {
            red += pixels.at(x, 40) >> 16;
            blue += pixels.at(x, 40) & 255;
        }
        return blue / red;
    }

    private static BitSet all(int pixels) {
        BitSet all = new BitSet(pixels);
        all.set(0, pixels);
        return all;
    }

    @Test
    void every_ray_brings_a_number() {
        PreparedScene scene = new PreparedScene(RING);
        for (Camera camera : List.of(Camera.THREE_QUARTER, Camera.TOP, Camera.FRONT, Camera.SIDE)) {
            Viewpoint viewpoint = new Viewpoint(camera, scene.soup(), 200, 150);
            Visible.Seen seen =
                    new Visible(viewpoint, scene.soup(), 200, 150).look(0, 150, Points.MIDDLE, all(200 * 150));
            Sampler sampler = new Sampler(scene, viewpoint, 150);
            for (int y = 0; y < 150; y++) {
                for (int x = 0; x < 200; x++) {
                    sampler.look(x + 0.5, y + 0.5, seen.at(x, y, 0), Sampler.Open.NOWHERE);
                    assertThat(sampler.red).isBetween(0.0, 1.0);
                    assertThat(sampler.green).isBetween(0.0, 1.0);
                    assertThat(sampler.blue).isBetween(0.0, 1.0);
                }
            }
        }
    }

    /** What lies nearest, against rays cast through the tree: at every one of a pixel's points, from near and from far. */
    @Test
    void what_is_laid_on_the_picture_is_what_rays_meet_first() {
        PreparedScene scene = new PreparedScene(RING);
        for (Camera camera : List.of(Camera.THREE_QUARTER, Camera.TOP, new Camera(20, 35, 2.5))) {
            Viewpoint viewpoint = new Viewpoint(camera, scene.soup(), 120, 90);
            Visible.Seen seen =
                    new Visible(viewpoint, scene.soup(), 120, 90).look(0, 90, Points.SIXTEEN, all(120 * 90));
            Ray ray = new Ray();
            int differ = 0;
            for (int pixel = 0; pixel < 120 * 90; pixel++) {
                int x = pixel % 120;
                int y = pixel / 120;
                int line = pixel % 16;
                int turn = Points.SIXTEEN.turn()[line];
                viewpoint.aim(ray, x + Points.SIXTEEN.right()[line], y + Points.SIXTEEN.down(line));
                scene.tree().cast(ray);
                differ += body(scene, ray.triangle) == body(scene, seen.at(x, y, turn)) ? 0 : 1;
            }
            // Where two bodies touch, a ray may meet the one or the other.
            assertThat(differ).isLessThan(12);
        }
    }

    private static int body(PreparedScene scene, int triangle) {
        return triangle == Ray.NOTHING ? Sampler.GROUND : scene.soup().bodies[triangle];
    }

    @Test
    void an_empty_scene_is_a_picture_of_the_ground() {
        Picture picture = new Renderer(new Scene(List.of())).picture(Camera.THREE_QUARTER, 80, 60, "nothing");

        assertThat(picture.png()).isNotEmpty();
        assertThat(picture.alternativeText()).isEqualTo("nothing");
    }

    @Test
    void the_top_of_the_ring_is_up_and_angles_grow_to_the_left_seen_from_the_front() {
        assertThat(whereIsGold(Camera.FRONT, 10, 0, 0)).isEqualTo("middle top");
        assertThat(whereIsGold(Camera.FRONT, 0, 10, 0)).isEqualTo("left middle");
    }

    @Test
    void the_fingertip_is_up_from_the_top_and_left_from_the_side() {
        assertThat(whereIsGold(Camera.TOP, 0, 0, 10)).isEqualTo("middle top");
        assertThat(whereIsGold(Camera.TOP, 0, 10, 0)).isEqualTo("right middle");
        assertThat(whereIsGold(Camera.SIDE, 0, 0, 10)).isEqualTo("left middle");
        assertThat(whereIsGold(Camera.SIDE, 10, 0, 0)).isEqualTo("middle top");
    }

    /** A golden ball at the given place among white ones at the ends of all axes. */
    private static String whereIsGold(Camera camera, double x, double y, double z) {
        Mesh ball = StoneModel.roundBrilliant(2);
        Finish white = Finish.Metal.polished(new LinearColour(0.8, 0.8, 0.8));
        List<Body> bodies = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            double end = i % 2 == 0 ? 10 : -10;
            bodies.add(
                    new Body("end", at(ball, i / 2 == 0 ? end : 0, i / 2 == 1 ? end : 0, i / 2 == 2 ? end : 0), white));
        }
        bodies.add(new Body("gold", at(StoneModel.roundBrilliant(3), x, y, z), GOLD));
        Pixels pixels = new Renderer(new Scene(bodies)).pixels(camera, 90, 90);
        double sumX = 0;
        double sumY = 0;
        for (int py = 0; py < 90; py++) {
            for (int px = 0; px < 90; px++) {
                if (isGolden(pixels.at(px, py))) {
                    sumX += px;
                    sumY += py;
                }
            }
        }
        int count = countGolden(pixels);
        assertThat(count).isPositive();
        return List.of("left", "middle", "right").get((int) (sumX / count / 30)) + " "
                + List.of("top", "middle", "bottom").get((int) (sumY / count / 30));
    }

    private static Mesh at(Mesh mesh, double x, double y, double z) {
        MeshBuilder moved = new MeshBuilder(mesh.vertexCount(), mesh.triangleCount());
        for (int v = 0; v < mesh.vertexCount(); v++) {
            moved.vertex(mesh.x(v) + x, mesh.y(v) + y, mesh.z(v) + z);
        }
        for (int t = 0; t < mesh.triangleCount(); t++) {
            int[] corners = mesh.triangles();
            moved.triangle(corners[3 * t], corners[3 * t + 1], corners[3 * t + 2], mesh.surfaces()[t]);
        }
        return moved.build();
    }

    private static Mesh torus(double radius, double tube) {
        double[][] points = new double[48][];
        for (int i = 0; i < 48; i++) {
            double angle = 2 * StrictMath.PI * i / 48;
            points[i] = new double[] {tube * StrictMath.cos(angle), radius + tube * StrictMath.sin(angle), 0};
        }
        return StandInRing.revolved(points);
    }

    private static int countGolden(Pixels pixels) {
        int count = 0;
        for (int y = 0; y < pixels.height(); y++) {
            for (int x = 0; x < pixels.width(); x++) {
                count += isGolden(pixels.at(x, y)) ? 1 : 0;
            }
        }
        return count;
    }

    private static boolean isGolden(int colour) {
        return (colour >> 16) - (colour & 255) > 20;
    }
}
