// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;

/** A convex stone as the planes of its facets, for light that runs about inside it. */
final class StoneSolid {
    /** Outward normals of the facets, and how far out their planes are. */
    private final double[] normalX;

    private final double[] normalY;
    private final double[] normalZ;
    private final double[] reach;

    /** Outward normal of the largest facet, the table. */
    private final double[] axis = new double[3];

    StoneSolid(Mesh mesh) {
        double[] found = new double[4 * mesh.triangleCount()];
        int facets = 0;
        double[] area = new double[mesh.triangleCount()];
        int largest = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            double[] plane = plane(mesh, t);
            int same = 0;
            while (same < facets && !samePlane(found, 4 * same, plane)) {
                same++;
            }
            if (same == facets) {
                System.arraycopy(plane, 0, found, 4 * facets++, 4);
            }
            area[same] += MeshMeasures.doubleArea(mesh, t);
            largest = area[same] > area[largest] ? same : largest;
        }
        normalX = new double[facets];
        normalY = new double[facets];
        normalZ = new double[facets];
        reach = new double[facets];
        for (int i = 0; i < facets; i++) {
            normalX[i] = found[4 * i];
            normalY[i] = found[4 * i + 1];
            normalZ[i] = found[4 * i + 2];
            reach[i] = found[4 * i + 3];
        }
        System.arraycopy(found, 4 * largest, axis, 0, facets == 0 ? 0 : 3);
    }

    private static boolean samePlane(double[] planes, int at, double[] plane) {
        return Math.abs(planes[at] - plane[0]) < 1e-5
                && Math.abs(planes[at + 1] - plane[1]) < 1e-5
                && Math.abs(planes[at + 2] - plane[2]) < 1e-5
                && Math.abs(planes[at + 3] - plane[3]) < 1e-5;
    }

    private static double[] plane(Mesh mesh, int triangle) {
        int a = mesh.triangles()[3 * triangle];
        int b = mesh.triangles()[3 * triangle + 1];
        int c = mesh.triangles()[3 * triangle + 2];
        double ux = mesh.x(b) - mesh.x(a);
        double uy = mesh.y(b) - mesh.y(a);
        double uz = mesh.z(b) - mesh.z(a);
        double vx = mesh.x(c) - mesh.x(a);
        double vy = mesh.y(c) - mesh.y(a);
        double vz = mesh.z(c) - mesh.z(a);
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double length = Math.max(1e-300, Math.sqrt(nx * nx + ny * ny + nz * nz));
        nx /= length;
        ny /= length;
        nz /= length;
        return new double[] {nx, ny, nz, nx * mesh.x(a) + ny * mesh.y(a) + nz * mesh.z(a)};
    }

    double axisX() {
        return axis[0];
    }

    double axisY() {
        return axis[1];
    }

    double axisZ() {
        return axis[2];
    }

    double normalX(int facet) {
        return normalX[facet];
    }

    double normalY(int facet) {
        return normalY[facet];
    }

    double normalZ(int facet) {
        return normalZ[facet];
    }

    /** How many facets there are. */
    int count() {
        return reach.length;
    }

    /** How far it is to the planes of all facets, each along its normal, and how much of a way goes towards each. */
    private void measure(
            double x, double y, double z, double dx, double dy, double dz, double[] gaps, double[] outwards) {
        for (int i = 0; i < reach.length; i++) {
            outwards[i] = dx * normalX[i] + dy * normalY[i] + dz * normalZ[i];
            gaps[i] = reach[i] - x * normalX[i] - y * normalY[i] - z * normalZ[i];
        }
    }

    /**
     * The facet by which a ray from inside leaves, or -1 if numbers fail.
     *
     * @param gaps room for a number a facet, of which that of the facet is how far away it is
     * @param outwards room for a number a facet
     */
    int leaving(double x, double y, double z, double dx, double dy, double dz, double[] gaps, double[] outwards) {
        measure(x, y, z, dx, dy, dz, gaps, outwards);
        int facet = -1;
        // The nearest way is nearestGap / nearestOutward; fractions are compared without dividing.
        double nearestGap = 1;
        double nearestOutward = 0;
        for (int i = 0; i < reach.length; i++) {
            double outward = outwards[i];
            if (outward > 1e-9 && gaps[i] * nearestOutward < nearestGap * outward) {
                nearestGap = gaps[i];
                nearestOutward = outward;
                facet = i;
            }
        }
        if (facet >= 0) {
            gaps[facet] = Math.max(0, nearestGap / nearestOutward);
        }
        return facet;
    }
}
