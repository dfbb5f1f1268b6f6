// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Line;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.model.Band;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.SizeSystem;

/**
 * The band as it is worn: thickness ({@link WearThickness}), outer edges, finger and size. Edges are those of
 * the band's profiles; what grooves make is left out.
 */
final class BandChecks implements Check {
    /** Corners no further out than this share of the height lie on the finger. */
    private static final double INNER_SHARE = 0.1;

    /** Steeper than 60 degrees is upright. */
    private static final double LEVEL_COSINE = 0.5;

    /** So near to straight, curves run into one another. */
    private static final double SMOOTH_DEGREES = 0.01;

    /** From here on a corner is hollow, not sharp. */
    private static final double HOLLOW_DEGREES = 180 + SMOOTH_DEGREES;

    /** A smaller rounding is felt as the corner that it rounds: common practice, no source. */
    private static final double LEAST_ROUNDING_MM = 0.05;

    @Override
    public String key() {
        return "wear-thickness";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (Band band : look.ring().design().bands()) {
            findings.add(WearThickness.of(look, band));
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

    private static Optional<Finding> edges(Look look, Band band) {
        double sharpest = HOLLOW_DEGREES;
        RingPlace place = null;
        for (Band.Station station : band.stations()) {
            Outline outline = station.section().outline().counterClockwise();
            List<Curve> curves = outline.curves().stream()
                    .filter(curve -> !(curve instanceof Arc arc && arc.radius() < LEAST_ROUNDING_MM - 1e-9))
                    .toList();
            for (int i = 0; i < curves.size(); i++) {
                Curve before = curves.get(i);
                Curve after = curves.get((i + 1) % curves.size());
                Point corner = before.end();
                double angle = inside(before, after);
                boolean atFinger = corner.y() <= INNER_SHARE * station.section().heightMm() || isInner(before, after);
                if (!atFinger && angle < sharpest - 1e-6) {
                    sharpest = angle;
                    place = new RingPlace(station.degrees(), corner.x(), corner.y());
                }
            }
        }
        return place == null
                ? Optional.empty()
                : Optional.of(look.on("edge-angle", band.name()).at(place).measured(sharpest));
    }

    /** Where an inner curve, which faces the finger, meets an upright side: however high it has risen there, it lies at the finger. */
    private static boolean isInner(Curve before, Curve after) {
        return (facesFinger(before.endHeading()) && isUpright(after))
                || (isUpright(before) && facesFinger(after.startHeading()));
    }

    /** Outlines go round counter-clockwise: what faces the finger runs to the fingertip's side. */
    private static boolean facesFinger(double heading) {
        return StrictMath.cos(heading) > LEVEL_COSINE;
    }

    private static boolean isUpright(Curve curve) {
        return curve instanceof Line line && Math.abs(StrictMath.cos(line.startHeading())) < LEVEL_COSINE;
    }

    /** The angle of the metal between two curves, degrees; over 180 in a hollow corner. */
    private static double inside(Curve before, Curve after) {
        double turn = after.startHeading() - before.endHeading();
        double round = 2 * StrictMath.PI;
        double nearest = turn - round * StrictMath.rint(turn / round);
        double angle = 180 - nearest * (180 / StrictMath.PI);
        return Math.abs(angle - 180) < SMOOTH_DEGREES ? 180 : angle;
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
