// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.view.image.StrokeText;

/** Draws numbered signs of checks above a drawing, a line from each to its place, and what they say below it. */
final class CheckSigns {
    private static final int FAILED = 0xa00000;
    private static final int CLOSE = 0x7a4a00;
    private static final int PAPER = 0xffffff;
    private static final int INK = 0x222222;
    private static final int CIRCLE = 24;

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
     * Signs of some checks in a row, in the order in which their places lie, so that no two lines cross far from their places.
     *
     * @param numbers which checks
     * @param foot the row's lower edge
     * @param moved where the drawing's origin is
     */
    List<Mark> draw(List<Integer> numbers, double foot, Point moved) {
        List<Integer> sorted = new ArrayList<>(numbers);
        sorted.sort(Comparator.comparingDouble(
                        (Integer number) -> checks.get(number).at().x())
                .thenComparing(number -> number));
        double half = 0.75 * size;
        double step = 2 * half + 0.5 * size;
        double[] places = new double[sorted.size()];
        double right = Double.NEGATIVE_INFINITY;
        double shift = 0;
        for (int i = 0; i < places.length; i++) {
            double x = checks.get(sorted.get(i)).at().x() + moved.x();
            places[i] = Math.max(x, right + step);
            right = places[i];
            shift += (places[i] - x) / places.length;
        }
        List<Mark> marks = new ArrayList<>();
        List<Mark> signs = new ArrayList<>();
        for (int i = 0; i < places.length; i++) {
            CheckMark check = checks.get(sorted.get(i));
            int colour = check.failed() ? FAILED : CLOSE;
            Point place = check.at().plus(moved.x(), moved.y());
            // Those crowded together stand about the middle of their places.
            Point sign = new Point(places[i] - shift, foot + half);
            marks.add(new Mark.Stroke(List.of(sign, place), PAPER, 0.5 * paper, Mark.Dash.NONE));
            marks.add(new Mark.Stroke(List.of(sign, place), colour, 0.2 * paper, Mark.Dash.NONE));
            marks.add(new Mark.Shape(Region.of(circle(place, 0.55 * paper)), colour, PAPER, 0.2 * paper));
            signs.addAll(sign(sorted.get(i), sign, half));
        }
        marks.addAll(signs);
        return marks;
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
