// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.algorithm.CGAlgorithms3D;
import org.locationtech.jts.geom.Coordinate;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;

/**
 * Gathers placed shapes into as few meshes as may be, for a boolean costs as much for a hundred shapes as for one. Shapes that
 * certainly stand clear of each other share a mesh; each that does not waits for the next.
 *
 * <p>Two turned shapes stand clear if the axes of all their pieces (hole, cone, bore) are farther apart than the pieces' radii
 * together. So the seats of a row, whose boxes overlap but which do not, are one operand. Neighbours are found in a grid of
 * cubes as large as the largest shape: cost grows with the number of shapes.
 */
final class Operands {
    /** Corners of facets stand out of the circle by less than this factor: √(δ / sin δ) is 1.006 for 24 sides. */
    private static final double CORNERS = 1.01;

    /** A placed shape: its pieces' ends along the axis, their radii, and its mesh in a box. */
    private record Placed(List<Coordinate> ends, double[] radii, Mesh mesh, double[] box) {
        boolean isClearOf(Placed other) {
            return !overlap(box, other.box) || piecesAreClear(other);
        }

        private boolean piecesAreClear(Placed other) {
            for (int i = 0; i < radii.length; i++) {
                for (int j = 0; j < other.radii.length; j++) {
                    double apart = CGAlgorithms3D.distanceSegmentSegment(
                            ends.get(i), ends.get(i + 1), other.ends.get(j), other.ends.get(j + 1));
                    if (apart <= CORNERS * (radii[i] + other.radii[j])) {
                        return false;
                    }
                }
            }
            return true;
        }
    }

    private record Cell(long x, long y, long z) {}

    /** Shapes that stand clear of each other, by the cell of their boxes' middle. */
    private static final class Operand {
        final Map<Cell, List<Placed>> cells = new HashMap<>();
        final List<Placed> shapes = new ArrayList<>();
    }

    private Operands() {}

    /** @param features those to be placed, each at all its axes */
    static List<Mesh> of(List<Feature> features) {
        List<Placed> all = new ArrayList<>();
        for (Feature feature : features) {
            feature.axes().forEach(axis -> all.add(placed(feature, axis)));
        }
        double size = all.stream().mapToDouble(Operands::largestSide).max().orElse(1);
        List<Operand> operands = new ArrayList<>();
        for (Placed shape : all) {
            Cell cell = cell(shape, size);
            Operand operand = operands.stream()
                    .filter(candidate -> hasRoom(candidate, cell, shape))
                    .findFirst()
                    .orElseGet(() -> {
                        Operand another = new Operand();
                        operands.add(another);
                        return another;
                    });
            operand.cells.computeIfAbsent(cell, key -> new ArrayList<>()).add(shape);
            operand.shapes.add(shape);
        }
        return operands.stream().map(Operands::joined).toList();
    }

    private static boolean hasRoom(Operand operand, Cell cell, Placed shape) {
        for (long x = cell.x - 1; x <= cell.x + 1; x++) {
            for (long y = cell.y - 1; y <= cell.y + 1; y++) {
                for (long z = cell.z - 1; z <= cell.z + 1; z++) {
                    for (Placed other : operand.cells.getOrDefault(new Cell(x, y, z), List.of())) {
                        if (!shape.isClearOf(other)) {
                            return false;
                        }
                    }
                }
            }
        }
        return true;
    }

    private static Mesh joined(Operand operand) {
        if (operand.shapes.size() == 1) {
            return operand.shapes.get(0).mesh;
        }
        int vertices = operand.shapes.stream()
                .mapToInt(shape -> shape.mesh.vertexCount())
                .sum();
        int triangles = operand.shapes.stream()
                .mapToInt(shape -> shape.mesh.triangleCount())
                .sum();
        MeshBuilder builder = new MeshBuilder(vertices, triangles);
        operand.shapes.forEach(shape -> builder.append(shape.mesh));
        return builder.build();
    }

    private static Placed placed(Feature feature, Feature.Axis axis) {
        Feature.Stand stand = Feature.stand(axis);
        List<Coordinate> ends =
                feature.line().stream().map(point -> stand.along(point.x())).toList();
        double[] radii = new double[ends.size() - 1];
        for (int i = 0; i < radii.length; i++) {
            radii[i] = Math.max(
                    feature.line().get(i).y(), feature.line().get(i + 1).y());
        }
        Mesh mesh = feature.mesh(axis);
        return new Placed(ends, radii, mesh, box(mesh));
    }

    private static double[] box(Mesh mesh) {
        double[] box = {1e9, 1e9, 1e9, -1e9, -1e9, -1e9};
        for (int v = 0; v < mesh.vertexCount(); v++) {
            for (int axis = 0; axis < 3; axis++) {
                double value = mesh.positions()[3 * v + axis];
                box[axis] = Math.min(box[axis], value);
                box[axis + 3] = Math.max(box[axis + 3], value);
            }
        }
        return box;
    }

    private static double largestSide(Placed shape) {
        double[] box = shape.box;
        return Math.max(box[3] - box[0], Math.max(box[4] - box[1], box[5] - box[2]));
    }

    private static Cell cell(Placed shape, double size) {
        double[] box = shape.box;
        return new Cell(
                (long) Math.floor((box[0] + box[3]) / 2 / size), (long) Math.floor((box[1] + box[4]) / 2 / size), (long)
                        Math.floor((box[2] + box[5]) / 2 / size));
    }

    private static boolean overlap(double[] a, double[] b) {
        return a[0] <= b[3] && b[0] <= a[3] && a[1] <= b[4] && b[1] <= a[4] && a[2] <= b[5] && b[2] <= a[5];
    }
}
