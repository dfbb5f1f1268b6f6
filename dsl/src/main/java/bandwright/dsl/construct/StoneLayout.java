// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.StoneRow;

/**
 * Where the stones of a row stand.
 *
 * @param lines one for each offset across
 * @param stepRadians angle between neighbours of a line
 * @param full whether the row goes all the way round
 */
public record StoneLayout(StoneRow row, List<Line> lines, int perLine, double stepRadians, boolean full) {
    private static final double TURN = 2 * StrictMath.PI;

    public StoneLayout {
        lines = List.copyOf(lines);
    }

    /**
     * One line of stones.
     *
     * @param across of the girdles' centres, mm
     * @param girdleRadius of the girdles' centres from the finger's axis, mm
     * @param axisOut out part of the stones' axis, a unit vector from culet to table
     * @param axisAcross across part of it
     * @param firstRadians angle of the first stone
     */
    public record Line(double across, double girdleRadius, double axisOut, double axisAcross, double firstRadians) {}

    /** A single stone: its line and its angle in radians. */
    public record Place(Line line, double angle) {}

    public int count() {
        return perLine * lines.size();
    }

    public List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (Line line : lines) {
            for (int i = 0; i < perLine; i++) {
                places.add(new Place(line, line.firstRadians + i * stepRadians));
            }
        }
        return places;
    }

    /** Angles half-way between neighbours of a line: where pins stand. */
    public List<Place> gaps() {
        List<Place> gaps = new ArrayList<>();
        for (Line line : lines) {
            for (int i = 0; i < (full && perLine > 1 ? perLine : perLine - 1); i++) {
                gaps.add(new Place(line, line.firstRadians + (i + 0.5) * stepRadians));
            }
        }
        return gaps;
    }

    /**
     * The smallest gap between any two girdles, mm; negative if they overlap, none for a single stone. Within a line it is the
     * closed form of {@link #gap}; between lines {@link GirdleDistance} finds it.
     */
    public OptionalDouble gapMm() {
        double least = Double.POSITIVE_INFINITY;
        for (Line line : lines) {
            if (perLine > 1) {
                least = Math.min(least, gap(row, line, stepRadians));
            }
        }
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                least = Math.min(least, GirdleDistance.between(this, lines.get(i), lines.get(j)));
            }
        }
        return least == Double.POSITIVE_INFINITY ? OptionalDouble.empty() : OptionalDouble.of(least);
    }

    /** Straight distance between the girdle centres of neighbours in a line, mm, where it is smallest; none for single stones. */
    public OptionalDouble pitchMm() {
        return perLine < 2
                ? OptionalDouble.empty()
                : lines.stream()
                        .mapToDouble(line -> 2 * line.girdleRadius * StrictMath.sin(stepRadians / 2))
                        .min();
    }

    /**
     * Gap between two neighbours' girdles, closed form: by symmetry both come nearest to the plane half-way between them. Its
     * distance from a girdle's centre is r·sin(α/2), and the girdle reaches towards it by its extent along the plane's normal,
     * which is half the stone's size, tilted with its axis: for a round stone standing upright ½d·cos(α/2).
     */
    static double gap(StoneRow row, Line line, double step) {
        double sine = StrictMath.sin(step / 2);
        double cosine = StrictMath.cos(step / 2);
        double along = row.aroundMm() / 2 * cosine;
        double tilted = row.widthMm() / 2 * sine * line.axisAcross;
        boolean cornered = row.cut() == StoneCut.PRINCESS || row.cut() == StoneCut.BAGUETTE;
        double reach = cornered ? Math.abs(along) + Math.abs(tilted) : Math.sqrt(along * along + tilted * tilted);
        return 2 * (line.girdleRadius * sine - reach);
    }

    /**
     * The angle between neighbours at which the gap is the given one. The gap grows with the angle: halving finds it. More than a
     * full turn if not even two stones leave that gap.
     */
    static double stepFor(StoneRow row, Line line, double gapMm) {
        if (gap(row, line, StrictMath.PI) < gapMm) {
            return 2 * TURN;
        }
        double low = 0;
        double high = StrictMath.PI;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            if (gap(row, line, middle) < gapMm) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    static StoneLayout lay(StoneRow row, List<Line> unplaced) {
        return row.around().isFull() ? full(row, unplaced) : arc(row, unplaced);
    }

    private static StoneLayout full(StoneRow row, List<Line> unplaced) {
        int count;
        if (row.spacing() instanceof StoneRow.Count fixed) {
            count = fixed.stones();
        } else {
            double gap = row.spacing() instanceof StoneRow.AtLeast least
                    ? least.gapMm()
                    : ((StoneRow.Exactly) row.spacing()).gapMm();
            double step = unplaced.stream()
                    .mapToDouble(line -> stepFor(row, line, gap))
                    .max()
                    .orElse(StrictMath.PI);
            count = (int) Math.floor(TURN / step + 1e-9);
        }
        double step = TURN / Math.max(1, count);
        return new StoneLayout(
                row, placed(row, unplaced, radians(row.around().centredDegrees()), step), count, step, true);
    }

    private static StoneLayout arc(StoneRow row, List<Line> unplaced) {
        double arc = radians(row.around().degrees());
        int count;
        double step;
        Line inmost = unplaced.stream()
                .min(Comparator.comparingDouble(Line::girdleRadius))
                .orElseThrow();
        double half = StrictMath.atan(row.aroundMm() / 2 / inmost.girdleRadius);
        double room = Math.max(0, arc - 2 * half);
        if (row.spacing() instanceof StoneRow.Count fixed) {
            count = fixed.stones();
            step = count > 1 ? room / (count - 1) : 0;
        } else if (row.spacing() instanceof StoneRow.AtLeast least) {
            count = 1 + (int) Math.floor(room / stepFor(row, inmost, least.gapMm()) + 1e-9);
            step = count > 1 ? room / (count - 1) : 0;
        } else {
            step = stepFor(row, inmost, ((StoneRow.Exactly) row.spacing()).gapMm());
            count = 1 + (int) Math.floor(room / step + 1e-9);
        }
        double first = radians(row.around().centredDegrees()) - step * (count - 1) / 2;
        return new StoneLayout(row, placed(row, unplaced, first, step), count, step, false);
    }

    private static List<Line> placed(StoneRow row, List<Line> unplaced, double first, double step) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < unplaced.size(); i++) {
            Line line = unplaced.get(i);
            double shift = row.staggered() && i % 2 == 1 ? step / 2 : 0;
            lines.add(new Line(line.across, line.girdleRadius, line.axisOut, line.axisAcross, first + shift));
        }
        return lines;
    }

    private static double radians(double degrees) {
        return degrees * (StrictMath.PI / 180);
    }
}
