// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.material.LinearColour;
import bandwright.dsl.view.drawing.Layout;
import bandwright.dsl.view.drawing.Mark;
import bandwright.dsl.view.drawing.Section;
import bandwright.dsl.view.image.Srgb;

/**
 * Plans of sections and layouts: the things themselves in mm, each on the layer of what it is, without the paper's hatching, legend
 * and room for dimensions.
 */
public final class Plans {
    private static final int STONE = 0x2f5570;
    private static final int PIN = 0x222222;
    private static final int JOINT = 0xa00060;
    private static final int FINGER = 0x8c6d3f;
    private static final int DIMENSION = 0x8c8c8c;
    private static final int START = 0xa04000;

    /** Capitals of dimensions and numbers, mm: as large as fits among the lines of a band. */
    private static final double TEXT_MM = 0.25;

    /** Of the size of a text. */
    private static final double CAPITAL = 0.72;

    /** From one text to the next below it, mm. */
    private static final double LINE_MM = 1.6 * TEXT_MM;

    /** A polygon of as many corners, all on one circle, stands for it. */
    private static final int ROUND_FROM = 24;

    private static final double SAME_MM = 1e-9;

    private Plans() {}

    /** Coordinates: across, positive to the fingertip, and out from the inner wall. */
    public static Content.Plan of(Section section, String fingerprint) {
        List<PlanLayer> layers = new ArrayList<>();
        Bounds box = Bounds.NONE;
        for (Section.Part part : section.parts()) {
            layers.add(closed("part " + part.name(), dark(part.colour()), outlines(part.region())));
            box = box.with(part.region().bounds());
        }
        layers.addAll(silhouettes("pins ", PIN, section.pins()));
        layers.addAll(silhouettes("stones ", STONE, section.stones()));
        if (!section.parts().isEmpty()) {
            layers.add(lines("finger", FINGER, List.of(List.of(new Point(box.minX(), 0), new Point(box.maxX(), 0)))));
        }
        layers.add(dimensions(section.dimensions(), List.of()));
        return plan(section.title(), fingerprint, layers, section.description());
    }

    /** Coordinates: along the strip, 0 at the top of the ring, and across, positive to the fingertip. */
    public static Content.Plan of(Layout layout, String fingerprint) {
        List<PlanLayer> layers = new ArrayList<>();
        Bounds box = Bounds.NONE;
        for (Layout.Ground ground : layout.grounds()) {
            String kind = ground.sunk() ? "groove " : "part ";
            layers.add(closed(kind + ground.name(), dark(ground.colour()), outlines(ground.region())));
            box = box.with(ground.region().bounds());
        }
        layers.add(lines("channel", PIN, layout.slots()));
        layout.joints().stream()
                .collect(Collectors.groupingBy(Layout.Joint::name, LinkedHashMap::new, Collectors.toList()))
                .forEach((name, joints) -> layers.add(lines(
                        name, JOINT, joints.stream().map(Layout.Joint::line).toList())));
        layers.add(closed(
                "stones",
                STONE,
                layout.stones().stream().map(stone -> circle(stone.girdle())).toList()));
        List<PlanLayer.Note> numbers = layout.stones().stream()
                .map(stone -> new PlanLayer.Note(stone.centre(), TEXT_MM, Integer.toString(stone.number())))
                .toList();
        layers.add(notes("stone numbers", STONE, numbers));
        layers.add(closed("pins", PIN, layout.pins().stream().map(Plans::circle).toList()));
        if (layout.fromMm() <= 0 && layout.toMm() >= 0) {
            layers.add(lines("start", START, List.of(List.of(new Point(0, box.minY()), new Point(0, box.maxY())))));
        }
        layers.add(dimensions(layout.dimensions(), numbers));
        return plan(layout.title(), fingerprint, layers, layout.description());
    }

    private static Content.Plan plan(String title, String fingerprint, List<PlanLayer> layers, String words) {
        List<PlanLayer> drawn =
                layers.stream().filter(layer -> !layer.isEmpty()).toList();
        return new Content.Plan(title, fingerprint, drawn, List.of(title + " in true size, mm", words));
    }

