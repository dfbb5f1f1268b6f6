// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.view.drawing.Mark;
import bandwright.dsl.view.drawing.Section;
import bandwright.dsl.view.drawing.Views;

/**
 * Three views as a plan in true size, in first-angle projection (ISO 5456-2): the middle of the front is the origin, the view from the left stands
 * to its right, the plan below it. Each view is on layers of its own.
 */
public final class ViewsPlan {
    private static final int METAL = 0x222222;
    private static final int STONE = 0x2f5570;
    private static final int AXIS = 0x8c6d3f;
    private static final int DIMENSION = 0x8c8c8c;

    /** Capitals, mm: at true size a print of it can still be read. */
    private static final double TEXT_MM = 1;

    /** Of the size of a text. */
    private static final double CAPITAL = 0.72;

    /** From one line of dimensions or text to the next, mm. */
    private static final double ROW_MM = 1.8;

    /** Between views, mm. */
    private static final double APART_MM = 4;

    private final List<PlanLayer> layers = new ArrayList<>();

    private ViewsPlan() {}

    public static Content.Plan of(Views views, String fingerprint) {
        ViewsPlan plan = new ViewsPlan();
        plan.layOut(views);
        List<PlanLayer> drawn =
                plan.layers.stream().filter(layer -> !layer.isEmpty()).toList();
        return new Content.Plan(
                views.title(),
                fingerprint,
                drawn,
                List.of(views.title() + " in true size, mm, first-angle projection", views.description()));
    }

    private void layOut(Views views) {
        Bounds front = view("front", views.front(), 0, 0);
        Bounds side = views.side().bounds();
        Bounds sideDrawn = view("side", views.side(), front.maxX() + APART_MM - side.minX(), 0);
        double floor = Math.min(front.minY(), sideDrawn.minY());
        view("plan", views.plan(), 0, floor - APART_MM - views.plan().bounds().maxY());
    }

    /** Adds a view's layers; tells how far it reaches with its dimensions. */
    private Bounds view(String name, Views.View view, double dx, double dy) {
        layers.add(lines(name + " metal", METAL, moved(view.metal(), dx, dy)));
        layers.add(lines(name + " stones", STONE, moved(view.stones(), dx, dy)));
        layers.add(lines(name + " axes", AXIS, moved(view.axes(), dx, dy)));
        Bounds drawn = view.bounds();
        Bounds box = new Bounds(drawn.minX() + dx, drawn.minY() + dy, drawn.maxX() + dx, drawn.maxY() + dy);
        PlanLayer dimensions = dimensions(name, view.dimensions(), box, dx, dy);
        layers.add(dimensions);
        Bounds all = PlanBox.of(new Content.Plan("", "", List.of(dimensions), List.of()));
        return dimensions.isEmpty() ? box : box.with(all);
    }

    /** Those across stand in rows below the view; those upright in columns to its right, their texts beside the last one. */
    private static PlanLayer dimensions(
            String name, List<Section.Dimension> dimensions, Bounds box, double dx, double dy) {
        List<List<Point>> lines = new ArrayList<>();
        List<PlanLayer.Note> notes = new ArrayList<>();
        long columns = dimensions.stream()
                .filter(dimension -> dimension.direction() == Section.Direction.OUT)
                .count();
        double beside = box.maxX() + columns + 1;
        double below = box.minY();
        double right = box.maxX();
        double free = Double.POSITIVE_INFINITY;
        for (Section.Dimension dimension : dimensions) {
            Point from = dimension.from().plus(dx, dy);
            Point to = dimension.to().plus(dx, dy);
            if (dimension.direction() == Section.Direction.ACROSS) {
                below -= 1.2 * ROW_MM;
                lines.add(List.of(new Point(from.x(), below), new Point(to.x(), below)));
                Point middle = new Point((from.x() + to.x()) / 2, below + ROW_MM / 2);
                notes.add(new PlanLayer.Note(middle, TEXT_MM, dimension.label()));
            } else {
                right += 1;
                lines.add(List.of(new Point(right, from.y()), new Point(right, to.y())));
                double half = Mark.Label.length(dimension.label(), TEXT_MM / CAPITAL) / 2;
                free = Math.min(free - ROW_MM, (from.y() + to.y()) / 2);
                notes.add(new PlanLayer.Note(new Point(beside + half, free), TEXT_MM, dimension.label()));
            }
        }
        return new PlanLayer(name + " dimensions", DIMENSION, List.of(), lines, notes);
    }

    private static List<List<Point>> moved(List<List<Point>> lines, double dx, double dy) {
        return lines.stream()
                .map(line -> line.stream().map(point -> point.plus(dx, dy)).toList())
                .toList();
    }

    private static PlanLayer lines(String name, int colour, List<List<Point>> lines) {
        return new PlanLayer(name, colour, List.of(), lines, List.of());
    }
}
