// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Line;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;

/**
 * Draws a form, counter-clockwise from the inner left corner: inner side, right wall, top, left wall. The lines are exact;
 * nothing is made of chords.
 */
public final class FormDrawing {
    /** Shorter than this, in mm, a line is none. */
    private static final double NOTHING_MM = 1e-6;

    private final Form form;
    private final Map<String, Double> sizes;
    private final double half;
    private final double height;
    /** Upper ends of the side walls, above the finger. */
    private final double side;
    /** How far the edges of the inner side stand off. */
    private final double inside;

    private final double bevel;
    private final List<Curve> curves = new ArrayList<>();
    private final List<Point> corners = new ArrayList<>();

    private FormDrawing(Form form, Map<String, Double> sizes) {
        this.form = form;
        this.sizes = sizes;
        this.half = sizes.getOrDefault("width", 0.0) / 2;
        this.height = sizes.getOrDefault("height", 0.0);
        this.bevel = bevel();
        this.side = side();
        this.inside = form == Form.COURT || form == Form.FLAT_COURT ? size("inside", 0.15 * height) : 0;
    }

    /**
     * The outline of a form.
     *
     * @param sizes in mm by their words; width and height, above 0, must be there, the others are 0 or more
     */
    public static Drawing draw(Form form, Map<String, Double> sizes) {
        FormDrawing drawing = new FormDrawing(form, sizes);
        return drawing.problem().<Drawing>map(problem -> problem).orElseGet(drawing::draw);
    }

    private double size(String word, double otherwise) {
        return sizes.getOrDefault(word, otherwise);
    }

    private double bevel() {
        double even = Math.min(2 * half, height) / 4;
        return size("bevel", sizes.containsKey("side") ? height - size("side", 0) : even);
    }

    private double side() {
        return switch (form) {
            case FLAT, RECTANGLE, FLAT_COURT, CONCAVE -> height;
            case D_SHAPE, COURT -> size("side", 0.6 * height);
            case KNIFE_EDGE -> size("side", 0.25 * height);
            case BEVELLED -> size("side", height - bevel);
            case HALF_ROUND -> 0;
        };
    }

    private Optional<Drawing.Impossible> problem() {
        double above = height - side;
        double dip = dip();
        if (side > height) {
            return impossible("side", "the side", side, "the height", height);
        } else if (side < 0) {
            return impossible("bevel", "the bevel", bevel, "the height", height);
        } else if (inside > side || (form == Form.FLAT_COURT && inside == side)) {
            // As high as the side it may be under an outer arc: the two then meet in a point, as in a lens.
            boolean flat = form == Form.FLAT_COURT;
            return impossible("inside", "the rise inside", inside, flat ? "the height" : "the side", side);
        } else if (inside > half) {
            return impossible("inside", "the rise inside", inside, "half the width", half);
        } else if (form == Form.BEVELLED && bevel > half) {
            return impossible("bevel", "the bevel", bevel, "half the width", half);
        } else if (form == Form.HALF_ROUND && height > half) {
            return impossible("height", "the height", height, "half the width", half);
        } else if ((form == Form.D_SHAPE || form == Form.COURT) && above > half) {
            // The arc would bulge out over the walls.
            return impossible("height", "the height above the side", above, "half the width", half);
        } else if (dip >= height - inside) {
            return impossible("dip", "the dip", dip, "the height", height);
        } else if (dip > half) {
            return impossible("dip", "the dip", dip, "half the width", half);
        }
        return Optional.empty();
    }

    private double dip() {
        return form == Form.CONCAVE ? size("dip", 0.2 * height) : 0;
    }

    private static Optional<Drawing.Impossible> impossible(
            String size, String what, double value, String limit, double most) {
        return Optional.of(new Drawing.Impossible(size, what, value, limit, most));
    }

    private Drawing draw() {
        Point innerLeft = new Point(-half, inside);
        Point innerRight = new Point(half, inside);
        Point right = new Point(half, side);
        Point left = new Point(-half, side);
        arcOrLine(innerLeft, new Point(0, 0), innerRight);
        line(innerRight, right);
        top(right, left);
        line(left, innerLeft);
        return rounded(size("edge", 0));
    }

    private void top(Point right, Point left) {
        corners.add(right);
        switch (form) {
            case FLAT, RECTANGLE, FLAT_COURT -> line(right, left);
            case D_SHAPE, COURT, HALF_ROUND -> arcOrLine(right, new Point(0, height), left);
            case CONCAVE -> arcOrLine(right, new Point(0, height - dip()), left);
            case KNIFE_EDGE -> {
                // The ridge stays sharp whatever the edge: rounded, it would no longer reach the height.
                line(right, new Point(0, height));
                line(new Point(0, height), left);
            }
            case BEVELLED -> {
                Point from = new Point(half - bevel, height);
                Point to = new Point(bevel - half, height);
                line(right, from);
                line(from, to);
                line(to, left);
                if (from.distanceTo(to) > NOTHING_MM) {
                    corners.add(from);
                    corners.add(to);
                }
            }
        }
        corners.add(left);
    }

    private void line(Point from, Point to) {
        if (from.distanceTo(to) > NOTHING_MM) {
            curves.add(new Line(from, to));
        }
    }

    private void arcOrLine(Point from, Point via, Point to) {
        if (Math.abs(via.y() - from.y()) > NOTHING_MM) {
            curves.add(Arc.through(from, via, to));
        } else {
            line(from, to);
        }
    }

    private Drawing rounded(double edge) {
        Optional<List<Curve>> rounded = rounded(curves, edge);
        if (rounded.isPresent()) {
            return new Drawing.Drawn(new Outline(rounded.get()));
        }
        double fits = 0;
        double tooLarge = edge;
        for (int i = 0; i < 50; i++) {
            double middle = (fits + tooLarge) / 2;
            boolean good = rounded(curves, middle).isPresent();
            fits = good ? middle : fits;
            tooLarge = good ? tooLarge : middle;
        }
        // A hair's breadth up first: what is meant is 0.9, not 0.8999999.
        double shown = Math.floor(fits * 1000 + 1e-6) / 1000;
        return new Drawing.Impossible("edge", "the edge", edge, "the largest that fits", shown);
    }

    private Optional<List<Curve>> rounded(List<Curve> sharp, double radius) {
        Optional<List<Curve>> rounded = Optional.of(sharp);
        if (radius > NOTHING_MM) {
            for (Point corner : corners) {
                rounded = rounded.flatMap(curvesSoFar -> CornerRounding.round(curvesSoFar, corner, radius));
            }
        }
        return rounded;
    }
}
