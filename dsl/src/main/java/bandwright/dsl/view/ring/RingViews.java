// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.joml.Vector3d;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.view.drawing.Section;
import bandwright.dsl.view.drawing.Views;
import bandwright.dsl.view.render.Scene;
import bandwright.dsl.view.render.VisibleLines;

/** A ring's outlines from three sides with its main dimensions; what is hidden is not drawn. */
public final class RingViews {
    /** How far a centre line reaches beyond what it is the middle of, mm. */
    private static final double BEYOND_MM = 0.8;

    /** Sizes that differ by less are told once, mm. */
    private static final double SAME_MM = 0.005;

    private static final Vector3d TOP = new Vector3d(1, 0, 0);
    private static final Vector3d LEFT = new Vector3d(0, 1, 0);
    private static final Vector3d FINGERTIP = new Vector3d(0, 0, 1);

    private final Ring ring;
    private final Set<String> parts;
    private final Band band;
    private final VisibleLines lines;

    private RingViews(Ring ring, Set<String> parts, Scene scene) {
        this.ring = ring;
        this.parts = parts;
        this.band = ring.design().bands().get(0);
        this.lines = new VisibleLines(scene);
    }

    /** Parts with their stones, pins standing as cast. */
    public static Views of(Ring ring, Set<String> parts) {
        return new RingViews(ring, parts, RingScene.standing(ring, parts)).views("");
    }

    /** Parts from the caster: without stones and without what the bench cuts. */
    public static Views asCast(Ring ring, Set<String> parts) {
        return new RingViews(ring, parts, RingScene.asCast(ring, parts)).views(" as cast");
    }

    private Views views(String state) {
        List<Section.Dimension> front = front();
        List<Section.Dimension> side = side();
        // Of stones that are not in yet there is nothing to measure.
        List<Section.Dimension> plan = state.isEmpty() ? plan() : List.of();
        String title = "Views of " + ring.design().title().orElse("the ring") + state;
        String told = List.of(front, side, plan).stream()
                .flatMap(List::stream)
                .map(Section.Dimension::label)
                .distinct()
                .collect(Collectors.joining(", "));
        return new Views(
                title,
                "Outlines from the fingertip's side, from the left and from above: " + told + ".",
                view("front, from the fingertip", new Vector3d(LEFT).negate(), TOP, true, true, front),
                view("side, from the left", FINGERTIP, TOP, true, false, side),
                view(
                        "plan, from above",
                        new Vector3d(LEFT).negate(),
                        new Vector3d(FINGERTIP).negate(),
                        false,
                        true,
                        plan),
                List.of());
    }

    private Views.View view(
            String name,
            Vector3d right,
            Vector3d up,
            boolean level,
            boolean upright,
            List<Section.Dimension> dimensions) {
        List<List<Point>> metal = lines.seen(right, up, false);
        List<List<Point>> stones = lines.seen(right, up, true);
        Bounds box = Bounds.NONE;
        for (List<List<Point>> group : List.of(metal, stones)) {
            for (List<Point> line : group) {
                for (Point point : line) {
                    box = box.with(point);
                }
            }
        }
        List<List<Point>> axes = new ArrayList<>();
        if (level) {
            axes.add(List.of(new Point(box.minX() - BEYOND_MM, 0), new Point(box.maxX() + BEYOND_MM, 0)));
        }
        if (upright) {
            axes.add(List.of(new Point(0, box.minY() - BEYOND_MM), new Point(0, box.maxY() + BEYOND_MM)));
        }
        return new Views.View(name, metal, stones, axes, dimensions);
    }

    /** What is left of the band in the parts shown, as they were cut: a groove may have taken its crest. */
    private List<PartSection> shown() {
        return ring.sections().stream()
                .filter(part -> parts.contains(part.name()) && part.band().equals(band))
                .toList();
    }

    /** The box about the band's cross-section, out from the finger's axis; without area where nothing is left. */
    private Bounds section(double degrees) {
        Bounds box = Bounds.NONE;
        for (PartSection part : shown()) {
            box = box.with(ring.section(part, degrees * (StrictMath.PI / 180)).bounds());
        }
        return box;
    }

