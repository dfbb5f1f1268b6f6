// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.algorithm.CGAlgorithms3D;
import org.locationtech.jts.geom.Coordinate;

import bandwright.dsl.geometry.operation.Turning;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;

/**
 * Gathers placed shapes into as few meshes as may be, for a boolean costs as much for a hundred shapes as for one. Shapes that
 * certainly stand clear of each other share a mesh; each that does not waits for the next.
 *
 * <p>Two shapes stand clear if the axes of all their pieces (hole, cone, bore) are farther apart than the pieces' radii
 * together; shapes that are not round also if a plane parts them, of which those along and between their sides are tried. So the seats of a
 * row, whose boxes overlap but which do not, are one operand. Neighbours are found in a grid of
 * cubes as large as the largest shape: cost grows with the number of shapes.
 */
final class Operands {
    /** Corners of facets stand out of the circle by less than this factor: √(δ / sin δ) is 1.006 for 24 sides. */
    private static final double CORNERS = 1.01;

    /** A placed shape: its pieces' ends along the axis, their radii, and its mesh in a box. */
    private record Placed(
            List<Coordinate> ends, List<Double> radii, boolean round, Turning.Frame frame, Mesh mesh, Box box) {
        boolean isClearOf(Placed other) {
            return !box.meets(other.box) || piecesAreClear(other) || (!(round && other.round) && isPartedFrom(other));
        }

        /** Whether all of the one lies on one side of a plane, and all of the other on its other side. */
        private boolean isPartedFrom(Placed other) {
            double[][] own = {frame.side(), frame.third()};
            double[][] others = {other.frame.side(), other.frame.third()};
            for (int i = 0; i < 2; i++) {
                double[] between = new double[3];
                for (int k = 0; k < 3; k++) {
                    between[k] = own[i][k] + others[i][k];
                }
                for (double[] way : List.of(own[i], others[i], between)) {
                    double[] here = extent(way);
                    double[] there = other.extent(way);
                    if (here[1] < there[0] || there[1] < here[0]) {
                        return true;
                    }
                }
            }
            return false;
        }

        private double[] extent(double[] way) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int v = 0; v < mesh.vertexCount(); v++) {
                double at = mesh.x(v) * way[0] + mesh.y(v) * way[1] + mesh.z(v) * way[2];
                low = Math.min(low, at);
                high = Math.max(high, at);
            }
            return new double[] {low, high};
        }

        private boolean piecesAreClear(Placed other) {
            for (int i = 0; i < radii.size(); i++) {
                for (int j = 0; j < other.radii.size(); j++) {
                    double apart = CGAlgorithms3D.distanceSegmentSegment(
                            ends.get(i), ends.get(i + 1), other.ends.get(j), other.ends.get(j + 1));
                    if (apart <= CORNERS * (radii.get(i) + other.radii.get(j))) {
                        return false;
                    }
                }
            }
            return true;
        }
    }

    private record Box(double minX, double minY, double minZ, double maxX, double maxY, double maxZ) {
        static Box of(Mesh mesh) {
            double[] low = new double[3];
            double[] high = new double[3];
            Arrays.fill(low, Double.POSITIVE_INFINITY);
            Arrays.fill(high, Double.NEGATIVE_INFINITY);
            for (int i = 0; i < mesh.positions().length; i++) {
                low[i % 3] = Math.min(low[i % 3], mesh.positions()[i]);
                high[i % 3] = Math.max(high[i % 3], mesh.positions()[i]);
            }
            return new Box(low[0], low[1], low[2], high[0], high[1], high[2]);
        }

        boolean meets(Box other) {
            return minX <= other.maxX
                    && other.minX <= maxX
                    && minY <= other.maxY
                    && other.minY <= maxY
                    && minZ <= other.maxZ
                    && other.minZ <= maxZ;
        }

        double largestSide() {
            return Math.max(maxX - minX, Math.max(maxY - minY, maxZ - minZ));
        }

        Cell cell(double size) {
            return new Cell(cell(minX + maxX, size), cell(minY + maxY, size), cell(minZ + maxZ, size));
        }

        private static long cell(double twice, double size) {
            return (long) Math.floor(twice / 2 / size);
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
        double size =
                all.stream().mapToDouble(shape -> shape.box.largestSide()).max().orElse(1);
        List<Operand> operands = new ArrayList<>();
        for (Placed shape : all) {
            Cell cell = shape.box.cell(size);
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
        Feature.Form form = feature.form();
        List<Coordinate> ends = form.heights().stream().map(stand::along).toList();
        Mesh mesh = feature.mesh(axis);
        return new Placed(ends, form.radii(), form instanceof Feature.Turned, stand.frame(), mesh, Box.of(mesh));
    }
}
