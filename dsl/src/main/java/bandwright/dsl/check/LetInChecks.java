// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.quantity.Quantity;

/**
 * Whether a kept ring gets into its place. A closed ring passes, along the finger, only what is no wider than its inner diameter (a ring let into the
 * inner wall: no narrower than its outer one); the shoulders are those of the parts that stay in place, on the easier side if none is said. Collars go
 * on last and other kept parts are not there yet. An arc goes in along the radius, up to half the round.
 */
final class LetInChecks implements Check {
    /** Beyond every ring. */
    private static final double FAR_MM = 4000;

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
        if (groove.letIn().orElse(null) instanceof Groove.LetInHalves
                || groove.letIn().orElse(null) instanceof Groove.LetInCast) {
            return Look.without(key(), Severity.FAULT, kept).holds(true);
        } else if (!groove.around().isFull()) {
            return look.on(key(), look.limits().get("let-in-arc"), kept)
                    .saying("let-in.arc")
                    .exact()
                    .measured(groove.around().degrees());
        }
        PartSection ring = look.ring().section(kept);
        List<PartSection> standing = standing(look.ring(), ring);
        if (!ring.isTurned() || !standing.stream().allMatch(PartSection::isTurned)) {
            return Look.open(key(), "the parts change on their way round", kept);
        }
        Bounds own = ring.region().bounds();
        double fingertip = shoulder(standing, own.maxX(), FAR_MM, groove.inside());
        double hand = shoulder(standing, -FAR_MM, own.minX(), groove.inside());
        double easier = groove.inside() ? Math.max(fingertip, hand) : Math.min(fingertip, hand);
        double shoulder = groove.letIn().orElse(null) instanceof Groove.LetInFrom from
                ? from.fingertip() ? fingertip : hand
                : easier;
        double asked = look.limits().get(key()).value().value();
        double passing = groove.inside() ? 2 * own.maxY() : 2 * own.minY();
        boolean free = groove.inside() ? shoulder >= FAR_MM : shoulder <= 0;
        double margin = groove.inside() ? 2 * shoulder - passing - asked : passing - 2 * shoulder - asked;
        Look.Builder finding = look.on(key(), kept)
                .at(new RingPlace(
                        0,
                        shoulder == fingertip ? own.maxX() : own.minX(),
                        (groove.inside() ? own.maxY() : own.minY())
                                - ring.band().finger().innerRadiusMm()))
                .saying(groove.inside() ? "let-in.inside" : key())
                .exact();
        if (free) {
            return finding.holds(true);
        }
        Quantity against = Quantity.millimetres(2 * shoulder);
        return finding.held(
                Quantity.millimetres(passing),
                against,
                (groove.inside() ? "at most " : "at least ") + against,
                // The same floor twice, worked out in two ways.
                Math.abs(margin) < 1e-6 ? 0 : margin);
    }

    /** Parts of the same band that are in place before anything is let in. */
    private static List<PartSection> standing(Ring ring, PartSection kept) {
        Set<String> later = new HashSet<>();
        for (Groove groove : ring.design().grooves()) {
            groove.keep().ifPresent(keep -> later.add(keep.part()));
            if (groove.letIn().orElse(null) instanceof Groove.LetInFrom from) {
                later.add(from.collar());
            }
        }
        return ring.sections().stream()
                .filter(part -> part.band().equals(kept.band()) && !later.contains(part.name()))
                .toList();
    }

    /** The largest radius between two places across (inside: the smallest), mm; 0 (inside: beyond every ring) where nothing is. */
    private static double shoulder(List<PartSection> parts, double from, double to, boolean inside) {
        Region strip = Region.of(Outline.rectangle(from, -FAR_MM, to, FAR_MM));
        double shoulder = inside ? FAR_MM : 0;
        for (PartSection part : parts) {
            Region beside = RegionBoolean.intersection(part.region(), strip);
            if (!beside.isEmpty()) {
                Bounds bounds = beside.bounds();
                shoulder = inside ? Math.min(shoulder, bounds.minY()) : Math.max(shoulder, bounds.maxY());
            }
        }
        return shoulder;
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
            double clear = least - prongs.diameterMm() / 2;
            findings.add(look.on("seam-distance", part, prongs.name())
                    .telling(Quantity.millimetres(Math.max(0, -clear)).toString())
                    .at(at)
                    .measured(clear));
        }
    }
}
