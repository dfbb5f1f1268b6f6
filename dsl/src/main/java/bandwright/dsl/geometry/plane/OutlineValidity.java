// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.Optional;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Whether an outline encloses one piece of the plane without crossing or touching itself. */
public final class OutlineValidity {
    private static final double CHORD_RISE_MM = 1e-4;

    private OutlineValidity() {}

    /** A place at which the outline crosses or touches itself, if there is one. */
    public static Optional<Point> crossing(Outline outline) {
        Coordinate[] ring = new CurveRefit().chords(outline, CHORD_RISE_MM);
        if (ring.length < 4) {
            return Optional.of(outline.curves().get(0).start());
        }
        TopologyValidationError error = new IsValidOp(new GeometryFactory().createPolygon(ring)).getValidationError();
        if (error == null) {
            return Optional.empty();
        }
        Coordinate at = error.getCoordinate();
        return Optional.of(at == null ? outline.curves().get(0).start() : new Point(at.x, at.y));
    }
}
