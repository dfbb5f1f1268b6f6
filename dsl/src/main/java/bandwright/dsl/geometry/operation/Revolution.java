// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Line;
import bandwright.dsl.geometry.plane.Moments;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;

/**
 * Turns a plane region about the z axis. The region's x is z, its y the distance from the axis; facets stand for circles.
 *
 * <p>A facet of angle δ inscribed in a circle would hold sin δ / δ of its sector. All distances from the axis are therefore
 * multiplied by √(δ / sin δ): the faceted body then holds exactly the volume that Pappus' theorem gives for its outline.
 */
public final class Revolution {
    private static final double LONGEST_MM = 4;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** One closed line of a flattened region: its points, and the surface that leaves each towards the next. */
    private record Ring(List<Point> points, List<Integer> surfaces) {}

    private record Shape(Ring outer, List<Ring> holes) {}

    private final List<Shape> shapes = new ArrayList<>();

    /**
     * @param toleranceMm how far chords may leave the region's arcs
     * @param surfaceOf the number of the surface that a curve of an outline sweeps
     */
    public Revolution(Region region, double toleranceMm, ToIntFunction<Curve> surfaceOf) {
        for (Region.Piece piece : region.pieces()) {
            List<Ring> holes = new ArrayList<>();
            for (Outline hole : piece.holes()) {
                holes.add(ring(hole, toleranceMm, surfaceOf));
            }
            shapes.add(new Shape(ring(piece.outer(), toleranceMm, surfaceOf), holes));
        }
    }

    private static Ring ring(Outline outline, double toleranceMm, ToIntFunction<Curve> surfaceOf) {
        List<Point> points = new ArrayList<>();
        List<Integer> surfaces = new ArrayList<>();
        for (Curve curve : outline.curves()) {
            int surface = surfaceOf.applyAsInt(curve);
            points.add(curve.start());
            surfaces.add(surface);
            List<Point> inner = new ArrayList<>();
            if (curve instanceof Line line) {
                divide(line, inner);
            } else {
                curve.flatten(toleranceMm, inner::add);
            }
            for (Point point : inner.subList(0, inner.size() - 1)) {
                points.add(point);
                surfaces.add(surface);
            }
        }
        return new Ring(points, surfaces);
    }

    /** A long line becomes several, so that no facet meets more than a handful of what is cut and added. */
    private static void divide(Line line, List<Point> points) {
        int pieces = Math.max(1, (int) (line.length() / LONGEST_MM));
        for (int i = 1; i < pieces; i++) {
            double share = (double) i / pieces;
            points.add(new Point(
                    line.start().x() + share * (line.end().x() - line.start().x()),
                    line.start().y() + share * (line.end().y() - line.start().y())));
        }
        points.add(line.end());
    }

    /** Volume in mm³ of the body turned through an angle in radians: that of the flattened region, exactly. */
    public double volume(double radians) {
        Moments sum = Moments.NONE;
        for (Shape shape : shapes) {
            sum = sum.plus(Outline.polygon(shape.outer.points).moments());
            for (Ring hole : shape.holes) {
                sum = sum.plus(Outline.polygon(hole.points).moments());
            }
        }
        return sum.aboutX() * radians;
    }

    /** The body all the way round, with facet boundaries half a facet off the angle 0. */
    public Mesh ring(int facets) {
        double step = 2 * StrictMath.PI / facets;
        double[] angles = new double[facets];
        for (int i = 0; i < facets; i++) {
            angles[i] = (i + 0.5) * step;
        }
        return sweep(angles, step, Ends.JOINED, 0);
    }

    /** One facet of {@link #ring}, without the flat ends that would close it. */
    public Mesh facet(int facets) {
        double step = 2 * StrictMath.PI / facets;
        return sweep(new double[] {-0.5 * step, 0.5 * step}, step, Ends.OPEN, 0);
    }

    /**
     * A piece of the body between flat ends, with facet boundaries at (i + ½)·step for i from first to last.
     *
     * @param endSurface the number of the flat ends' surface
     */
    public Mesh sector(double step, int first, int last, int endSurface) {
        double[] angles = new double[last - first + 1];
        for (int i = 0; i < angles.length; i++) {
            angles[i] = (first + i + 0.5) * step;
        }
        return sweep(angles, step, Ends.FLAT, endSurface);
    }

