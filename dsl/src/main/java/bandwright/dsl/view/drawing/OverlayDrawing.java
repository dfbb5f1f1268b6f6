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
 * Two sections one over the other, to one scale: the first filled, the second as dashed outlines. Both lie with the middle of their
 * inner walls on one point, so that rings of different size can be compared.
 */
public final class OverlayDrawing {
    private static final int INK = 0x222222;
    private static final int FILL = 0xe9dcc3;
    private static final int FILL_EDGE = 0x8a7550;
    private static final int STONE = 0xe6f0f6;
    private static final int OVER = 0x1b4f72;
    private static final int FINGER = 0x9a5b3c;

    /** Text on paper, mm. */
    private static final double TEXT = 2.6;

    /** How far a drawn chord may leave its arc, mm of paper. */
    private static final double FLAT = 0.01;

    private final double paper;
    private final double size;
    private final double scale;
    private final List<Mark> marks = new ArrayList<>();

    private OverlayDrawing(double scale) {
        this.scale = scale;
        paper = 1 / scale;
        size = TEXT * paper;
    }

    /** @param scale millimetres of paper for one of the rings */
    public static Drawing of(String under, Section first, String over, Section second, double scale) {
        return new OverlayDrawing(scale).layOut(under, first, over, second);
    }

    private Drawing layOut(String under, Section first, String over, Section second) {
        first.parts().forEach(part -> marks.add(new Mark.Shape(part.region(), FILL, FILL_EDGE, 0.2 * paper)));
        first.stones()
                .forEach(stone -> marks.add(new Mark.Shape(Region.of(stone.outline()), STONE, FILL_EDGE, 0.2 * paper)));
        second.parts().forEach(part -> dashed(part.region()));
        second.stones().forEach(stone -> dashed(Region.of(stone.outline())));
        Bounds shown = first.bounds().with(second.bounds()).with(new Point(0, 0));
        finger(shown);
        legend(shown, under, first, over, second);
        String title = "Sections at 0 deg, one over the other";
        double middle = (shown.minX() + shown.maxX()) / 2;
        text(title, new Point(middle, shown.maxY() + 1.8 * size), 1.25 * size, StrokeText.Anchor.MIDDLE);
        Bounds all = marks.stream().map(Mark::bounds).reduce(Bounds.NONE, Bounds::with);
        double margin = 2 * paper;
        Bounds box = new Bounds(all.minX() - margin, all.minY() - margin, all.maxX() + margin, all.maxY() + margin);
        String description = "Filled: " + under + ", " + extent(first) + ". Dashed: " + over + ", " + extent(second);
        return new Drawing(title, description, box, scale, marks);
    }

    private void dashed(Region region) {
        Mark.Dash dash = new Mark.Dash(List.of(1.6 * paper, 0.9 * paper));
        for (Region.Piece piece : region.pieces()) {
            for (Outline outline : piece.outlines()) {
                List<Point> points = new ArrayList<>(outline.flattened(FLAT * paper));
                points.add(points.get(0));
                marks.add(new Mark.Stroke(points, OVER, 0.35 * paper, dash));
            }
        }
    }

    private void finger(Bounds shown) {
        double reach = 3 * paper;
        Mark.Dash dash = new Mark.Dash(List.of(3 * paper, 0.8 * paper, 0.6 * paper, 0.8 * paper));
        marks.add(new Mark.Stroke(
                List.of(new Point(shown.minX() - reach, 0), new Point(shown.maxX() + reach, 0)),
                FINGER,
                0.2 * paper,
                dash));
        marks.add(new Mark.Label(
                "finger",
                new Point(shown.minX() - reach - 0.4 * size, -0.3 * size),
                size,
                StrokeText.Anchor.END,
                false,
                FINGER));
    }

    private void legend(Bounds shown, String under, Section first, String over, Section second) {
        double left = shown.minX();
        double text = left + 3.1 * size;
        double y = shown.minY() - 2.6 * size;
        Region swatch = Region.of(Outline.rectangle(left, y - 0.2 * size, left + 2.4 * size, y + 0.9 * size));
        marks.add(new Mark.Shape(swatch, FILL, FILL_EDGE, 0.2 * paper));
        text(under + ": " + words(first), new Point(text, y), size, StrokeText.Anchor.START);
        y -= 1.7 * size;
        dashed(Region.of(Outline.rectangle(left, y - 0.2 * size, left + 2.4 * size, y + 0.9 * size)));
        text(over + ": " + words(second), new Point(text, y), size, StrokeText.Anchor.START);
        y -= 1.7 * size;
        text("scale " + SvgWriter.number(scale) + " : 1", new Point(left, y), size, StrokeText.Anchor.START);
    }

    private static String words(Section section) {
        return extent(section) + ", finger r = " + number(section.innerRadiusMm()) + " mm";
    }

    private static String extent(Section section) {
        Bounds bounds = section.bounds();
        return number(bounds.width()) + " mm across, " + number(bounds.maxY()) + " mm out";
    }

    private void text(String text, Point at, double textSize, StrokeText.Anchor anchor) {
        marks.add(new Mark.Label(text, at, textSize, anchor, false, INK));
    }

    private static String number(double value) {
        return SvgWriter.number(Math.round(value * 100) / 100.0);
    }
}
