// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Union, intersection and difference of regions.
 *
 * <p>JTS sees every arc as fine chords and decides how the pieces join. {@link CurveRefit} then puts the arcs back and moves
 * each new corner onto the true crossing of the two curves that meet there, so that areas and moments stay exact.
 */
public final class RegionBoolean {
    /** How far the chords shown to JTS may leave an arc, mm. Decides only which curves meet, not where. */
    private static final double CHORD_RISE_MM = 1e-4;

    /** Pieces smaller than this, in mm², are left by rounding, not by the design. */
    private static final double SPECK_MM2 = 1e-8;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final CurveRefit refit = new CurveRefit();

    private RegionBoolean() {}

    public static Region union(Region a, Region b) {
        return new RegionBoolean().combine(a, b, OverlayNG.UNION);
    }

    public static Region intersection(Region a, Region b) {
        return new RegionBoolean().combine(a, b, OverlayNG.INTERSECTION);
    }

    /** What of the first region lies outside the second. */
    public static Region difference(Region a, Region b) {
        return new RegionBoolean().combine(a, b, OverlayNG.DIFFERENCE);
    }

    private Region combine(Region a, Region b, int operation) {
        Geometry result = OverlayNGRobust.overlay(geometry(a), geometry(b), operation);
        List<Region.Piece> pieces = new ArrayList<>();
        for (int i = 0; i < result.getNumGeometries(); i++) {
            // An overlay may also hold the lines and points along which regions merely touch.
            if (result.getGeometryN(i) instanceof Polygon polygon && polygon.getArea() > SPECK_MM2) {
                pieces.add(piece(polygon));
            }
        }
        return new Region(pieces);
    }

    private Geometry geometry(Region region) {
        List<Polygon> polygons = new ArrayList<>();
        for (Region.Piece piece : region.pieces()) {
            LinearRing[] holes = piece.holes().stream().map(this::ring).toArray(LinearRing[]::new);
            polygons.add(FACTORY.createPolygon(ring(piece.outer()), holes));
        }
        return FACTORY.createMultiPolygon(polygons.toArray(Polygon[]::new));
    }

    private LinearRing ring(Outline outline) {
        return FACTORY.createLinearRing(refit.chords(outline, CHORD_RISE_MM));
    }

    private Region.Piece piece(Polygon polygon) {
        List<Outline> holes = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            Outline hole = refit.outline(polygon.getInteriorRingN(i).getCoordinates());
            holes.add(hole.counterClockwise().reversed());
        }
        return new Region.Piece(
                refit.outline(polygon.getExteriorRing().getCoordinates()).counterClockwise(), holes);
    }
}
