// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.view.image.StrokeText;

/**
 * Draws the dimensions of one direction. Both directions are drawn as if they ran along a line "below": what is along and
 * what is away from the section are swapped into x and y at the end.
 */
final class DimensionMarks {
    private static final int INK = 0x333333;
    private static final int HELP = 0x8c8c8c;
    private static final int PAPER = 0xffffff;

    /** A text that stands over its line by no more than this share reads well where it is. */
    private static final double LONGER = 1.25;

    private final Section.Direction direction;
    private final double paper;
    private final double size;
    private final List<Mark> lines = new ArrayList<>();
    private final List<Mark> labels = new ArrayList<>();

    /**
     * @param paper a millimetre of paper in mm of the thing drawn
     * @param size of the text, mm of the thing drawn
     */
    DimensionMarks(Section.Direction direction, double paper, double size) {
        this.direction = direction;
        this.paper = paper;
        this.size = size;
    }

    /** The marks of all dimensions of this direction, outside of {@code around}. */
    List<Mark> draw(List<Section.Dimension> dimensions, Bounds around) {
        List<Section.Dimension> ours = dimensions.stream()
                .filter(dimension -> dimension.direction() == direction)
                .toList();
        List<DimensionRows.Span> spans = ours.stream().map(this::span).toList();
        List<Integer> rows = DimensionRows.place(spans, 0.6 * size);
        double edge = direction == Section.Direction.ACROSS ? -around.minY() : around.maxX();
        for (int i = 0; i < ours.size(); i++) {
            // A label stands on the section's side of its line; the first row keeps clear of the section by as much.
            draw(ours.get(i), edge + 2.1 * size + rows.get(i) * 1.7 * size);
        }
        List<Mark> marks = new ArrayList<>(lines);
        marks.addAll(labels);
        return marks;
    }

    private DimensionRows.Span span(Section.Dimension dimension) {
        Reach reach = reach(dimension);
        return new DimensionRows.Span(reach.low(), reach.high());
    }

    /**
     * How far a dimension's line goes.
     *
     * @param outside whether its arrows stand outside and point inwards, where between them is no room
     * @param beside whether its text too is too long and stands behind the second arrow, as in ISO 129-1
     */
    private record Reach(double from, double to, double low, double high, boolean outside, boolean beside) {}

    private Reach reach(Section.Dimension dimension) {
        double from = Math.min(along(dimension.from()), along(dimension.to()));
        double to = Math.max(along(dimension.from()), along(dimension.to()));
        double text = Mark.Label.length(dimension.label(), size);
        boolean beside = text > LONGER * (to - from);
        boolean outside = beside || to - from < 3 * arrow();
        double arrows = outside ? 2 * arrow() : 0;
        double behind = beside ? text + 0.4 * size - arrow() / 2 : 0;
        return new Reach(from, to, from - arrows, to + arrows + behind, outside, beside);
    }

    private void draw(Section.Dimension dimension, double away) {
        Reach reach = reach(dimension);
        extension(dimension.from(), away);
        extension(dimension.to(), away);
        lines.add(line(at(reach.low(), away), at(reach.high(), away)));
        arrowHead(reach.from(), away, reach.outside() ? -1 : 1);
        arrowHead(reach.to(), away, reach.outside() ? 1 : -1);
        Mark.Label label = new Mark.Label(
                dimension.label(),
                at(reach.beside() ? reach.high() : (reach.from() + reach.to()) / 2, away - 0.35 * size),
                size,
                reach.beside() ? StrokeText.Anchor.END : StrokeText.Anchor.MIDDLE,
                direction == Section.Direction.OUT,
                INK);
        labels.add(label.backed(PAPER));
        labels.add(label);
    }

    private void extension(Point point, double away) {
        double start = direction == Section.Direction.ACROSS ? -point.y() : point.x();
        Point from = at(along(point), start + 0.6 * paper);
        Point to = at(along(point), away + 0.8 * paper);
        lines.add(new Mark.Stroke(List.of(from, to), HELP, 0.1 * paper, Mark.Dash.NONE));
    }

    private void arrowHead(double tip, double away, int towards) {
        double back = tip + towards * arrow();
        Outline head =
                Outline.polygon(List.of(at(tip, away), at(back, away + arrow() / 6), at(back, away - arrow() / 6)));
        lines.add(new Mark.Shape(Region.of(head), INK, Mark.NONE, 0));
    }

    private Mark.Stroke line(Point from, Point to) {
        return new Mark.Stroke(List.of(from, to), INK, 0.13 * paper, Mark.Dash.NONE);
    }

    private double arrow() {
        return 2 * paper;
    }

    private double along(Point point) {
        return direction == Section.Direction.ACROSS ? point.x() : point.y();
    }

    private Point at(double along, double away) {
        return direction == Section.Direction.ACROSS ? new Point(along, -away) : new Point(away, along);
    }
}
