// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Groove;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.SizeSystem;

/**
 * The band as it is worn: thickness, outer edges, finger and size. Thickness is the least over the middle half of the finished section and its open grooves ({@link ThinPlace}); of a band that
 * changes or has arcs cut into it, where it is lowest of its stations, less its grooves; seats are left to the checks of rows. Edges are those of
 * the band's profiles; what grooves make is left out.
 */
final class BandChecks implements Check {
    /** Corners no further out than this share of the height lie on the finger. */
    private static final double INNER_SHARE = 0.1;

    /** The direction of a curve at its end is taken over this share of it. */
    private static final double END_SHARE = 1e-4;

    @Override
    public String key() {
        return "wear-thickness";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (Band band : look.ring().design().bands()) {
            findings.add(thickness(look, band));
        }
        for (Band band : look.ring().design().bands()) {
            edges(look, band).ifPresent(findings::add);
        }
        for (Band band : look.ring().design().bands()) {
            findings.add(finger(look, band));
            findings.add(size(look, band));
        }
        return findings;
    }

    private static Finding thickness(Look look, Band band) {
        double least = Double.POSITIVE_INFINITY;
        double around = 0;
        double across = 0;
        double out = Double.NaN;
        for (Band.Station station : band.stations()) {
            if (station.section().heightMm() < least) {
                least = station.section().heightMm();
                around = station.degrees();
            }
        }
        List<PartSection> parts = look.ring().sections().stream()
                .filter(part -> part.band().equals(band))
                .toList();
        List<Groove> grooves = look.ring().design().grooves().stream()
                .filter(groove -> groove.keep().isEmpty() && groove.depthMm().isPresent())
                .filter(groove -> parts.stream().anyMatch(part -> groove.from().contains(part.name())))
                .toList();
        if (parts.stream().allMatch(PartSection::isTurned)) {
            Optional<ThinPlace> thin = ThinPlace.of(parts, look.ring().design().grooves());
            if (thin.isPresent()) {
                least = thin.get().thickness();
                across = thin.get().across();
                out = thin.get().height() - band.finger().innerRadiusMm();
            }
        } else if (!grooves.isEmpty()) {
            // On arcs and changing bands all depths are taken off the lowest place: the thickness is no less than that.
            double outside = deepest(grooves, false);
            double inside = deepest(grooves, true);
            least -= outside + inside;
        }
        return look.on("wear-thickness", band.name())
                .advising(grooves.isEmpty() ? "wear-thickness.plain" : "wear-thickness")
                .at(new RingPlace(around, across, Double.isNaN(out) ? least : out))
                .measured(least);
    }

    private static double deepest(List<Groove> grooves, boolean inside) {
        return grooves.stream()
                .filter(groove -> groove.inside() == inside)
                .mapToDouble(groove -> groove.depthMm().orElse(0))
                .max()
                .orElse(0);
    }

    private static Optional<Finding> edges(Look look, Band band) {
        double sharpest = 180;
        RingPlace place = null;
        for (Band.Station station : band.stations()) {
            Outline outline = station.section().outline().counterClockwise();
            List<Curve> curves = outline.curves();
            for (int i = 0; i < curves.size(); i++) {
                Curve before = curves.get(i);
                Curve after = curves.get((i + 1) % curves.size());
                Point corner = before.end();
                double angle = inside(before, after);
                if (corner.y() > INNER_SHARE * station.section().heightMm() && angle < sharpest - 1e-6) {
                    sharpest = angle;
                    place = new RingPlace(station.degrees(), corner.x(), corner.y());
                }
            }
        }
        return place == null
                ? Optional.empty()
                : Optional.of(look.on("edge-angle", band.name()).at(place).measured(sharpest));
    }

    /** The angle of the metal between two curves, degrees; over 180 in a hollow corner. */
    private static double inside(Curve before, Curve after) {
        Point in = before.at(1 - END_SHARE);
        Point corner = before.end();
        Point out = after.at(END_SHARE);
        double ax = corner.x() - in.x();
        double ay = corner.y() - in.y();
        double bx = out.x() - corner.x();
        double by = out.y() - corner.y();
        double turn = StrictMath.atan2(ax * by - ay * bx, ax * bx + ay * by) * (180 / StrictMath.PI);
        return 180 - turn;
    }

    /** Sizes that can be worked out and that hardly a hand has: by the limit that is nearer. */
    private static Finding finger(Look look, Band band) {
        double round = band.finger().size().circumferenceMm();
        Limit least = look.limits().get("finger-size-least");
        Limit most = look.limits().get("finger-size-most");
        boolean small = least.margin(round) < most.margin(round);
        return look.on("finger-size", small ? least : most, band.name())
                .saying(small ? "finger-size.least" : "finger-size.most")
                .telling(band.finger().size().text())
                .measured(round);
    }

    /** From a width on, a band is made larger; how much, is told by its allowance. */
    private static Finding size(Look look, Band band) {
        double width = band.stations().stream()
                .mapToDouble(station -> station.section().widthMm())
                .max()
                .orElse(0);
        Limit from = look.limits().get("wide-band");
        if (width < from.value().value() - 1e-9) {
            return look.on("wide-band", from, band.name()).measured(width);
        }
        double step = SizeSystem.US.circumferenceMm(1) - SizeSystem.US.circumferenceMm(0);
        double allowed =
                (band.finger().bore().circumferenceMm() - band.finger().size().circumferenceMm()) / step;
        return look.on("wide-band", look.limits().get("wide-band-allowance"), band.name())
                .telling(Quantity.millimetres(width).toString())
                .saying(allowed == 0 ? "wide-band.none" : "wide-band")
                .measured(allowed);
    }
}
