// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.model.Groove;

/**
 * Where a finished section is thinnest for wear, out from the finger: over the middle half of its width at steps of 0.01 mm, where a band rests on
 * the finger and a gauge is set (common practice, no source), and in open grooves wherever they lie; towards its sides a domed band thins by its form. Left out is where one of its two surfaces slopes more than 45
 * degrees, as at rounded edges and walls: there thickness is not what lies straight outwards. In open grooves that holds of the band before it is cut alone: a V runs out to nothing however steep it is. Parts that lie against each other count as one, and joints beside kept parts as filled.
 *
 * @param across the middle of the stretch that is so thin, mm
 * @param height of its outer surface, mm from the finger's axis
 */
record ThinPlace(double across, double thickness, double height) {
    private static final double STEP_MM = 0.01;

    /** At 45 degrees a surface rises by as much as it goes on; but for rounding. */
    private static final double STEEP = 1 + 1e-6;

    /** Thicknesses that differ by less are one. */
    private static final double SAME_MM = 1e-6;

    /**
     * @param parts sections of all parts of a band, where it is looked at
     * @param uncut that of the band before anything is cut
     * @param grooves those that go through this section
     */
    static Optional<ThinPlace> of(List<Region> parts, Region uncut, List<Groove> grooves) {
        Heights heights = Heights.of(parts);
        Bounds bounds = parts.stream().map(Region::bounds).reduce(Bounds.NONE, Bounds::with);
        Optional<ThinPlace> flat = flat(heights, bounds, grooves);
        ThinPlace thinnest = flat.orElse(new ThinPlace(0, Double.POSITIVE_INFINITY, 0));
        Heights band = Heights.of(List.of(uncut));
        // Between its corners a section gets evenly thinner or thicker.
        for (double here : heights.places()) {
            boolean open = grooves.stream().anyMatch(groove -> isOpen(groove, here));
            boolean joint = grooves.stream().anyMatch(groove -> isJoint(groove, here));
            List<Heights.Span> spans = open && !joint && isFlat(band, here) ? heights.at(here) : List.of();
            if (!spans.isEmpty() && metal(spans) < thinnest.thickness - SAME_MM) {
                thinnest = at(here, spans);
            }
        }
        return Double.isFinite(thinnest.thickness) ? Optional.of(thinnest) : Optional.empty();
    }

    private static ThinPlace at(double across, List<Heights.Span> spans) {
        return new ThinPlace(across, metal(spans), spans.get(spans.size() - 1).to());
    }

    private static boolean isFlat(Heights heights, double across) {
        List<Heights.Span> here = heights.at(across);
        return isFlat(heights.at(across - STEP_MM), here) && isFlat(here, heights.at(across + STEP_MM));
    }

    /** Over the middle half and in open grooves, where neither surface is steep. */
    private static Optional<ThinPlace> flat(Heights heights, Bounds bounds, List<Groove> grooves) {
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
            if (looked && !joint && isFlat(spans.get(i - 1), spans.get(i)) && isFlat(spans.get(i), spans.get(i + 1))) {
                double metal = metal(spans.get(i));
                if (metal < least - SAME_MM) {
                    least = metal;
                    first = i;
                    last = i;
                } else if (last == i - 1 && metal < least + SAME_MM) {
                    last = i;
                }
            }
        }
        if (first < 0) {
            return Optional.empty();
        }
        double across = bounds.minX() + ((first + last) / 2.0 + 0.5) * STEP_MM;
        List<Heights.Span> there = spans.get((first + last) / 2);
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

    private static boolean isFlat(List<Heights.Span> one, List<Heights.Span> other) {
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
