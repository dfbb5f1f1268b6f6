// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.construct.Girdle;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.material.BrilliantProportions;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;

/**
 * What is found about the pins of one row, as cast: where they stand at the girdles; {@link TipFindings} tells how high. They are to reach the smallest stone of the parcel, and
 * the largest cuts the deepest notch.
 */
final class PinFindings {
    /** The sizes of stone, mm, that the two limits of a pin's diameter are told for. */
    private static final double SMALL_MM = 1.3;

    private static final double LARGE_MM = 6.5;

    private final Look look;
    private final Prongs prongs;
    private final StoneLayout layout;
    private final StoneRow row;
    /** Of the smallest and of the largest stone of the parcel. */
    private final Girdle smallest;

    private final Girdle largest;
    private final double inner;

    /** How far a pin covers the smallest stone's girdle at the least and the largest at the most, and another row's, mm. */
    private double least = Double.POSITIVE_INFINITY;

    private double most = Double.NEGATIVE_INFINITY;

    /** The share of a pin that the girdles of two largest stones take, at the most. */
    private double notch;

    private double foreign = Double.NEGATIVE_INFINITY;
    private int leastGap;
    private @Nullable RingPlace leastAt;
    private @Nullable RingPlace mostAt;
    private @Nullable RingPlace notchAt;
    private @Nullable RingPlace foreignAt;

    PinFindings(Look look, Prongs prongs) {
        this.look = look;
        this.prongs = prongs;
        this.layout = look.ring().layout(prongs.row());
        this.row = layout.row();
        this.smallest = girdle(row, -1);
        this.largest = girdle(row, 1);
        this.inner = StoneChecks.inner(look.ring(), row);
        measure();
    }

    /** @param side -1 for the smallest stone of the parcel, 1 for the largest */
    private static Girdle girdle(StoneRow row, int side) {
        double more = side * row.toleranceMm() / 2;
        return new Girdle(row.cut(), row.widthMm() / 2 + more, row.aroundMm() / 2 + more);
    }

    private void measure() {
        List<StoneLayout.Place[]> pairs = layout.neighbours();
        int perLine = layout.gaps().size() / layout.lines().size();
        for (int gap = 0; gap < layout.gaps().size(); gap++) {
            // Where all stand alike round the whole ring, the first of each line tells.
            boolean alike = layout.even() && layout.full() && gap % perLine > 0;
            if (!alike) {
                double across = look.ring().pinAcross(prongs, layout.even() ? 0 : gap);
                for (double off : prongs.perGap() == 1 ? new double[] {0} : new double[] {-across, across}) {
                    pin(gap, pin(layout.gaps().get(gap), off), pairs.get(gap));
                }
            }
        }
    }

    /** Where a pin's axis comes through the girdles' level, mm. */
    private static double[] pin(StoneLayout.Place gap, double off) {
        double[] point = gap.centre();
        double[] side = gap.sideways();
        for (int k = 0; k < 3; k++) {
            point[k] += off * side[k];
        }
        return point;
    }

    private void pin(int gap, double[] point, StoneLayout.Place[] own) {
        RingPlace at = RingPlace.of(point[0], point[1], point[2], inner);
        for (StoneLayout.Place stone : own) {
            double reach = cover(point, stone, smallest);
            if (reach < least) {
                least = reach;
                leastAt = at;
                leastGap = gap;
            }
            double cover = cover(point, stone, largest);
            if (cover > most) {
                most = cover;
                mostAt = at;
            }
        }
        PinNotch cut = new PinNotch(
                prongs.diameterMm() / 2,
                cover(point, own[0], largest),
                cover(point, own[1], largest),
                between(layout.gaps().get(gap), point, own));
        if (notchAt == null || cut.share() > notch) {
            notch = cut.share();
            notchAt = at;
        }
        for (StoneRow other : look.ring().design().stoneRows()) {
            Girdle outline = girdle(other, 1);
            double near = Math.max(other.widthMm(), other.aroundMm()) + prongs.diameterMm();
            for (StoneLayout.Place stone : look.ring().layout(other.name()).places()) {
                if (!stone.equals(own[0]) && !stone.equals(own[1]) && distance(point, stone) < near) {
                    double cover = cover(point, stone, outline);
                    if (cover > foreign) {
                        foreign = cover;
                        foreignAt = at;
                    }
                }
            }
        }
    }

    /** The angle between the ways from a pin to its two stones, seen along the pin, radians. */
    private static double between(StoneLayout.Place gap, double[] pin, StoneLayout.Place[] own) {
        double turn = Math.abs(way(gap, pin, own[0]) - way(gap, pin, own[1]));
        return Math.min(turn, 2 * StrictMath.PI - turn);
    }

    private static double way(StoneLayout.Place gap, double[] pin, StoneLayout.Place stone) {
        double[] centre = stone.centre();
        double[] side = gap.sideways();
        double[] along = gap.along();
        double x = 0;
        double y = 0;
        for (int k = 0; k < 3; k++) {
            x += (centre[k] - pin[k]) * side[k];
            y += (centre[k] - pin[k]) * along[k];
        }
        return StrictMath.atan2(y, x);
    }

