// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;
import bandwright.dsl.material.LinearColour;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.MetalColour;

/** A ring made by hand for the pictures' tests: a white band, a red stripe let in, forty diamonds and eighty pins. */
final class StandInRing {
    static final double INNER = 9.07;
    private static final int AROUND = 240;

    private StandInRing() {}

    static Scene scene() {
        List<Body> bodies = new ArrayList<>();
        Finish white = Finish.Metal.polished(colour("white-gold-585-pd"));
        Finish red = Finish.Metal.polished(colour("red-gold-585"));
        bodies.add(new Body("shank", revolved(shank()), white));
        bodies.add(new Body("stripe", revolved(stripe()), red));
        Mesh brilliant = StoneModel.roundBrilliant(1.5);
        Finish diamond = new Finish.Stone(new LinearColour(0.97, 0.97, 0.97), 2.417);
        for (int i = 0; i < 40; i++) {
            bodies.add(new Body("light " + i, StoneModel.standing(brilliant, 9 * i, 10.72, 0), diamond));
        }
        for (int i = 0; i < 40; i++) {
            for (int side = -1; side <= 1; side += 2) {
                bodies.add(new Body("pin", StoneModel.standing(pin(0.275, 0.9), 9 * i + 4.5, 10.5, 0.42 * side), red));
            }
        }
        return new Scene(bodies);
    }

    static LinearColour colour(String metal) {
        return MetalColour.of(MetalCatalogue.find(metal).orElseThrow().composition());
    }

    /** Points (across, radius), counter-clockwise with across to the right and out upwards, and their surface. */
    private static double[][] shank() {
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {-2.3, INNER, 0});
        points.add(new double[] {2.3, INNER, 1});
        for (int i = 0; i <= 12; i++) {
            double across = 2.3 - i * (2.3 - 0.95) / 12;
            points.add(new double[] {across, dome(across), i == 12 ? 3 : 2});
        }
        points.add(new double[] {0.95, INNER + 0.9, 4});
        points.add(new double[] {-0.95, INNER + 0.9, 5});
        for (int i = 0; i <= 12; i++) {
            double across = -0.95 - i * (2.3 - 0.95) / 12;
            points.add(new double[] {across, dome(across), i == 12 ? 7 : 6});
        }
        return points.toArray(double[][]::new);
    }

    private static double[][] stripe() {
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {-0.95, INNER + 0.9, 0});
        points.add(new double[] {0.95, INNER + 0.9, 1});
        for (int i = 0; i <= 8; i++) {
            double across = 0.95 - i * 1.9 / 8;
            // Lower than the band's dome by what the seats would take away.
            points.add(new double[] {across, dome(across) - 0.28, i == 8 ? 3 : 2});
        }
        return points.toArray(double[][]::new);
    }

    /** The D-shape: an arc through the side walls' ends at 1.25 mm and the crown at 1.9 mm. */
    private static double dome(double across) {
        double rise = 0.65;
        double radius = (2.3 * 2.3 + rise * rise) / (2 * rise);
        return INNER + 1.9 - radius + Math.sqrt(radius * radius - across * across);
    }

    static Mesh revolved(double[][] points) {
        MeshBuilder mesh = new MeshBuilder(points.length * AROUND, 2 * points.length * AROUND);
        for (int a = 0; a < AROUND; a++) {
            double angle = 2 * StrictMath.PI * a / AROUND;
            for (double[] point : points) {
                mesh.vertex(point[1] * StrictMath.cos(angle), point[1] * StrictMath.sin(angle), point[0]);
            }
        }
        int n = points.length;
        for (int a = 0; a < AROUND; a++) {
            int here = a * n;
            int next = (a + 1) % AROUND * n;
            for (int i = 0; i < n; i++) {
                int j = (i + 1) % n;
                int surface = (int) points[i][2];
                mesh.triangle(here + i, next + j, next + i, surface);
                mesh.triangle(here + i, here + j, next + j, surface);
            }
        }
        return mesh.build();
    }

    /** A pin with a round head, along z from 0. */
    private static Mesh pin(double radius, double height) {
        int sides = 24;
        int rings = 6;
        MeshBuilder mesh = new MeshBuilder(200, 400);
        int foot = mesh.vertex(0, 0, 0);
        for (int ring = 0; ring <= rings; ring++) {
            double tilt = ring == 0 ? 0 : (ring - 1) * StrictMath.PI / 2 / rings;
            double r = radius * StrictMath.cos(tilt);
            double z = ring == 0 ? 0 : height - radius * 0.8 + radius * 0.8 * StrictMath.sin(tilt);
            for (int s = 0; s < sides; s++) {
                double angle = 2 * StrictMath.PI * s / sides;
                mesh.vertex(r * StrictMath.cos(angle), r * StrictMath.sin(angle), z);
            }
        }
        int top = mesh.vertex(0, 0, height);
        for (int s = 0; s < sides; s++) {
            int t = (s + 1) % sides;
            mesh.triangle(foot, 1 + t, 1 + s, 1);
            for (int ring = 0; ring < rings; ring++) {
                int low = 1 + ring * sides;
                mesh.triangle(low + s, low + t, low + sides + t, 0);
                mesh.triangle(low + s, low + sides + t, low + sides + s, 0);
            }
            mesh.triangle(1 + rings * sides + s, 1 + rings * sides + t, top, 0);
        }
        return mesh.build();
    }
}
