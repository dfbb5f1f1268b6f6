// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;

/**
 * A body swept round the z axis by a cross-section that changes on its way: polygons of as many corners at rising angles, joined corner to
 * corner. A polygon's x is z, its y the distance from the axis.
 *
 * <p>As in {@link Revolution}, distances from the axis are multiplied by √(δ / sin δ) for facets of angle δ (where neighbouring facets
 * differ, by the geometric mean of their factors). What an even section sweeps is then held exactly. Of a changing one, the sector of a line
 * at distances r and r + Δ at a facet's ends holds ½ r (r + Δ) δ instead of the integral of ½ r²: with r linear in the angle that is less by
 * ⅙ Δ² δ, so the loss is (δ²/3) · (r′/r)² of what lies within the surface: 6 in 10⁷ at 320 facets and a slope of 1 : 15.
 *
 * @param sections polygons, counter-clockwise, by rising angle
 * @param joined whether the last section joins the first, a full turn on; else flat ends close the body
 * @param surfaces the surface number of what each side of the polygons sweeps, by its first corner; then, unless joined, those of the first and
 *     of the last end
 */
public record Loft(List<Section> sections, boolean joined, List<Integer> surfaces) {
    /** A polygon at an angle in radians. */
    public record Section(double radians, List<Point> points) {
        public Section {
            points = List.copyOf(points);
        }
    }

    public Loft {
        sections = List.copyOf(sections);
        surfaces = List.copyOf(surfaces);
    }

    public Mesh mesh() {
        int stations = sections.size();
        int corners = sections.get(0).points().size();
        double[] scale = scales();
        MeshBuilder builder = new MeshBuilder(stations * corners, 2 * stations * corners);
        for (int i = 0; i < corners; i++) {
            for (int s = 0; s < stations; s++) {
                Section section = sections.get(s);
                Point point = section.points().get(i);
                double out = point.y() * scale[s];
                builder.vertex(
                        out * StrictMath.cos(section.radians()), out * StrictMath.sin(section.radians()), point.x());
            }
        }
        int facets = joined ? stations : stations - 1;
        for (int i = 0; i < corners; i++) {
            int here = i * stations;
            int there = (i + 1) % corners * stations;
            for (int s = 0; s < facets; s++) {
                int t = (s + 1) % stations;
                builder.triangle(here + s, there + s, there + t, surfaces.get(i));
                builder.triangle(here + s, there + t, here + t, surfaces.get(i));
            }
        }
        if (!joined) {
            end(builder, 0, false);
            end(builder, stations - 1, true);
        }
        return builder.build();
    }

    private double[] scales() {
        int stations = sections.size();
        double[] factor = new double[stations];
        for (int s = 0; s < stations; s++) {
            double next = s + 1 < stations
                    ? sections.get(s + 1).radians()
                    : sections.get(0).radians() + 2 * StrictMath.PI;
            double step = next - sections.get(s).radians();
            factor[s] = step / StrictMath.sin(step);
        }
        double[] scale = new double[stations];
        for (int s = 0; s < stations; s++) {
            double before = s > 0 ? factor[s - 1] : joined ? factor[stations - 1] : factor[0];
            double after = s < stations - 1 || joined ? factor[s] : factor[stations - 2];
            scale[s] = Math.sqrt(Math.sqrt(before * after));
        }
        return scale;
    }

    private void end(MeshBuilder builder, int station, boolean last) {
        List<Point> points = sections.get(station).points();
        Map<Point, Integer> index = new HashMap<>();
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < points.size(); i++) {
            ring[i] = new Coordinate(points.get(i).x(), points.get(i).y());
            index.put(points.get(i), i);
        }
        ring[points.size()] = ring[0];
        Geometry triangles = PolygonTriangulator.triangulate(new GeometryFactory().createPolygon(ring));
        int stations = sections.size();
        int surface = surfaces.get(points.size() + (last ? 1 : 0));
        for (int t = 0; t < triangles.getNumGeometries(); t++) {
            Coordinate[] at = ((Polygon) triangles.getGeometryN(t)).getCoordinates();
            int[] v = new int[3];
            for (int i = 0; i < 3; i++) {
                Integer corner = index.get(new Point(at[i].x, at[i].y));
                if (corner == null) {
                    throw new IllegalStateException("A triangulation has made up a corner");
                }
                v[i] = corner * stations + station;
            }
            boolean clockwise =
                    (at[1].x - at[0].x) * (at[2].y - at[0].y) - (at[1].y - at[0].y) * (at[2].x - at[0].x) < 0;
            // Seen along growing angle the polygon is counter-clockwise: the first end faces back.
            boolean turned = clockwise == last;
            builder.triangle(v[0], turned ? v[2] : v[1], turned ? v[1] : v[2], surface);
        }
    }
}
