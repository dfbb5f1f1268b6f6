// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.material.LinearColour;
import bandwright.dsl.view.image.Srgb;
import bandwright.dsl.view.image.StrokeText;

/** Lays a section out as a drawing: the title above, dimensions below and to the right, the legend at the bottom. */
public final class SectionDrawing {
    private static final int INK = 0x222222;
    private static final int PAPER = 0xffffff;
    private static final int FINGER = 0x9a5b3c;
    private static final int STONE = 0xe6f0f6;
    private static final int STONE_EDGE = 0x2f5570;
    private static final int PIN = 0xf4f1ec;
    private static final double[] HATCH_DEGREES = {45, 135, 60, 120, 30, 150};

    /** Text on paper, mm. */
    private static final double TEXT = 2.6;

    private final Section section;
    private final CheckSigns checks;
    private final int checked;
    private final double scale;
    private final double paper;
    private final double size;
    private final List<Mark> marks = new ArrayList<>();

    private SectionDrawing(Section section, List<CheckMark> checks, double scale) {
        this.section = section;
        this.scale = scale;
        paper = 1 / scale;
        size = TEXT * paper;
        this.checks = new CheckSigns(checks, paper, size);
        checked = checks.size();
    }

    /**
     * @param scale millimetres of paper for one of the ring: 10 for 10 : 1, 1 for true size
     */
    public static Drawing of(Section section, double scale) {
        return of(section, List.of(), scale);
    }

    /** As {@link #of(Section, double)}, with checks pointed at. */
    public static Drawing of(Section section, List<CheckMark> checks, double scale) {
        return new SectionDrawing(section, checks, scale).layOut();
    }

    private Drawing layOut() {
        Bounds shown = section.bounds().with(new Point(0, 0));
        // Pins stand behind the cut: metal and stones hide them.
        section.pins().forEach(pin -> marks.add(silhouette(pin, PIN, INK)));
        for (int i = 0; i < section.parts().size(); i++) {
            Section.Part part = section.parts().get(i);
            part(part.region(), part.colour(), i);
        }
        section.stones().forEach(stone -> marks.add(silhouette(stone, STONE, STONE_EDGE)));
        // The columns stand clear of the rows, whose labels may be wider than the section.
        List<Mark> dimensions = new ArrayList<>();
        Bounds around = shown;
        for (Section.Direction direction : Section.Direction.values()) {
            List<Mark> drawn = new DimensionMarks(direction, paper, size).draw(section.dimensions(), around);
            dimensions.addAll(drawn);
            around = drawn.stream().map(Mark::bounds).reduce(around, Bounds::with);
        }
        if (checked > 0) {
            List<Integer> all = IntStream.range(0, checked).boxed().toList();
            double foot = bounds().with(around).maxY() + size;
            marks.addAll(checks.draw(all, foot, new Point(0, 0), List.of()));
        }
        // Over the lines to places of checks, so that all texts stay legible.
        finger(shown);
        marks.addAll(dimensions);
        Bounds drawn = bounds();
        double below = legend(drawn.minX(), drawn.minY() - 1.6 * size);
        marks.addAll(checks.sentences(drawn.minX(), below - 2 * size, drawn));
        double middle = (shown.minX() + shown.maxX()) / 2;
        text(section.title(), new Point(middle, drawn.maxY() + 1.4 * size), 1.25 * size, StrokeText.Anchor.MIDDLE);
        Bounds all = bounds();
        double margin = 2 * paper;
        Bounds box = new Bounds(all.minX() - margin, all.minY() - margin, all.maxX() + margin, all.maxY() + margin);
        return new Drawing(section.title(), section.description() + checks.description(), box, scale, marks);
    }

    private Bounds bounds() {
        return marks.stream().map(Mark::bounds).reduce(Bounds.NONE, Bounds::with);
    }

