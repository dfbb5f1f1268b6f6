// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.material.LinearColour;
import bandwright.dsl.view.image.Srgb;
import bandwright.dsl.view.image.StrokeText;

/**
 * Draws a row's strip. A strip longer than the paper is folded into lines, read like a text; each repeats no stone. Angles
 * stand above every line, the start mark at the top of the ring, the numbers in the stones.
 */
public final class LayoutDrawing {
    private static final int INK = 0x222222;
    private static final int HELP = 0x8c8c8c;
    private static final int PAPER = 0xffffff;
    private static final int START = 0xa04000;
    private static final int STONE = 0xe6f0f6;
    private static final int STONE_EDGE = 0x2f5570;
    private static final int PIN = 0xf4f1ec;
    private static final int JOINT = 0xa00060;

    /** Of a joint, mm on paper: lengths of line and gap. */
    private static final List<Double> JOINT_DASH = List.of(2.0, 0.8);

    /** Text on paper, mm. */
    private static final double TEXT = 2.6;

    /** Width of an A4 sheet within its margins, mm. */
    private static final double PAPER_MM = 180;

    /** Stones smaller than this on paper, mm, are not numbered one by one. */
    private static final double NUMBERED_MM = 3.2;

    private final Layout layout;
    private final List<CheckMark> checks;
    private final CheckSigns signs;
    private final double scale;
    private final double paper;
    private final double size;
    private final List<Mark> marks = new ArrayList<>();

    private LayoutDrawing(Layout layout, List<CheckMark> checks, double scale) {
        this.layout = layout;
        this.checks = checks;
        this.scale = scale;
        paper = 1 / scale;
        size = TEXT * paper;
        signs = new CheckSigns(checks, paper, size);
    }

    /**
     * @param scale millimetres of paper for one of the ring: 4 for 4 : 1, 1 for true size
     */
    public static Drawing of(Layout layout, double scale) {
        return of(layout, List.of(), scale);
    }

    /** As {@link #of(Layout, double)}, with checks pointed at. */
    public static Drawing of(Layout layout, List<CheckMark> checks, double scale) {
        return new LayoutDrawing(layout, checks, scale).layOut();
    }

    private Drawing layOut() {
        double length = layout.toMm() - layout.fromMm();
        int lines = Math.max(1, (int) Math.ceil(length * scale / PAPER_MM - 1e-9));
        double share = length / lines;
        double top = 0;
        for (int i = 0; i < lines; i++) {
            double from = layout.fromMm() + i * share;
            top = line(from, from + share, i == 0, i == lines - 1, top) - 2.4 * size;
        }
        double y = bounds().minY() - 1.6 * size;
        for (String note : layout.notes()) {
            text(note, new Point(layout.fromMm(), y), size, StrokeText.Anchor.START, INK);
            y -= 1.6 * size;
        }
        double below = legend(layout.fromMm(), y);
        marks.addAll(signs.sentences(layout.fromMm(), below - 2 * size, bounds()));
        Bounds drawn = bounds();
        text(
                layout.title(),
                new Point((drawn.minX() + drawn.maxX()) / 2, drawn.maxY() + 1.4 * size),
                1.25 * size,
                StrokeText.Anchor.MIDDLE,
                INK);
        Bounds all = bounds();
        double margin = 2 * paper;
        return new Drawing(
                layout.title(),
                layout.description() + signs.description(),
                new Bounds(all.minX() - margin, all.minY() - margin, all.maxX() + margin, all.maxY() + margin),
                scale,
                marks);
    }