    private enum Ends {
        JOINED,
        FLAT,
        OPEN
    }

    private Mesh sweep(double[] angles, double step, Ends ends, int endSurface) {
        boolean closed = ends == Ends.JOINED;
        double scale = Math.sqrt(step / StrictMath.sin(step));
        int stations = angles.length;
        double[] cos = new double[stations];
        double[] sin = new double[stations];
        for (int s = 0; s < stations; s++) {
            cos[s] = scale * StrictMath.cos(angles[s]);
            sin[s] = scale * StrictMath.sin(angles[s]);
        }
        MeshBuilder builder = new MeshBuilder(1024, 2048);
        for (Shape shape : shapes) {
            Map<Point, Integer> firstVertex = new HashMap<>();
            sweep(builder, shape.outer, cos, sin, closed, firstVertex);
            shape.holes.forEach(hole -> sweep(builder, hole, cos, sin, closed, firstVertex));
            if (ends == Ends.FLAT) {
                ends(builder, shape, firstVertex, stations, endSurface);
            }
        }
        return builder.build();
    }

    private static void sweep(
            MeshBuilder builder, Ring ring, double[] cos, double[] sin, boolean closed, Map<Point, Integer> first) {
        int stations = cos.length;
        int n = ring.points.size();
        int base = builder.vertexCount();
        for (int i = 0; i < n; i++) {
            Point point = ring.points.get(i);
            first.put(point, builder.vertexCount());
            for (int s = 0; s < stations; s++) {
                builder.vertex(point.y() * cos[s], point.y() * sin[s], point.x());
            }
        }
        int facets = closed ? stations : stations - 1;
        for (int i = 0; i < n; i++) {
            int here = base + i * stations;
            int there = base + (i + 1) % n * stations;
            int surface = ring.surfaces.get(i);
            for (int s = 0; s < facets; s++) {
                int t = (s + 1) % stations;
                builder.triangle(here + s, there + s, there + t, surface);
                builder.triangle(here + s, there + t, here + t, surface);
            }
        }
    }

    private static void ends(
            MeshBuilder builder, Shape shape, Map<Point, Integer> firstVertex, int stations, int surface) {
        LinearRing[] holes = shape.holes.stream().map(Revolution::ring).toArray(LinearRing[]::new);
        Geometry triangles = PolygonTriangulator.triangulate(FACTORY.createPolygon(ring(shape.outer), holes));
        for (int t = 0; t < triangles.getNumGeometries(); t++) {
            Coordinate[] corners = ((Polygon) triangles.getGeometryN(t)).getCoordinates();
            int[] v = new int[3];
            for (int i = 0; i < 3; i++) {
                Integer vertex = firstVertex.get(new Point(corners[i].x, corners[i].y));
                if (vertex == null) {
                    throw new IllegalStateException("A triangulation has made up a corner");
                }
                v[i] = vertex;
            }
            boolean clockwise = (corners[1].x - corners[0].x) * (corners[2].y - corners[0].y)
                            - (corners[1].y - corners[0].y) * (corners[2].x - corners[0].x)
                    < 0;
            // Seen along growing angle the region is counter-clockwise with x to z and y outwards: the first end faces
            // back.
            int b = clockwise ? v[2] : v[1];
            int c = clockwise ? v[1] : v[2];
            builder.triangle(v[0], c, b, surface);
            int last = stations - 1;
            builder.triangle(v[0] + last, b + last, c + last, surface);
        }
    }

    private static LinearRing ring(Ring ring) {
        Coordinate[] coordinates = new Coordinate[ring.points.size() + 1];
        for (int i = 0; i < ring.points.size(); i++) {
            coordinates[i] =
                    new Coordinate(ring.points.get(i).x(), ring.points.get(i).y());
        }
        coordinates[coordinates.length - 1] = coordinates[0];
        return FACTORY.createLinearRing(Arrays.copyOf(coordinates, coordinates.length));
    }
}
