// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.quantity.Quantity;

/**
 * Whether a kept ring gets into its place. A closed ring passes, along the finger, only what is no wider than its inner diameter (a ring let into the
 * inner wall: no narrower than its outer one), at each place across, its own floor with it; on the easier side if none is said. Collars go on last and
 * other kept parts are not there yet, but for those it is let into. An arc goes in along the radius, up to half the round.
 */
final class LetInChecks implements Check {
    /** Heights that differ by less are the same: shown diameters are the same to a thousandth. */
    private static final double SAME_MM = 2.5e-4;

    @Override
    public String key() {
        return "let-in";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (Groove groove : look.ring().design().grooves()) {
            if (groove.keep().isPresent()) {
                findings.add(way(look, groove, groove.keep().get().part()));
                if (groove.letIn().orElse(null) instanceof Groove.LetInHalves halves) {
                    seams(look, groove.keep().get().part(), halves.degrees(), findings);
                }
            }
        }
        return findings;
    }

    private Finding way(Look look, Groove groove, String kept) {
        Groove.LetIn letIn = groove.letIn().orElse(null);
        if (letIn instanceof Groove.LetInHalves) {
            return groove.inside()
                    ? halvesInside(look, kept)
                    : Look.without(key(), Severity.FAULT, kept).holds(true);
        } else if (letIn instanceof Groove.LetInCast) {
            return PouredIn.finding(look, groove, kept);
        } else if (!groove.around().isFull()) {
            return arc(look, groove, kept);
        }
        PartSection ring = look.ring().section(kept);
        List<PartSection> standing = standing(look.ring(), ring, groove);
        if (!ring.isTurned() || !standing.stream().allMatch(PartSection::isTurned)) {
            return Look.open(key(), "the parts change on their way round", kept);
        }
        double asked = look.limits().get(key()).value().value();
        SlidingRing fingertip = SlidingRing.of(ring, standing, true, groove.inside(), asked / 2);
        SlidingRing hand = SlidingRing.of(ring, standing, false, groove.inside(), asked / 2);
        boolean toFingertip = letIn instanceof Groove.LetInFrom from
                ? from.fingertip()
                : fingertip.free() || (!hand.free() && fingertip.margin() >= hand.margin());
        SlidingRing way = toFingertip ? fingertip : hand;
        // The same floor twice, on outlines made of chords.
        double margin = Math.abs(way.margin()) < SAME_MM ? 0 : 2 * way.margin();
        Bounds own = ring.region().bounds();
        Look.Builder finding = look.on(key(), kept)
                .at(
                        Double.isFinite(way.margin())
                                ? new RingPlace(
                                        0,
                                        toFingertip ? own.maxX() : own.minX(),
                                        way.passing() - ring.band().finger().innerRadiusMm())
                                : null)
                .saying(groove.inside() ? "let-in.inside" : key())
                .advising(letIn == null ? key() : "let-in.said")
                .exact();
        if (way.free() && margin >= 0) {
            return finding.holds(true);
        }
        Quantity against = Quantity.millimetres(2 * way.shoulder());
        return finding.held(
                Quantity.millimetres(2 * way.passing()),
                against,
                (groove.inside() ? "at most " : "at least ") + against,
                margin);
    }

    /** A half is as long from end to end as the ring is wide, and must come through the bore. */
    private Finding halvesInside(Look look, String kept) {
        Bounds own = look.ring().bounds(kept);
        double bore = look.ring().section(kept).band().finger().innerRadiusMm();
        Quantity against = Quantity.millimetres(2 * bore);
        return look.on(key(), kept)
                .saying("let-in.inside")
                .advising("let-in.inside.halves")
                .exact()
                .held(Quantity.millimetres(2 * own.maxY()), against, "at most " + against, 2 * (bore - own.maxY()));
    }

    /** The ends of an arc are radial, so one let into the inner wall is longer at its floor than where it opens. */
    private Finding arcInside(Look look, Groove groove, String kept) {
        Bounds own = look.ring().bounds(kept);
        double half = Math.min(90, groove.around().degrees() / 2) * (StrictMath.PI / 180);
        double fit = groove.fitMm();
        double length = 2 * own.maxY() * StrictMath.sin(half - fit / own.maxY());
        double opening = 2 * own.minY() * StrictMath.sin(half);
        Quantity against = Quantity.millimetres(opening);
        return look.on(key(), kept)
                .saying("let-in.arc.inside")
                .advising("let-in.arc.inside")
                .exact()
                .held(Quantity.millimetres(length), against, "at most " + against, opening - length);
    }

    /** An arc goes in along the radius, or along the finger over a level floor once its collar is off. */
    private Finding arc(Look look, Groove groove, String kept) {
        if (groove.letIn().isPresent()) {
            boolean level = groove.floor().isEmpty()
                    && !groove.inside()
                    && look.ring().section(kept).band().stations().size() == 1;
            return level
                    ? Look.without(key(), Severity.FAULT, kept).holds(true)
                    : Look.open(key(), "an arc along the finger is looked at over a level floor alone", kept);
        }
        if (groove.inside()) {
            return arcInside(look, groove, kept);
        }
        return look.on(key(), look.limits().get("let-in-arc"), kept)
                .saying("let-in.arc")
                .exact()
                .measured(groove.around().degrees());
    }

    /**
     * Parts of the same band that are in place before the ring is let in: those it is let into, also where they are kept themselves, and, unless these
     * go in later with the ring in them, all that are not kept. What a groove right through leaves is put on from both sides.
     */
    private static List<PartSection> standing(Ring ring, PartSection kept, Groove groove) {
        Set<String> collars = new HashSet<>();
        Set<String> later = new HashSet<>();
        for (Groove each : ring.design().grooves()) {
            each.keep().ifPresent(keep -> later.add(keep.part()));
            each.collar().ifPresent(collars::add);
        }
        Set<String> into = new HashSet<>(groove.from());
        into.addAll(groove.leaving());
        boolean inHand = !groove.from().isEmpty() && later.containsAll(groove.from());
        boolean through = groove.depthMm().isEmpty();
        return ring.sections().stream()
                .filter(part -> part.band().equals(kept.band()) && !part.name().equals(kept.name()))
                .filter(part -> !collars.contains(part.name()))
                .filter(part -> into.contains(part.name()) ? !through : !inHand && !later.contains(part.name()))
                .toList();
    }

    /** The two seams lie opposite each other, in a plane through the finger's axis. */
    private static void seams(Look look, String part, double degrees, List<Finding> findings) {
        double seam = degrees * (StrictMath.PI / 180);
        for (Prongs prongs : look.ring().design().prongs()) {
            if (!prongs.part().equals(part)) {
                continue;
            }
            double least = Double.POSITIVE_INFINITY;
            RingPlace at = null;
            for (var gap : look.ring().layout(prongs.row()).gaps()) {
                double away = gap.line().girdleRadius() * Math.abs(StrictMath.sin(gap.angle() - seam));
                if (away < least) {
                    least = away;
                    at = RingPlace.of(
                            gap, look.ring().section(part).band().finger().innerRadiusMm());
                }
            }
            if (at == null) {
                // A row of one has no pins.
                continue;
            }
            double clear = least - prongs.diameterMm() / 2;
            findings.add(look.on("seam-distance", part, prongs.name())
                    .telling(Quantity.millimetres(Math.max(0, -clear)).toString())
                    .at(at)
                    .measured(clear));
        }
    }
}