    private static double distance(double[] point, StoneLayout.Place stone) {
        double[] centre = stone.centre();
        double x = point[0] - centre[0];
        double y = point[1] - centre[1];
        double z = point[2] - centre[2];
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** How far a pin covers a girdle, seen along the stone's axis; negative if it stands beside it. */
    private double cover(double[] point, StoneLayout.Place stone, Girdle outline) {
        double[] centre = stone.centre();
        double[] side = stone.sideways();
        double[] along = stone.along();
        double x = 0;
        double y = 0;
        for (int k = 0; k < 3; k++) {
            x += (point[k] - centre[k]) * side[k];
            y += (point[k] - centre[k]) * along[k];
        }
        return prongs.diameterMm() / 2 - outline.distance(x, y);
    }

    List<Finding> all() {
        List<Finding> findings = new ArrayList<>();
        findings.add(diameter());
        findings.add(contact());
        boolean touching = most > 0;
        findings.add(
                touching
                        ? look.on("pin-notch", prongs.name())
                                .advising(isShared() ? "pin-notch.shared" : "pin-notch")
                                .at(notchAt)
                                .measured(notch)
                        : Look.open("pin-notch", CheckTexts.text("pin.misses"), prongs.name()));
        if (foreign > Double.NEGATIVE_INFINITY) {
            findings.add(look.on("pin-clearance", prongs.name())
                    .telling(Quantity.millimetres(Math.max(0, foreign)).toString())
                    .at(foreignAt)
                    .measured(-foreign));
        }
        if (row.cut() == StoneCut.ROUND || row.cut() == StoneCut.OVAL) {
            double crownWidth = (100 - BrilliantProportions.REFERENCE.tablePercent())
                    / 200
                    * row.size().widthMm();
            findings.add(
                    touching
                            ? look.on("pin-reach", prongs.name()).at(leastAt).measured(Math.max(0, least) / crownWidth)
                            : Look.open("pin-reach", CheckTexts.text("pin.misses"), prongs.name()));
            if (touching) {
                findings.add(look.on("pin-reach-most", prongs.name()).at(mostAt).measured(most / crownWidth));
            }
        } else {
            findings.add(Look.open("pin-reach", CheckTexts.text("crown.unknown"), prongs.name()));
        }
        findings.addAll(new TipFindings(look, prongs, least, leastAt).all());
        return findings;
    }

    /** Whether two stones take from one width of a pin: a thicker one would only be notched more. */
    private boolean isShared() {
        return notch > most / prongs.diameterMm() + 1e-6;
    }

    /**
     * Whether each pin touches its stones. Where one would not even touch them on the row's line, half-way between them, the stones
     * stand too far apart for it; otherwise it stands too far to the side.
     */
    private Finding contact() {
        String name = prongs.name();
        double between = cover(leastGap, 0);
        double gap = prongs.diameterMm() - 2 * between;
        Look.Builder finding = look.on("pin-contact", name)
                .telling(mm(Math.max(0, -least)))
                .telling(mm(gap))
                .telling(mm(prongs.diameterMm()));
        if (between < 0 || prongs.perGap() == 1) {
            finding.saying("pin-contact.apart").advising("pin-contact.apart");
        } else {
            double across = look.ring().pinAcross(prongs, layout.even() ? 0 : leastGap);
            finding.telling(mm(across)).telling(mm(widest(across)));
        }
        return finding.at(leastAt).measured(least);
    }

    /** How far a pin so far off the row's line covers the further of its two stones, mm. */
    private double cover(int gap, double off) {
        double[] point = pin(layout.gaps().get(gap), off);
        StoneLayout.Place[] own = layout.neighbours().get(gap);
        return Math.min(cover(point, own[0], smallest), cover(point, own[1], smallest));
    }

    /** How far from the row's line pins may stand and still touch, mm, rounded down to 0.01 mm. */
    private double widest(double missing) {
        double near = 0;
        double far = missing;
        while (far - near > 1e-6) {
            double middle = (near + far) / 2;
            boolean touches = Math.min(cover(leastGap, middle), cover(leastGap, -middle)) >= 0;
            near = touches ? middle : near;
            far = touches ? far : middle;
        }
        return Math.floor(near * 100) / 100;
    }

    private static String mm(double length) {
        return Quantity.millimetres(length).toString();
    }

    private Finding diameter() {
        Limit small = look.limits().get("pin-diameter-small");
        Limit large = look.limits().get("pin-diameter-large");
        double stone = row.size().widthMm();
        double share = Math.max(0, Math.min(1, (stone - SMALL_MM) / (LARGE_MM - SMALL_MM)));
        double least = small.value().value()
                + share * (large.value().value() - small.value().value());
        Limit nearer = share < 0.5 ? small : large;
        return look.on("pin-diameter", nearer.worth(least), prongs.name())
                .telling(Quantity.millimetres(stone).toString())
                .at(leastAt)
                .measured(prongs.diameterMm());
    }
}
