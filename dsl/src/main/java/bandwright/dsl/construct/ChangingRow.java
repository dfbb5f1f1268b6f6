// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

import bandwright.dsl.model.StoneRow;

/**
 * A row on a surface that changes on its way round: every stone stands on the surface at its own angle, and stones follow one another by
 * the real gap between neighbours, the same from stone to stone. Parallel lines share their angles; the tightest line decides.
 */
final class ChangingRow {
    private static final double TURN = 2 * StrictMath.PI;

    /** Places known beforehand; between two of them girdles are taken to move straight while gaps are sought. */
    private static final int KNOWN = 1440;

    private static final int HALVINGS = 45;

    private final StoneRow row;
    private final List<DoubleFunction<StoneLayout.Place>> lines;
    private final double from;
    private final double to;
    private final List<List<StoneLayout.Place>> known = new ArrayList<>();

    /** @param lines for each line of the row the stone that would stand at an angle */
    ChangingRow(StoneRow row, List<DoubleFunction<StoneLayout.Place>> lines) {
        this.row = row;
        this.lines = lines;
        double middle = row.around().centredDegrees() * (StrictMath.PI / 180);
        double arm = row.around().degrees() * (StrictMath.PI / 360);
        boolean full = row.around().isFull();
        double first = full ? middle : middle - arm;
        double last = full ? middle + TURN : middle + arm;
        for (DoubleFunction<StoneLayout.Place> line : lines) {
            List<StoneLayout.Place> places = new ArrayList<>();
            for (int i = 0; i <= KNOWN; i++) {
                places.add(line.apply(first + i * (last - first) / KNOWN));
            }
            known.add(places);
        }
        this.from = first;
        this.to = last;
    }

    StoneLayout layout() {
        return row.around().isFull() ? full() : arc();
    }

    private StoneLayout full() {
        int count = count(from, to);
        if (!(row.spacing() instanceof StoneRow.Count)) {
            // So many gaps, the last one back to the first stone.
            count -= 1;
        }
        List<Double> angles = new ArrayList<>();
        if (count < 4) {
            // Of so few each is half a ring from another: nothing to even out.
            for (int i = 0; i <= count; i++) {
                angles.add(from + i * TURN / Math.max(1, count));
            }
        } else {
            angles.addAll(spread(from, to, count));
        }
        return laid(angles, count, true);
    }

    private StoneLayout arc() {
        double half = row.aroundMm() / 2;
        double first = from + StrictMath.atan(half / radius(from));
        double last = to - StrictMath.atan(half / radius(to));
        if (last <= first) {
            return laid(List.of((from + to) / 2), 1, false);
        }
        int count = count(first, last);
        if (count < 2) {
            return laid(List.of((from + to) / 2), Math.max(0, count), false);
        }
        if (!(row.spacing() instanceof StoneRow.Exactly exactly)) {
            return laid(spread(first, last, count - 1), count, false);
        }
        double start = first;
        List<Double> angles = march(start, exactly.gapMm(), count - 1);
        for (int i = 0; i < 3; i++) {
            start += (last - angles.get(count - 1) - (start - first)) / 2;
            angles = march(start, exactly.gapMm(), count - 1);
        }
        return laid(angles, count, false);
    }

    private double radius(double angle) {
        return lines.stream()
                .mapToDouble(line -> line.apply(angle).line().girdleRadius())
                .min()
                .orElse(1);
    }

    /** How many stones stand from one angle to another, both ends taken. */
    private int count(double first, double last) {
        if (row.spacing() instanceof StoneRow.Count fixed) {
            return fixed.stones();
        }
        double gap = row.spacing() instanceof StoneRow.AtLeast least
                ? least.gapMm()
                : ((StoneRow.Exactly) row.spacing()).gapMm();
        int count = 0;
        for (double angle = first; angle <= last + 1e-9; angle = next(angle, gap)) {
            count++;
        }
        return count;
    }

    /** Angles with so many equal gaps between two angles. */
    private List<Double> spread(double first, double last, int gaps) {
        double low = -row.aroundMm();
        double high = 2 * radius(first) * TURN / gaps;
        for (int i = 0; i < HALVINGS; i++) {
            double gap = (low + high) / 2;
            if (march(first, gap, gaps).get(gaps) < last) {
                low = gap;
            } else {
                high = gap;
            }
        }
        return march(first, high, gaps);
    }