    /** Draws one line of the folded strip below a height; tells how far down it reaches. */
    private double line(double from, double to, boolean first, boolean last, double top) {
        int begun = marks.size();
        Bounds strip = grounds();
        // Every line stands below the one before, at the left.
        double dx = layout.fromMm() - from;
        List<Integer> pointed = IntStream.range(0, checks.size())
                .filter(i -> isIn(checks.get(i).at().x(), from, to, last))
                .boxed()
                .toList();
        double dy = top - strip.maxY() - 3.4 * size - (pointed.isEmpty() ? 0 : signs.height());
        double low = strip.minY() - 1;
        double high = strip.maxY() + 1;
        // The first and the last line show what reaches beyond the ends, too.
        Region window = Region.of(Outline.rectangle(first ? from - 100 : from, low, last ? to + 100 : to, high));
        for (int i = 0; i < layout.grounds().size(); i++) {
            Layout.Ground ground = layout.grounds().get(i);
            Region seen = RegionBoolean.intersection(ground.region(), window).translated(dx, dy);
            marks.add(new Mark.Shape(seen, tint(ground), INK, 0.2 * paper));
        }
        for (List<Point> slot : layout.slots()) {
            stroke(clipped(slot, from, to), dx, dy);
        }
        for (Layout.Joint joint : layout.joints()) {
            joint(joint, from, to, last, dx, dy);
        }
        List<Mark.Label> numbers = new ArrayList<>();
        for (Layout.Stone stone : layout.stones()) {
            if (isIn(stone.centre().x(), from, to, last)) {
                stone(stone, dx, dy).ifPresent(numbers::add);
            }
        }
        for (Outline pin : layout.pins()) {
            Bounds box = pin.bounds();
            if (isIn((box.minX() + box.maxX()) / 2, from, to, last)) {
                marks.add(new Mark.Shape(Region.of(pin.translated(dx, dy)), PIN, INK, 0.15 * paper));
            }
        }
        // Above the angles; where a line to a place passes behind an angle or a number, that stays legible.
        marks.addAll(signs.draw(pointed, strip.maxY() + dy + 3 * paper + 1.2 * size, new Point(dx, dy), numbers));
        numbers.forEach(number -> write(number, STONE, !pointed.isEmpty()));
        angles(from, to, last, dx, strip.maxY() + dy, !pointed.isEmpty());
        if (first) {
            // The width stands clear of a stone or an angle at the strip's end.
            double right = marks.subList(begun, marks.size()).stream()
                    .mapToDouble(mark -> mark.bounds().maxX())
                    .max()
                    .orElse(to + dx);
            Bounds around = new Bounds(from + dx, strip.minY() + dy, right, strip.maxY() + dy);
            dimensions(dx, dy, to, around);
        }
        return Math.min(bounds().minY(), strip.minY() + dy);
    }

    private Bounds grounds() {
        Bounds bounds = Bounds.NONE;
        for (Layout.Ground ground : layout.grounds()) {
            bounds = bounds.with(ground.region().bounds());
        }
        return bounds;
    }

    private static boolean isIn(double x, double from, double to, boolean last) {
        return x >= from - 1e-9 && (last || x < to - 1e-9);
    }

    /** Draws a stone; tells its number where there is room for it. */
    private Optional<Mark.Label> stone(Layout.Stone stone, double dx, double dy) {
        Outline girdle = stone.girdle().translated(dx, dy);
        marks.add(new Mark.Shape(Region.of(girdle), STONE, STONE_EDGE, 0.22 * paper));
        Bounds box = girdle.bounds();
        if (Math.min(box.width(), box.height()) * scale < NUMBERED_MM) {
            return Optional.empty();
        }
        double number = 0.7 * size;
        Point middle = stone.centre().plus(dx, dy - 0.28 * number);
        return Optional.of(new Mark.Label(
                Integer.toString(stone.number()), middle, number, StrokeText.Anchor.MIDDLE, false, STONE_EDGE));
    }

    /** @param backed whether something may lie behind that would make it hard to read */
    private void write(Mark.Label label, int ground, boolean backed) {
        if (backed) {
            marks.add(label.backed(ground));
        }
        marks.add(label);
    }

    /** Ticks every ten degrees above a line, as many with their number as have room; a mark where the ring has its top. */
    private void angles(double from, double to, boolean last, double dx, double edge, boolean backed) {
        int first = (int) Math.ceil(from * layout.degreesPerMm() / 10 - 1e-6);
        int end = (int) Math.floor(to * layout.degreesPerMm() / 10 + 1e-6);
        for (int k = first; k <= end; k++) {
            double x = 10 * k / layout.degreesPerMm();
            if (!isIn(x, from, to, last)) {
                continue;
            }
            boolean labelled = 10 * k % labelledDegrees() == 0;
            double length = (labelled ? 1.8 : 1) * paper;
            line(new Point(x + dx, edge + 0.5 * paper), new Point(x + dx, edge + 0.5 * paper + length), HELP);
            if (labelled) {
                boolean start = k == 0;
                int degrees = Math.floorMod(10 * k, 360);
                Mark.Label label = new Mark.Label(
                        start ? "start, 0 deg" : degrees + " deg",
                        new Point(x + dx, edge + 3 * paper),
                        size,
                        StrokeText.Anchor.MIDDLE,
                        false,
                        start ? START : INK);
                write(label, PAPER, backed);
            }
            if (k == 0) {
                Outline arrow = Outline.polygon(List.of(
                        new Point(x + dx, edge + 0.2 * paper),
                        new Point(x + dx + 0.9 * paper, edge + 2.2 * paper),
                        new Point(x + dx - 0.9 * paper, edge + 2.2 * paper)));
                marks.add(new Mark.Shape(Region.of(arrow), START, Mark.NONE, 0));
            }
        }
    }