    /** How far the band reaches from the finger's axis. */
    private double reach(double degrees) {
        return shown().stream()
                .mapToDouble(part -> ring.reach(part, degrees * (StrictMath.PI / 180)))
                .max()
                .orElse(0);
    }

    private static boolean isThere(Bounds section) {
        return section.minX() < section.maxX();
    }

    /** Inside and outside below; thicknesses to the right. */
    private List<Section.Dimension> front() {
        List<Section.Dimension> front = new ArrayList<>();
        if (shown().isEmpty()) {
            return front;
        }
        Bounds top = section(0);
        Bounds bottom = section(180);
        double inner = Math.min(top.minY(), bottom.minY());
        double above = reach(0);
        double below = reach(180);
        double right = reach(270);
        double left = reach(90);
        if (isThere(top) || isThere(bottom)) {
            front.add(across("inside", -inner, inner, 0));
        }
        front.add(across("outside", -left, right, 0));
        if (Math.abs(left + right - above - below) > SAME_MM) {
            front.add(out("outside", -below, above, 0));
        }
        boolean same = Math.abs(top.height() - bottom.height()) < SAME_MM;
        if (isThere(top)) {
            front.add(out(same ? "thickness" : "thickness at 0 deg", top.minY(), top.maxY(), 0));
        }
        if (isThere(bottom) && !same) {
            front.add(out("thickness at 180 deg", -bottom.maxY(), -bottom.minY(), 0));
        }
        return front;
    }

    private List<Section.Dimension> side() {
        List<Section.Dimension> side = new ArrayList<>();
        Bounds top = section(0);
        Bounds bottom = section(180);
        boolean same = Math.abs(top.width() - bottom.width()) < SAME_MM;
        if (isThere(top)) {
            double level = (top.minY() + top.maxY()) / 2;
            side.add(across(same ? "width" : "width at 0 deg", top.minX(), top.maxX(), level));
        }
        if (isThere(bottom) && !same) {
            double level = -(bottom.minY() + bottom.maxY()) / 2;
            side.add(across("width at 180 deg", bottom.minX(), bottom.maxX(), level));
        }
        return side;
    }

    /** How far along the top a row of stones reaches, where it is not more than half the round. */
    private List<Section.Dimension> plan() {
        List<Section.Dimension> plan = new ArrayList<>();
        for (StoneRow row : ring.design().stoneRows()) {
            StoneLayout layout = ring.layout(row.name());
            if (!parts.contains(row.part()) || layout.full() || layout.places().isEmpty()) {
                continue;
            }
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            boolean above = true;
            double level = 0;
            for (StoneLayout.Place place : layout.places()) {
                Vector3d along = new Vector3d(place.along());
                Vector3d centre = new Vector3d(place.centre());
                above &= centre.dot(TOP) > 0;
                for (int way = -1; way <= 1; way += 2) {
                    double x = -new Vector3d(along)
                            .mul(way * row.aroundMm() / 2)
                            .add(centre)
                            .dot(LEFT);
                    low = Math.min(low, x);
                    high = Math.max(high, x);
                }
                level = -centre.z;
            }
            if (above) {
                plan.add(across(row.name(), low, high, level));
            }
        }
        return plan;
    }

    private Section.Dimension across(String name, double from, double to, double level) {
        return new Section.Dimension(
                Section.Direction.ACROSS, new Point(from, level), new Point(to, level), label(name, to - from));
    }

    private Section.Dimension out(String name, double from, double to, double across) {
        return new Section.Dimension(
                Section.Direction.OUT, new Point(across, from), new Point(across, to), label(name, to - from));
    }

    /** What does not go round alike is measured on facets, and told no finer than those are. */
    private String label(String name, double mm) {
        boolean exact = shown().stream().allMatch(PartSection::isTurned);
        double told = exact ? mm : Math.round(mm * 100) / 100.0;
        return name + " " + QuantityFormat.format(Quantity.millimetres(told));
    }
}