    private List<Double> march(double first, double gap, int gaps) {
        List<Double> angles = new ArrayList<>(List.of(first));
        for (int i = 0; i < gaps; i++) {
            angles.add(next(angles.get(i), gap));
        }
        return angles;
    }

    /** The angle of the next stone that leaves a gap in every line; beyond the ring if not even the opposite one does. */
    private double next(double angle, double gap) {
        if (gap(angle, angle + StrictMath.PI) < gap) {
            return angle + 2 * TURN;
        }
        double low = angle;
        double high = angle + StrictMath.PI;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (gap(angle, middle) < gap) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private double gap(double angle, double other) {
        double least = Double.POSITIVE_INFINITY;
        for (List<StoneLayout.Place> places : known) {
            least = Math.min(least, StoneLayout.gap(row, nearly(places, angle), nearly(places, other)));
        }
        return least;
    }

    private StoneLayout.Place nearly(List<StoneLayout.Place> places, double angle) {
        double at = (angle - from) / (to - from) * KNOWN;
        if (row.around().isFull()) {
            at -= KNOWN * Math.floor(at / KNOWN);
        }
        int index = Math.max(0, Math.min(KNOWN - 1, (int) Math.floor(at)));
        double share = Math.max(0, Math.min(1, at - index));
        StoneLayout.Place a = places.get(index);
        StoneLayout.Place b = places.get(index + 1);
        StoneLayout.Line one = a.line();
        StoneLayout.Line two = b.line();
        // A stone leans off the radius by its own little angle; beyond an arc's end the last surface goes on.
        double off = mix(
                a.angle() - (from + index * (to - from) / KNOWN),
                b.angle() - (from + (index + 1) * (to - from) / KNOWN),
                share);
        return new StoneLayout.Place(
                new StoneLayout.Line(
                        mix(one.across(), two.across(), share),
                        mix(one.girdleRadius(), two.girdleRadius(), share),
                        mix(one.axisOut(), two.axisOut(), share),
                        mix(one.axisAcross(), two.axisAcross(), share),
                        0),
                angle + off,
                mix(a.axisAround(), b.axisAround(), share));
    }

    private static double mix(double a, double b, double share) {
        return a + share * (b - a);
    }

    /** @param angles of the stones; of a full row the first once more at the end */
    private StoneLayout laid(List<Double> angles, int count, boolean full) {
        List<StoneLayout.Line> first = new ArrayList<>();
        List<StoneLayout.Place> places = new ArrayList<>();
        List<StoneLayout.Place> gaps = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            boolean shifted = row.staggered() && i % 2 == 1;
            DoubleFunction<StoneLayout.Place> line = lines.get(i);
            for (int k = 0; k < count; k++) {
                places.add(line.apply(at(angles, k, shifted, full)));
            }
            for (int k = 0; k < (full && count > 1 ? count : count - 1); k++) {
                gaps.add(line.apply((at(angles, k, shifted, full) + at(angles, k + 1, shifted, full)) / 2));
            }
            if (count > 0) {
                StoneLayout.Place one = places.get(i * count);
                StoneLayout.Line own = one.line();
                first.add(new StoneLayout.Line(
                        own.across(), own.girdleRadius(), own.axisOut(), own.axisAcross(), one.angle()));
            }
        }
        double step = count > 1 ? (angles.get(angles.size() - 1) - angles.get(0)) / (angles.size() - 1) : TURN;
        return new StoneLayout(row, first, count, step, full, false, places, gaps);
    }

    /** Of a staggered line the stones stand half-way to the next of the others. */
    private static double at(List<Double> angles, int k, boolean shifted, boolean full) {
        int last = angles.size() - 1;
        double own = k <= last || last == 0 ? angles.get(Math.min(k, last)) : angles.get(k - last) + TURN;
        if (!shifted || last == 0) {
            return own;
        }
        double next = k < last
                ? angles.get(k + 1)
                : full ? angles.get(k - last + 1) + TURN : own + angles.get(last) - angles.get(last - 1);
        return (own + next) / 2;
    }
}
