// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.view.image.StrokeText;

/** Draws numbered signs of checks above a drawing, a line from each to its place, and what they say below it. */
final class CheckSigns {
    static final int FAILED = 0xa00000;
    static final int CLOSE = 0x7a4a00;
    private static final int PAPER = 0xffffff;
    private static final int INK = 0x222222;
    private static final int CIRCLE = 24;

    /** Radius of a dot, mm on paper. */
    private static final double DOT = 0.55;

    /** Lines of text are as long as the drawing is wide, but not shorter than this, mm on paper. */
    private static final double SHORTEST = 110;

    private final List<CheckMark> checks;
    private final double paper;
    private final double size;

    /**
     * @param paper a millimetre of paper in mm of the thing drawn
     * @param size of the text, mm of the thing drawn
     */
    CheckSigns(List<CheckMark> checks, double paper, double size) {
        this.checks = checks;
        this.paper = paper;
        this.size = size;
    }

    /** How much room the signs of a row take above it, mm of the thing drawn. */
    double height() {
        return 2.2 * size;
    }

    /**
     * Signs of some checks in a row above their places; no two of the lines that lead there cross.
     *
     * @param numbers which checks
     * @param foot the row's lower edge
     * @param moved where the drawing's origin is
     * @param labels what is written where the places are: it stays legible
     */
    List<Mark> draw(List<Integer> numbers, double foot, Point moved, List<Mark.Label> labels) {
        List<Leader> leaders = new ArrayList<>();
        for (int number : numbers) {
            leaders.add(leader(number, checks.get(number).at().plus(moved.x(), moved.y()), labels));
        }
        leaders.sort(
                Comparator.comparingDouble((Leader leader) -> leader.place.x()).thenComparing(leader -> leader.number));
        double half = 0.75 * size;
        double[] signs = signs(leaders, 2 * half + 0.5 * size);
        uncross(leaders, signs, foot);
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < signs.length; i++) {
            marks.addAll(line(leaders.get(i), new Point(signs[i], foot)));
        }
        for (int i = 0; i < signs.length; i++) {
            marks.addAll(sign(leaders.get(i).number, new Point(signs[i], foot + half), half));
        }
        return marks;
    }

    /**
     * Where a line leads.
     *
     * @param radius of the circle about the place; 0 for a dot
     */
    private record Leader(int number, Point place, double radius) {}

    /** To the place of a check or, where something is written there, to a circle about that. */
    private Leader leader(int number, Point place, List<Mark.Label> labels) {
        double dot = DOT * paper;
        return labels.stream()
                .map(Mark.Label::bounds)
                .filter(box -> place.x() + dot > box.minX()
                        && place.x() - dot < box.maxX()
                        && place.y() + dot > box.minY()
                        && place.y() - dot < box.maxY())
                .findFirst()
                .map(box -> about(number, place, box))
                .orElse(new Leader(number, place, 0));
    }

    private Leader about(int number, Point place, Bounds box) {
        Point middle = new Point((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
        double corner = middle.distanceTo(new Point(box.maxX(), box.maxY()));
        return new Leader(number, middle, Math.max(corner, middle.distanceTo(place)) + 0.2 * paper);
    }

    /** Where the signs stand: above their places, those crowded together about the middle of their places. */
    private static double[] signs(List<Leader> leaders, double step) {
        double[] signs = new double[leaders.size()];
        double right = Double.NEGATIVE_INFINITY;
        double shift = 0;
        for (int i = 0; i < signs.length; i++) {
            double x = leaders.get(i).place.x();
            signs[i] = Math.max(x, right + step);
            right = signs[i];
            shift += (signs[i] - x) / signs.length;
        }
        for (int i = 0; i < signs.length; i++) {
            signs[i] -= shift;
        }
        return signs;
    }

    /** Two lines that cross are longer together than when their signs change places, so that this comes to an end. */
    private static void uncross(List<Leader> leaders, double[] signs, double foot) {
        boolean crossed = true;
        while (crossed) {
            crossed = false;
            for (int i = 0; i < signs.length; i++) {
                for (int j = i + 1; j < signs.length; j++) {
                    Point one = new Point(signs[i], foot);
                    Point other = new Point(signs[j], foot);
                    if (cross(one, leaders.get(i).place, other, leaders.get(j).place)) {
                        Collections.swap(leaders, i, j);
                        crossed = true;
                    }
                }
            }
        }
    }

    private static boolean cross(Point a, Point b, Point c, Point d) {
        return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
    }

    /** Whether one turns left or right on the way over these points; nothing, where they lie on a line. */
    private static double turn(Point a, Point b, Point c) {
        double turn = (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
        return Math.abs(turn) < 1e-9 ? 0 : Math.signum(turn);
    }

    private List<Mark> line(Leader leader, Point sign) {
        int colour = checks.get(leader.number).failed() ? FAILED : CLOSE;
        Point place = leader.place;
        boolean free = leader.radius == 0;
        double share = free ? 0 : leader.radius / Math.max(leader.radius, sign.distanceTo(place));
        Point end = place.plus(share * (sign.x() - place.x()), share * (sign.y() - place.y()));
        return List.of(
                new Mark.Stroke(List.of(sign, end), PAPER, 0.5 * paper, Mark.Dash.NONE),
                new Mark.Stroke(List.of(sign, end), colour, 0.2 * paper, Mark.Dash.NONE),
                new Mark.Shape(
                        Region.of(circle(place, free ? DOT * paper : leader.radius)),
                        free ? colour : Mark.NONE,
                        free ? PAPER : colour,
                        0.2 * paper));
    }

    private List<Mark> sign(int number, Point middle, double half) {
        CheckMark check = checks.get(number);
        int colour = check.failed() ? FAILED : CLOSE;
        Outline edge = check.failed()
                ? Outline.rectangle(middle.x() - half, middle.y() - half, middle.x() + half, middle.y() + half)
                : circle(middle, half);
        String text = Integer.toString(number + 1);
        double letters = (text.length() > 1 ? 0.7 : 0.9) * size;
        return List.of(
                new Mark.Shape(Region.of(edge), PAPER, colour, 0.35 * paper),
                new Mark.Label(
                        text,
                        new Point(middle.x(), middle.y() - 0.3 * letters),
                        letters,
                        StrokeText.Anchor.MIDDLE,
                        false,
                        colour));
    }

    private static Outline circle(Point middle, double radius) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < CIRCLE; i++) {
            double turn = 2 * StrictMath.PI * i / CIRCLE;
            points.add(middle.plus(radius * StrictMath.cos(turn), radius * StrictMath.sin(turn)));
        }
        return Outline.polygon(points);
    }

    /** All signs with their sentences, one below the other from {@code top} down. */
    List<Mark> sentences(double left, double top, Bounds drawn) {
        List<Mark> marks = new ArrayList<>();
        double half = 0.75 * size;
        double indent = left + 3.1 * size;
        double width = Math.max(SHORTEST * paper, drawn.maxX() - indent);
        double y = top;
        for (int i = 0; i < checks.size(); i++) {
            marks.addAll(sign(i, new Point(left + half, y + 0.3 * size), half));
            for (String line : lines(checks.get(i).words(), width)) {
                marks.add(new Mark.Label(line, new Point(indent, y), size, StrokeText.Anchor.START, false, INK));
                y -= 1.6 * size;
            }
            y -= 0.5 * size;
        }
        return marks;
    }

    private List<String> lines(String text, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && Mark.Label.length(longer, size) > width) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(line);
        return lines;
    }

    /** What the signs say, for a reader who cannot see them; empty without any. */
    String description() {
        StringBuilder told = new StringBuilder();
        for (int i = 0; i < checks.size(); i++) {
            told.append(i == 0 ? ". Checks pointed at: " : "; ")
                    .append(i + 1)
                    .append(" ")
                    .append(checks.get(i).words());
        }
        return told.toString();
    }
}
