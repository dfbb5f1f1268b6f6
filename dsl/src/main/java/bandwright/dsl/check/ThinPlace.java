// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.model.Groove;

/**
 * Where a finished section is thinnest for wear, out from the finger, at steps of 0.01 mm across: over the middle half of its width, where a band rests on
 * the finger and a gauge is set (common practice, no source), and in open grooves wherever they lie; towards its sides a domed band thins by its form. Left out is where one of its two surfaces slopes more than 45
 * degrees, as at rounded edges and walls: there thickness is not what lies straight outwards. Parts that lie against each other count as one, and joints beside kept parts as filled.
 *
 * @param across the middle of the stretch that is so thin, mm
 * @param height of its outer surface, mm from the finger's axis
 */
record ThinPlace(double across, double thickness, double height) {
    private static final double STEP_MM = 0.01;

    /** At 45 degrees a surface rises by as much as it goes on; but for rounding. */
    private static final double STEEP = 1 + 1e-6;

    static Optional<ThinPlace> of(List<PartSection> parts, List<Groove> grooves) {
        Heights heights = new Heights(parts);
        Bounds bounds = parts.stream().map(part -> part.region().bounds()).reduce(Bounds.NONE, Bounds::with);
        int steps = (int) Math.floor(bounds.width() / STEP_MM);
        List<List<Heights.Span>> spans = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            spans.add(heights.at(bounds.minX() + (i + 0.5) * STEP_MM));
        }
        double least = Double.POSITIVE_INFINITY;
        int first = -1;
        int last = -1;
        for (int i = 1; i + 1 < steps; i++) {
            double here = bounds.minX() + (i + 0.5) * STEP_MM;
            boolean joint = grooves.stream().anyMatch(groove -> isJoint(groove, here));
            boolean looked = Math.abs(here - (bounds.minX() + bounds.maxX()) / 2) <= bounds.width() / 4
                    || grooves.stream().anyMatch(groove -> isOpen(groove, here));
            if (looked && !joint && flat(spans.get(i - 1), spans.get(i)) && flat(spans.get(i), spans.get(i + 1))) {
                double metal = metal(spans.get(i));
                if (metal < least - 1e-6) {
                    least = metal;
                    first = i;
                    last = i;
                } else if (last == i - 1 && metal < least + 1e-6) {
                    last = i;
                }
            }
        }
        if (first < 0) {
            return Optional.empty();
        }
        List<Heights.Span> there = spans.get((first + last) / 2);
        double across = bounds.minX() + ((first + last) / 2.0 + 0.5) * STEP_MM;
        return Optional.of(
                new ThinPlace(across, least, there.get(there.size() - 1).to()));
    }

    private static boolean isOpen(Groove groove, double across) {
        return groove.keep().isEmpty() && Math.abs(across - groove.acrossMm()) <= groove.widthMm() / 2;
    }

    /** In the clearance between a kept part and its walls, which the joint fills. */
    private static boolean isJoint(Groove groove, double across) {
        double fit = groove.fitMm();
        double wall = Math.abs(Math.abs(across - groove.acrossMm()) - groove.widthMm() / 2);
        return fit > 0 && wall < fit + 2 * STEP_MM;
    }

    private static boolean flat(List<Heights.Span> one, List<Heights.Span> other) {
        boolean flat = one.size() == other.size() && !one.isEmpty();
        for (int k = 0; flat && k < one.size(); k++) {
            flat = Math.abs(other.get(k).from() - one.get(k).from()) <= STEEP * STEP_MM
                    && Math.abs(other.get(k).to() - one.get(k).to()) <= STEEP * STEP_MM;
        }
        return flat;
    }

    private static double metal(List<Heights.Span> spans) {
        return spans.stream().mapToDouble(span -> span.to() - span.from()).sum();
    }
}
