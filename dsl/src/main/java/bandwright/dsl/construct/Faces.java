// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;

/** Numbers for what the curves of a section sweep, each by the definition whose outline the curve lies on. */
final class Faces {
    private static final double ON_CURVE_MM = 1e-7;

    private Faces() {}

    /** In the order of the region's curves. */
    static Map<Curve, Integer> of(PartSection section, Surfaces surfaces) {
        Map<Curve, Integer> numbers = new LinkedHashMap<>();
        for (Region.Piece piece : section.region().pieces()) {
            for (Outline outline : piece.outlines()) {
                for (Curve curve : outline.curves()) {
                    String face = "face " + (numbers.size() + 1) + " of " + section.name();
                    numbers.put(curve, number(section, curve, face, surfaces));
                }
            }
        }
        return numbers;
    }

    /** By the last of those whose outline the curve lies on, and its name for it; all else is the band's. */
    private static int number(PartSection section, Curve curve, String unnamed, Surfaces surfaces) {
        List<PartSection.Maker> makers = section.makers();
        for (int i = makers.size() - 1; i >= 0; i--) {
            PartSection.Maker maker = makers.get(i);
            List<Curve> curves = maker.outline().pieces().stream()
                    .flatMap(piece -> piece.outlines().stream())
                    .flatMap(outline -> outline.curves().stream())
                    .toList();
            for (int k = 0; k < curves.size(); k++) {
                if (lies(curve, curves.get(k))) {
                    String face =
                            maker.faces().isEmpty() ? unnamed : maker.faces().get(k);
                    return surfaces.number(maker.definition(), face);
                }
            }
        }
        return surfaces.number(section.band().name(), unnamed);
    }

    private static boolean lies(Curve curve, Curve on) {
        if (curve instanceof Arc != on instanceof Arc) {
            return false;
        }
        for (Point point : List.of(curve.start(), curve.middle(), curve.end())) {
            if (on.carrierDistance(point) > ON_CURVE_MM) {
                return false;
            }
        }
        // A piece of the same line beside the outline's own is another's: the middle of a part lies between the ends of
        // the whole.
        return on instanceof Arc
                || on.start().distanceTo(curve.middle()) + on.end().distanceTo(curve.middle())
                        < on.length() + ON_CURVE_MM;
    }
}