    private void part(Region region, LinearColour colour, int number) {
        marks.add(new Mark.Shape(region, tint(colour), Mark.NONE, 0));
        double angle = Math.toRadians(HATCH_DEGREES[number % HATCH_DEGREES.length]);
        for (List<Point> line : Hatching.lines(region, angle, 1.5 * paper, 0.02 * paper)) {
            marks.add(new Mark.Stroke(line, shade(colour), 0.12 * paper, Mark.Dash.NONE));
        }
        marks.add(new Mark.Shape(region, Mark.NONE, INK, 0.3 * paper));
    }

    private Mark silhouette(Section.Silhouette shown, int fill, int edge) {
        return new Mark.Shape(Region.of(shown.outline()), fill, edge, 0.22 * paper);
    }

    private void finger(Bounds shown) {
        double reach = 3 * paper;
        Mark.Dash dash = new Mark.Dash(List.of(3 * paper, 0.8 * paper, 0.6 * paper, 0.8 * paper));
        marks.add(new Mark.Stroke(
                List.of(new Point(shown.minX() - reach, 0), new Point(shown.maxX() + reach / 3, 0)),
                FINGER,
                0.2 * paper,
                dash));
        Mark.Label label = new Mark.Label(
                "finger, r = " + twoDecimals(section.innerRadiusMm()) + " mm",
                new Point(shown.minX() - reach - 0.4 * size, -0.3 * size),
                size,
                StrokeText.Anchor.END,
                false,
                FINGER);
        if (checked > 0) {
            marks.add(label.backed(PAPER));
        }
        marks.add(label);
    }

    /** One line for each part, then for stones and pins by their names, what could be missed, the scale; tells the last line's height. */
    private double legend(double left, double top) {
        double y = top;
        double text = left + 3.1 * size;
        for (int i = 0; i < section.parts().size(); i++) {
            Section.Part part = section.parts().get(i);
            part(swatch(left, y), part.colour(), i);
            String metal = part.metal().isEmpty() ? "" : ": " + part.metal();
            text(part.name() + metal, new Point(text, y), size, StrokeText.Anchor.START);
            y -= 1.7 * size;
        }
        y = silhouettes(section.stones(), "", STONE, STONE_EDGE, left, y);
        y = silhouettes(section.pins(), ", behind the cut", PIN, INK, left, y);
        for (String note : section.notes()) {
            text(note, new Point(left, y), size, StrokeText.Anchor.START);
            y -= 1.7 * size;
        }
        text("scale " + SvgWriter.number(scale) + " : 1", new Point(left, y), size, StrokeText.Anchor.START);
        return y;
    }

    private double silhouettes(
            List<Section.Silhouette> shown, String where, int fill, int edge, double left, double top) {
        Set<String> names = new LinkedHashSet<>();
        shown.forEach(silhouette -> names.add(silhouette.name()));
        names.remove("");
        double y = top;
        for (String name : names) {
            marks.add(new Mark.Shape(swatch(left, y), fill, edge, 0.22 * paper));
            text(name + where, new Point(left + 3.1 * size, y), size, StrokeText.Anchor.START);
            y -= 1.7 * size;
        }
        return y;
    }

    private Region swatch(double left, double y) {
        return Region.of(Outline.rectangle(left, y - 0.2 * size, left + 2.4 * size, y + 0.9 * size));
    }

    private void text(String text, Point at, double textSize, StrokeText.Anchor anchor) {
        marks.add(new Mark.Label(text, at, textSize, anchor, false, INK));
    }

    /** The metal's colour, paler, so that lines over it can be read. */
    private static int tint(LinearColour colour) {
        return Srgb.code(0.75 * colour.red() + 0.25, 0.75 * colour.green() + 0.25, 0.75 * colour.blue() + 0.25);
    }

    private static int shade(LinearColour colour) {
        return Srgb.code(0.3 * colour.red(), 0.3 * colour.green(), 0.3 * colour.blue());
    }

    private static String twoDecimals(double value) {
        return SvgWriter.number(Math.round(value * 100) / 100.0);
    }
}
