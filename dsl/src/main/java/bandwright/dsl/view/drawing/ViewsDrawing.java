// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.view.image.StrokeText;

/**
 * Lays three views out in first-angle projection (ISO 5456-2): the view from the left stands to the right of the front, the plan below it. Each
 * is in line with the front.
 */
public final class ViewsDrawing {
    private static final int INK = 0x222222;
    private static final int STONE = 0x2f5570;
    private static final int AXIS = 0x9a5b3c;

    /** Text on paper, mm. */
    private static final double TEXT = 2.6;

    /** Within the margins of an A4 sheet, mm. */
    private static final double PAPER_WIDTH = 180;

    private static final double PAPER_HEIGHT = 230;

    /** Scales that a rule can read, the largest first. */
    private static final double[] SCALES = {5, 4, 3, 2};

    private final Views views;
    private final double scale;
    private final double paper;
    private final double size;
    private final List<Mark> marks = new ArrayList<>();

    private ViewsDrawing(Views views, double scale) {
        this.views = views;
        this.scale = scale;
        paper = 1 / scale;
        size = TEXT * paper;
    }

    /** At the largest of some plain scales at which it goes on a sheet. */
    public static Drawing of(Views views) {
        for (double scale : SCALES) {
            Drawing drawing = of(views, scale);
            if (drawing.box().width() * scale <= PAPER_WIDTH && drawing.box().height() * scale <= PAPER_HEIGHT) {
                return drawing;
            }
        }
        return of(views, 1);
    }

    /** @param scale millimetres of paper for one of the ring */
    public static Drawing of(Views views, double scale) {
        return new ViewsDrawing(views, scale).layOut();
    }

    private Drawing layOut() {
        double gap = 3 * size;
        List<Mark> front = drawn(views.front());
        Bounds frontBox = bounds(front);
        List<Mark> side = drawn(views.side());
        List<Mark> plan = drawn(views.plan());
        marks.addAll(front);
        side.forEach(mark ->
                marks.add(moved(mark, frontBox.maxX() + gap - bounds(side).minX(), 0)));
        // Below the front and, where the side's dimensions reach further down, below them too.
        double floor = Math.min(frontBox.minY(), bounds(side).minY());
        plan.forEach(mark -> marks.add(moved(mark, 0, floor - gap - bounds(plan).maxY())));
        Bounds drawn = bounds(marks);
        double y = drawn.minY() - 2 * size;
        for (String note : views.notes()) {
            text(note, new Point(drawn.minX(), y), size, StrokeText.Anchor.START);
            y -= 1.6 * size;
        }
        text(
                "first-angle projection, scale " + SvgWriter.number(scale) + " : 1",
                new Point(drawn.minX(), y),
                size,
                StrokeText.Anchor.START);
        Bounds below = bounds(marks);
        text(
                views.title(),
                new Point((below.minX() + below.maxX()) / 2, below.maxY() + 1.4 * size),
                1.25 * size,
                StrokeText.Anchor.MIDDLE);
        Bounds all = bounds(marks);
        double margin = 2 * paper;
        Bounds box = new Bounds(all.minX() - margin, all.minY() - margin, all.maxX() + margin, all.maxY() + margin);
        return new Drawing(views.title(), views.description(), box, scale, marks);
    }

    private List<Mark> drawn(Views.View view) {
        List<Mark> drawn = new ArrayList<>();
        Mark.Dash dash = new Mark.Dash(List.of(3 * paper, 0.8 * paper, 0.6 * paper, 0.8 * paper));
        view.axes().forEach(line -> drawn.add(new Mark.Stroke(line, AXIS, 0.13 * paper, dash)));
        Bounds around = view.bounds();
        List<Mark> dimensions = new ArrayList<>();
        for (Section.Direction direction : Section.Direction.values()) {
            List<Mark> lines = new DimensionMarks(direction, paper, size).draw(view.dimensions(), around);
            dimensions.addAll(lines);
            around = lines.stream().map(Mark::bounds).reduce(around, Bounds::with);
        }
        drawn.addAll(dimensions);
        // Over what leads to the dimensions.
        view.stones().forEach(line -> drawn.add(new Mark.Stroke(line, STONE, 0.18 * paper, Mark.Dash.NONE)));
        view.metal().forEach(line -> drawn.add(new Mark.Stroke(line, INK, 0.3 * paper, Mark.Dash.NONE)));
        Bounds shape = view.bounds();
        drawn.add(new Mark.Label(
                view.name(),
                new Point((shape.minX() + shape.maxX()) / 2, bounds(drawn).maxY() + size),
                size,
                StrokeText.Anchor.MIDDLE,
                false,
                INK));
        return drawn;
    }

    private void text(String text, Point at, double textSize, StrokeText.Anchor anchor) {
        marks.add(new Mark.Label(text, at, textSize, anchor, false, INK));
    }

    private static Bounds bounds(List<Mark> marks) {
        return marks.stream().map(Mark::bounds).reduce(Bounds.NONE, Bounds::with);
    }

    private static Mark moved(Mark mark, double dx, double dy) {
        if (mark instanceof Mark.Shape shape) {
            return new Mark.Shape(shape.region().translated(dx, dy), shape.fill(), shape.edge(), shape.edgeWidthMm());
        } else if (mark instanceof Mark.Stroke stroke) {
            List<Point> points =
                    stroke.points().stream().map(point -> point.plus(dx, dy)).toList();
            return new Mark.Stroke(points, stroke.colour(), stroke.widthMm(), stroke.dash());
        }
        Mark.Label label = (Mark.Label) mark;
        return new Mark.Label(
                label.text(), label.at().plus(dx, dy), label.sizeMm(), label.anchor(), label.upwards(), label.colour());
    }
}
