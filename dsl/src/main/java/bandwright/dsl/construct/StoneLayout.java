// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.StoneRow;

/**
 * Where the stones of a row stand.
 *
 * @param lines one for each offset across; on a surface that changes, as its first stone stands
 * @param stepRadians angle between neighbours of a line; on a surface that changes, the mean
 * @param full whether the row goes all the way round
 * @param even whether all stones of a line stand alike
 * @param places of the stones, line by line
 * @param gaps half-way between neighbours of a line: where pins stand
 */
public record StoneLayout(
        StoneRow row,
        List<Line> lines,
        int perLine,
        double stepRadians,
        boolean full,
        boolean even,
        List<Place> places,
        List<Place> gaps) {
    private static final double TURN = 2 * StrictMath.PI;

    public StoneLayout {
        lines = List.copyOf(lines);
        places = List.copyOf(places);
        gaps = List.copyOf(gaps);
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

    /**
     * A single stone.
     *
     * @param line how it stands in the plane of the finger's axis
     * @param angle of its girdle's centre, radians
     * @param axisAround the part of its axis round the ring, where the surface rises on its way; with the line's two a unit vector
     */
    public record Place(Line line, double angle, double axisAround) {
        Place(Line line, double angle) {
            this(line, angle, 0);
        }

        /** The girdle's centre, mm. */
        public double[] centre() {
            return new double[] {
                line.girdleRadius * StrictMath.cos(angle), line.girdleRadius * StrictMath.sin(angle), line.across
            };
        }

        /** The stone's axis, a unit vector. */
        public double[] axis() {
            return vector(line.axisOut, axisAround, line.axisAcross);
        }

        /** The unit vector round the ring, square to the axis and to {@link #sideways}. */
        public double[] along() {
            double[] a = axis();
            double[] s = sideways();
            return new double[] {s[1] * a[2] - s[2] * a[1], s[2] * a[0] - s[0] * a[2], s[0] * a[1] - s[1] * a[0]};
        }

        /** The unit vector square to the axis in the plane of the finger's axis, towards the fingertip for an upright stone. */
        public double[] sideways() {
            double size = axisAround == 0 ? 1 : Math.sqrt(1 - axisAround * axisAround);
            return vector(-line.axisAcross / size, 0, line.axisOut / size);
        }

        private double[] vector(double out, double around, double across) {
            double cos = StrictMath.cos(angle);
            double sin = StrictMath.sin(angle);
            return around == 0
                    ? new double[] {out * cos, out * sin, across}
                    : new double[] {out * cos - around * sin, out * sin + around * cos, across};
        }
    }

    public int count() {
        return perLine * lines.size();
    }

    /**
     * The smallest gap between any two girdles, mm; negative if they overlap, none for a single stone. Within a line it is the
     * closed form of {@link #gap(StoneRow, Line, double)}; between lines {@link GirdleDistance} finds it.
     */
    public OptionalDouble gapMm() {
        double least = Double.POSITIVE_INFINITY;
        for (Line line : even ? lines : List.<Line>of()) {
            if (perLine > 1) {
                least = Math.min(least, gap(row, line, stepRadians));
            }
        }
        for (Place[] pair : even ? List.<Place[]>of() : neighbours()) {
            least = Math.min(least, gap(row, pair[0], pair[1]));
        }
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                least = Math.min(least, GirdleDistance.between(this, i, j));
            }
        }
        return least == Double.POSITIVE_INFINITY ? OptionalDouble.empty() : OptionalDouble.of(least);
    }

    /** Straight distance between the girdle centres of neighbours in a line, mm, where it is smallest; none for single stones. */
    public OptionalDouble pitchMm() {
        if (perLine < 2) {
            return OptionalDouble.empty();
        }
        return even
                ? lines.stream()
                        .mapToDouble(line -> 2 * line.girdleRadius * StrictMath.sin(stepRadians / 2))
                        .min()
                : neighbours().stream()
                        .mapToDouble(pair -> distance(pair[0].centre(), pair[1].centre()))
                        .min();
    }

    /** Of each gap's two stones those that are nearest each other; nothing for single stones. */
    public Optional<Place[]> nearestNeighbours() {
        return even
                ? neighbours().stream().findFirst()
                : neighbours().stream().min(Comparator.comparingDouble(pair -> gap(row, pair[0], pair[1])));
    }

    /** Half the straight distance between the stones beside a gap, mm; on an even surface that of the first line. */
    double halfWay(int gap) {
        if (even) {
            return lines.get(0).girdleRadius * StrictMath.sin(stepRadians / 2);
        }
        Place[] pair = neighbours().get(gap);
        return distance(pair[0].centre(), pair[1].centre()) / 2;
    }

    /** The two stones beside each gap. */
    public List<Place[]> neighbours() {
        List<Place[]> pairs = new ArrayList<>();
        int perLineGaps = lines.isEmpty() ? 0 : gaps.size() / lines.size();
        for (int line = 0; line < lines.size(); line++) {
            for (int k = 0; k < perLineGaps; k++) {
                pairs.add(new Place[] {places.get(line * perLine + k), places.get(line * perLine + (k + 1) % perLine)});
            }
        }
        return pairs;
    }

    private static double distance(double[] a, double[] b) {
        double x = b[0] - a[0];
        double y = b[1] - a[1];
        double z = b[2] - a[2];
        return Math.sqrt(x * x + y * y + z * z);
    }

    /**
     * Gap between two stones that need not stand alike: the distance of their centres less how far each girdle reaches along the way between
     * them. That is the gap between the two planes square to this way which part the stones; for stones that stand alike it is the closed form
     * below, else less than the true gap by a share of the second order in their difference.
     */
    static double gap(StoneRow row, Place a, Place b) {
        double[] from = a.centre();
        double[] to = b.centre();
        double distance = distance(from, to);
        if (distance == 0) {
            return -row.aroundMm();
        }
        double[] way = {(to[0] - from[0]) / distance, (to[1] - from[1]) / distance, (to[2] - from[2]) / distance};
        return distance - reach(row, a, way) - reach(row, b, way);
    }

    /** How far a girdle reaches from its centre in a direction. */
    private static double reach(StoneRow row, Place place, double[] way) {
        double[] side = place.sideways();
        double[] axis = place.axis();
        double tilted = 0;
        double upright = 0;
        for (int k = 0; k < 3; k++) {
            tilted += way[k] * side[k];
            upright += way[k] * axis[k];
        }
        double along = Math.sqrt(Math.max(0, 1 - tilted * tilted - upright * upright)) * row.aroundMm() / 2;
        double across = Math.abs(tilted) * row.widthMm() / 2;
        return cornered(row) ? along + across : Math.sqrt(along * along + across * across);
    }

    private static boolean cornered(StoneRow row) {
        return row.cut() == StoneCut.PRINCESS || row.cut() == StoneCut.BAGUETTE;
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
        double reach = cornered(row) ? Math.abs(along) + Math.abs(tilted) : Math.sqrt(along * along + tilted * tilted);
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
        return even(row, placed(row, unplaced, radians(row.around().centredDegrees()), step), count, step, true);
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
        return even(row, placed(row, unplaced, first, step), count, step, false);
    }

    private static StoneLayout even(StoneRow row, List<Line> lines, int perLine, double step, boolean full) {
        List<Place> places = new ArrayList<>();
        List<Place> gaps = new ArrayList<>();
        for (Line line : lines) {
            for (int i = 0; i < perLine; i++) {
                places.add(new Place(line, line.firstRadians + i * step));
            }
            for (int i = 0; i < (full && perLine > 1 ? perLine : perLine - 1); i++) {
                gaps.add(new Place(line, line.firstRadians + (i + 0.5) * step));
            }
        }
        return new StoneLayout(row, lines, perLine, step, full, true, places, gaps);
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