    private int labelledDegrees() {
        double room = 1.15 * Mark.Label.length("start, 0 deg", size);
        for (int degrees : new int[] {30, 60, 90}) {
            if (degrees / layout.degreesPerMm() > room) {
                return degrees;
            }
        }
        return 180;
    }

    private void dimensions(double dx, double dy, double end, Bounds strip) {
        List<Section.Dimension> moved = layout.dimensions().stream()
                .map(dimension -> new Section.Dimension(
                        dimension.direction(),
                        onLine(dimension.from(), end).plus(dx, dy),
                        onLine(dimension.to(), end).plus(dx, dy),
                        dimension.label()))
                .toList();
        Bounds around = strip;
        for (Section.Direction direction : Section.Direction.values()) {
            List<Mark> drawn = new DimensionMarks(direction, paper, size).draw(moved, around);
            marks.addAll(drawn);
            around = drawn.stream().map(Mark::bounds).reduce(around, Bounds::with);
        }
    }

    /** What is measured at the strip's end is shown at the end of its first line. */
    private static Point onLine(Point point, double end) {
        return new Point(Math.min(point.x(), end), point.y());
    }

    /** Tells the height of its last line. */
    private double legend(double left, double top) {
        double y = top;
        List<String> named = new ArrayList<>();
        for (Layout.Ground ground : layout.grounds()) {
            if (named.contains(ground.name())) {
                continue;
            }
            named.add(ground.name());
            Region swatch = Region.of(Outline.rectangle(left, y - 0.2 * size, left + 2.4 * size, y + 0.9 * size));
            marks.add(new Mark.Shape(swatch, tint(ground), INK, 0.2 * paper));
            text(
                    ground.name() + ": " + ground.metal(),
                    new Point(left + 3.1 * size, y),
                    size,
                    StrokeText.Anchor.START,
                    INK);
            y -= 1.7 * size;
        }
        for (String name :
                layout.joints().stream().map(Layout.Joint::name).distinct().toList()) {
            double middle = y + 0.35 * size;
            joint(List.of(new Point(left, middle), new Point(left + 2.4 * size, middle)));
            text(name, new Point(left + 3.1 * size, y), size, StrokeText.Anchor.START, INK);
            y -= 1.7 * size;
        }
        text("scale " + SvgWriter.number(scale) + " : 1", new Point(left, y), size, StrokeText.Anchor.START, INK);
        return y;
    }

    private void joint(Layout.Joint joint, double from, double to, boolean last, double dx, double dy) {
        Point start = joint.line().get(0);
        Point end = joint.line().get(joint.line().size() - 1);
        boolean across = start.x() == end.x();
        List<Point> seen = across ? joint.line() : clipped(joint.line(), from, to);
        boolean shown = across ? isIn(start.x(), from, to, last) : seen.get(0).distanceTo(seen.get(1)) > 1e-9;
        if (shown) {
            joint(seen.stream().map(point -> point.plus(dx, dy)).toList());
        }
    }

    private void joint(List<Point> line) {
        List<Double> dash = JOINT_DASH.stream().map(length -> length * paper).toList();
        marks.add(new Mark.Stroke(line, JOINT, 0.3 * paper, new Mark.Dash(dash)));
    }

    private static List<Point> clipped(List<Point> points, double from, double to) {
        return points.stream()
                .map(point -> new Point(Math.min(Math.max(point.x(), from), to), point.y()))
                .toList();
    }

    private void stroke(List<Point> points, double dx, double dy) {
        if (points.get(0).distanceTo(points.get(points.size() - 1)) > 1e-9) {
            List<Point> moved = points.stream().map(point -> point.plus(dx, dy)).toList();
            marks.add(new Mark.Stroke(moved, INK, 0.2 * paper, Mark.Dash.NONE));
        }
    }

    private void line(Point from, Point to, int colour) {
        marks.add(new Mark.Stroke(List.of(from, to), colour, 0.13 * paper, Mark.Dash.NONE));
    }

    private void text(String text, Point at, double textSize, StrokeText.Anchor anchor, int colour) {
        marks.add(new Mark.Label(text, at, textSize, anchor, false, colour));
    }

    private Bounds bounds() {
        return marks.stream().map(Mark::bounds).reduce(Bounds.NONE, Bounds::with);
    }

    /** The metal's colour, paler, so that what lies on it can be read; a floor is darker. */
    private static int tint(Layout.Ground ground) {
        LinearColour colour = ground.colour();
        double share = ground.sunk() ? 0.6 : 0.75;
        double white = ground.sunk() ? 0.1 : 0.25;
        return Srgb.code(share * colour.red() + white, share * colour.green() + white, share * colour.blue() + white);
    }
}
