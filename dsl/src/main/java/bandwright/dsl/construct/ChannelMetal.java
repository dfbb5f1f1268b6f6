// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

import bandwright.dsl.geometry.plane.Outline;

/**
 * The metal that a channel is cut from, as heights from the finger's axis, mm.
 *
 * @param parts all that it is cut from, with their pieces
 * @param finger the band's cross-section at an angle, y from the finger
 */
record ChannelMetal(List<PartSection> parts, DoubleFunction<Outline> finger, double innerRadius, double outermost) {
    /** Steps in which a point's height is found; each leaves a small share of the rest. */
    private static final int STEPS = 24;

    ChannelMetal {
        parts = List.copyOf(parts);
    }

    /** How far above the girdle line, along the stone's axis, the outer surface lies that far beside the middle; none beside the metal. */
    OptionalDouble surface(StoneLayout.Line line, double angle, double beside) {
        double height = 0;
        for (int i = 0; i < STEPS; i++) {
            OptionalDouble outer = outer(ChannelProfile.across(line, beside, height), angle);
            if (outer.isEmpty()) {
                return outer;
            }
            height += (outer.getAsDouble() - ChannelProfile.radius(line, beside, height)) / line.axisOut();
        }
        return OptionalDouble.of(height);
    }

    private OptionalDouble outer(double across, double angle) {
        return parts.stream()
                .flatMap(part -> part
                        .carved()
                        .map(solid -> Reach.of(solid, angle, across))
                        .orElseGet(() -> Reach.of(part.region(), across))
                        .stream())
                .max(Comparator.comparingDouble(reach -> reach.high().height()))
                .map(reach -> OptionalDouble.of(reach.high().height()))
                .orElse(OptionalDouble.empty());
    }

    /** The bottom of a channel that leaves a floor everywhere: its height from the girdle line along the stone's axis, negative. */
    double bottom(ChannelProfile profile, StoneLayout.Line line, double angle, double floorMm) {
        Outline outline = finger.apply(angle);
        double highest = Double.NEGATIVE_INFINITY;
        for (double beside : new double[] {-profile.half(), 0, profile.half()}) {
            double height = (innerRadius - line.girdleRadius()) / line.axisOut();
            for (int i = 0; i < STEPS; i++) {
                double wall = innerRadius
                        + SurfaceLine.inner(outline, ChannelProfile.across(line, beside, height))
                                .map(SurfaceLine::height)
                                .orElse(0.0);
                height += (wall + floorMm - ChannelProfile.radius(line, beside, height)) / line.axisOut();
            }
            highest = Math.max(highest, height);
        }
        return highest;
    }
}
