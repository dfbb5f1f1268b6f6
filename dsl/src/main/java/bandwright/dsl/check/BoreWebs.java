// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * Metal between any two bores of one row or of two, from the surface to the finger, where bores that lean towards each other are nearest. A bore is the
 * hull of its upper part and its cone, and its hole, which goes on to the finger on its deepest side. The bevel at the finger is left out.
 */
final class BoreWebs {
    /** Below this a difference to the closed form at the girdles is that of the bodies' distance. */
    private static final double SAME_MM = 2e-3;

    /** Bores of two rows farther apart are not told. */
    private static final double NEAR_MM = 0.5;

    private BoreWebs() {}

    /** The bores of one row; nothing for a single one. */
    static List<Finding> within(Look look, Seats seats, Ring ring, boolean bench) {
        StoneLayout layout = ring.layout(seats.row());
        OptionalDouble gap = layout.gapMm();
        if (gap.isEmpty()) {
            return List.of();
        }
        double inner = StoneChecks.inner(ring, layout.row());
        double web = gap.getAsDouble() - 2 * seats.clearanceMm();
        boolean alike = layout.even() && layout.full();
        StonePairs pairs = new StonePairs();
        search(bores(ring, seats), 0, i -> !alike || i % layout.perLine() == 0, pairs, true);
        boolean deeper = !pairs.isEmpty() && pairs.least() < Math.max(0, web) - SAME_MM;
        RingPlace at = deeper ? pairs.place(inner) : StoneChecks.nearest(layout).place(inner);
        return List.of(web(look, bench, deeper ? pairs.least() : web, at, seats.row()));
    }

    /** @param left what stands between the bores, mm; below 0 so far they are in each other */
    private static Finding web(Look look, boolean bench, double left, @Nullable RingPlace at, String... rows) {
        return look.on(key(bench), rows)
                .saying(left > 0 ? key(bench) : key(bench) + ".joined")
                .telling("between")
                .at(at)
                .measured(left);
    }

    /** The bores of every two rows of a band that come near each other. */
    static List<Finding> betweenRows(Look look) {
        Ring ring = look.ring();
        List<Seats> all = ring.design().seats().stream()
                .filter(seats -> seats.channel().isEmpty() && seats.holeMm() > 0)
                .toList();
        List<String> cast = look.pattern().design().seats().stream()
                .filter(seats -> !seats.atBench())
                .map(Seats::name)
                .toList();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                Seats one = all.get(i);
                Seats other = all.get(j);
                StoneRow first = ring.layout(one.row()).row();
                StoneRow second = ring.layout(other.row()).row();
                boolean oneBand = ring.section(first.part())
                        .band()
                        .equals(ring.section(second.part()).band());
                if (oneBand && !one.row().equals(other.row())) {
                    List<Bore> bores = new ArrayList<>(bores(ring, one));
                    int border = bores.size();
                    bores.addAll(bores(ring, other));
                    StonePairs pairs = new StonePairs();
                    search(bores, border, bore -> bore < border, pairs, false);
                    if (pairs.least() <= NEAR_MM) {
                        boolean bench = !cast.contains(one.name()) || !cast.contains(other.name());
                        RingPlace at = pairs.place(StoneChecks.inner(ring, first));
                        findings.add(web(look, bench, pairs.least(), at, one.row(), other.row()));
                    }
                }
            }
        }
        return findings;
    }

    private static String key(boolean bench) {
        return bench ? "bore-web" : "bore-skin";
    }

    /** @param from the first of those that each is held against */
    private static void search(List<Bore> bores, int from, IntPredicate asks, StonePairs pairs, boolean own) {
        double widest = 0;
        for (Bore bore : bores) {
            widest = Math.max(widest, bore.radius);
        }
        Nearby nearby = new Nearby(2 * widest + NEAR_MM);
        for (int i = from; i < bores.size(); i++) {
            nearby.add(i, bores.get(i).top(), bores.get(i).bottom());
        }
        for (int i = 0; i < bores.size(); i++) {
            if (asks.test(i)) {
                for (int j : nearby.to(bores.get(i).top(), bores.get(i).bottom())) {
                    // Where all ask, each pair is looked at once.
                    if (!own || (j != i && (j > i || !asks.test(j)))) {
                        pair(bores.get(i), bores.get(j), pairs);
                    }
                }
            }
        }
    }

    private static void pair(Bore one, Bore other, StonePairs pairs) {
        pairs.add(one.seat, other.seat);
        pairs.add(one.hole, other.hole);
        pairs.add(one.seat, other.hole);
        pairs.add(one.hole, other.seat);
    }

    /** @param end how deep the hole goes below the girdle, mm */
    private record Bore(StoneBody seat, StoneBody hole, double radius, double end) {
        double[] top() {
            return along(seat.place(), seat.row().sinkMm());
        }

        double[] bottom() {
            return along(seat.place(), -end);
        }
    }

    private static List<Bore> bores(Ring ring, Seats seats) {
        StoneLayout layout = ring.layout(seats.row());
        StoneRow row = layout.row();
        double inner = StoneChecks.inner(ring, row);
        double clearance = seats.clearanceMm();
        double hole = seats.holeMm() / 2;
        double cone = ring.coneMm(seats);
        double radius = Math.max(row.widthMm(), row.aroundMm()) / 2 + clearance;
        List<Bore> bores = new ArrayList<>();
        for (StoneLayout.Place place : layout.places()) {
            StoneLayout.Line line = place.line();
            double out = Math.max(line.axisOut(), 0.1);
            double lean = Math.abs(line.axisAcross()) / out;
            double finger = (line.girdleRadius() - inner) / out + hole * lean;
            double end = Math.max(cone, finger);
            StoneBody seat = new StoneBody(
                    place,
                    row,
                    List.of(
                            new StoneBody.Level(row.sinkMm(), 1, clearance),
                            new StoneBody.Level(0, 1, clearance),
                            new StoneBody.Level(-cone, 0, hole)));
            StoneBody through = new StoneBody(
                    place,
                    row,
                    List.of(new StoneBody.Level(-Math.min(cone, end), 0, hole), new StoneBody.Level(-end, 0, hole)));
            bores.add(new Bore(seat, through, radius, end));
        }
        return bores;
    }

    private static double[] along(StoneLayout.Place place, double height) {
        double[] point = place.centre();
        double[] axis = place.axis();
        for (int k = 0; k < 3; k++) {
            point[k] += height * axis[k];
        }
        return point;
    }
}