    private static List<PlanLayer> silhouettes(String kind, int colour, List<Section.Silhouette> shown) {
        Map<String, List<Outline>> byName = new LinkedHashMap<>();
        shown.forEach(one ->
                byName.computeIfAbsent(one.name(), name -> new ArrayList<>()).add(one.outline()));
        List<PlanLayer> layers = new ArrayList<>();
        byName.forEach((name, outlines) -> layers.add(closed(kind + name, colour, outlines)));
        return layers;
    }

    /** @param written texts that stand where they are */
    private static PlanLayer dimensions(List<Section.Dimension> dimensions, List<PlanLayer.Note> written) {
        List<List<Point>> lines = new ArrayList<>();
        List<PlanLayer.Note> notes = new ArrayList<>();
        List<Bounds> taken = new ArrayList<>();
        written.forEach(note -> taken.add(box(note.at(), note.text())));
        for (Section.Dimension dimension : dimensions) {
            Point from = dimension.from();
            Point to = dimension.to();
            lines.add(List.of(from, to));
            Point middle = new Point((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
            notes.add(new PlanLayer.Note(free(middle, dimension.label(), taken), TEXT_MM, dimension.label()));
        }
        return new PlanLayer("dimensions", DIMENSION, List.of(), lines, notes);
    }

    /** The middle of a text where it lies over no other: at its place, or so far below it as is needed. */
    private static Point free(Point wanted, String text, List<Bounds> taken) {
        Point at = wanted;
        while (true) {
            Bounds box = box(at, text);
            Bounds hit =
                    taken.stream().filter(other -> meet(box, other)).findFirst().orElse(null);
            if (hit == null) {
                taken.add(box);
                return at;
            }
            at = new Point(at.x(), hit.minY() - LINE_MM / 2);
        }
    }

    private static Bounds box(Point middle, String text) {
        double half = Mark.Label.length(text, TEXT_MM / CAPITAL) / 2;
        return new Bounds(middle.x() - half, middle.y() - LINE_MM / 2, middle.x() + half, middle.y() + LINE_MM / 2);
    }

    private static boolean meet(Bounds one, Bounds other) {
        double same = 1e-9;
        return one.maxX() > other.minX() + same
                && other.maxX() > one.minX() + same
                && one.maxY() > other.minY() + same
                && other.maxY() > one.minY() + same;
    }

    private static List<Outline> outlines(Region region) {
        return region.pieces().stream()
                .flatMap(piece -> piece.outlines().stream())
                .toList();
    }

    /** The circle that a drawing has as a polygon of many corners; anything else as it is. */
    private static Outline circle(Outline drawn) {
        List<Curve> sides = drawn.curves();
        if (sides.size() < ROUND_FROM) {
            return drawn;
        }
        Point first = sides.get(0).start();
        Point across = sides.get(sides.size() / 2).start();
        Point centre = new Point((first.x() + across.x()) / 2, (first.y() + across.y()) / 2);
        double radius = centre.distanceTo(first);
        boolean round = sides.stream().allMatch(side -> Math.abs(centre.distanceTo(side.start()) - radius) < SAME_MM);
        return round
                ? new Outline(List.of(Arc.around(centre, first, across, true), Arc.around(centre, across, first, true)))
                : drawn;
    }

    private static PlanLayer closed(String name, int colour, List<Outline> outlines) {
        return new PlanLayer(name, colour, outlines, List.of(), List.of());
    }

    private static PlanLayer lines(String name, int colour, List<List<Point>> lines) {
        return new PlanLayer(name, colour, List.of(), lines, List.of());
    }

    private static PlanLayer notes(String name, int colour, List<PlanLayer.Note> notes) {
        return new PlanLayer(name, colour, List.of(), List.of(), notes);
    }

    /** A metal's colour, dark enough for a thin line on white. */
    private static int dark(LinearColour colour) {
        return Srgb.code(0.3 * colour.red(), 0.3 * colour.green(), 0.3 * colour.blue());
    }
}
