// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Line;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.material.BrilliantProportions;
import bandwright.dsl.material.LinearColour;

/** The section of a two-tone band with one stone and two pins, made by hand. */
final class StandInSection {
    private StandInSection() {}

    static Section section() {
        Region dome = dome();
        Region trough = Region.of(Outline.rectangle(-0.95, 0.9, 0.95, 3));
        Region seat = Region.of(Outline.polygon(List.of(
                new Point(-0.4, -1),
                new Point(0.4, -1),
                new Point(0.4, 1.3),
                new Point(0.76, 1.65),
                new Point(0.76, 3),
                new Point(-0.76, 3),
                new Point(-0.76, 1.65),
                new Point(-0.4, 1.3))));
        Region shank = RegionBoolean.difference(RegionBoolean.difference(dome, trough), seat);
        Region stripe = RegionBoolean.difference(RegionBoolean.intersection(dome, trough), seat);
        Outline stone = brilliant(1.5, new Point(0, 1.65));
        return new Section(
                "Section at 0 deg",
                "A domed band 4.6 mm broad and 1.9 mm high with a red stripe 1.9 mm broad let in and one stone",
                9.07,
                List.of(
                        new Section.Part("shank", "white gold 585", new LinearColour(0.78, 0.74, 0.67), shank),
                        new Section.Part("stripe", "red gold 585", new LinearColour(0.95, 0.62, 0.45), stripe)),
                List.of(new Section.Silhouette("lights: round diamond 1.5 mm", stone)),
                List.of(pin(-0.42), pin(0.42)),
                List.of(
                        across(-2.3, 2.3, 0, "breadth 4.6 mm"),
                        across(-0.95, 0.95, 0.9, "stripe 1.9 mm"),
                        across(-0.4, 0.4, 0, "hole 0.8 mm"),
                        across(-0.75, 0.75, 1.65, "stone 1.5 mm"),
                        out(0, 1.9, 0, "thickness 1.9 mm"),
                        out(0, 1.25, 2.3, "side 1.25 mm"),
                        out(0.9, 1.9, 0.95, "trough 1 mm")),
                List.of("the nearest stone is at 4.5 deg"));
    }

    /** From its side, the lower edge of its girdle at a place, mm. */
    private static Outline brilliant(double diameterMm, Point girdle) {
        BrilliantProportions proportions = BrilliantProportions.STANDARD;
        double radius = diameterMm / 2;
        double percent = diameterMm / 100;
        double girdleHeight = percent * proportions.girdlePercent();
        double table = radius * proportions.tablePercent() / 100;
        double top = girdleHeight + percent * proportions.crownHeightPercent();
        return Outline.polygon(List.of(
                girdle.plus(0, -percent * proportions.pavilionDepthPercent()),
                girdle.plus(radius, 0),
                girdle.plus(radius, girdleHeight),
                girdle.plus(table, top),
                girdle.plus(-table, top),
                girdle.plus(-radius, girdleHeight),
                girdle.plus(-radius, 0)));
    }

    static Region dome() {
        Point right = new Point(2.3, 1.25);
        Point left = new Point(-2.3, 1.25);
        List<Curve> curves = new ArrayList<>();
        curves.add(new Line(new Point(-2.3, 0), new Point(2.3, 0)));
        curves.add(new Line(new Point(2.3, 0), right));
        curves.add(Arc.through(right, new Point(0, 1.9), left));
        curves.add(new Line(left, new Point(-2.3, 0)));
        return Region.of(new Outline(curves));
    }

    private static Section.Silhouette pin(double across) {
        double half = 0.275;
        double top = 1.9 + 0.28 - half;
        Point from = new Point(across + half, top);
        Point to = new Point(across - half, top);
        List<Curve> curves = new ArrayList<>();
        curves.add(new Line(new Point(across - half, 1.3), new Point(across + half, 1.3)));
        curves.add(new Line(new Point(across + half, 1.3), from));
        curves.add(Arc.through(from, new Point(across, top + half), to));
        curves.add(new Line(to, new Point(across - half, 1.3)));
        return new Section.Silhouette("pins 0.55 mm", new Outline(curves));
    }

    private static Section.Dimension across(double from, double to, double level, String label) {
        return new Section.Dimension(Section.Direction.ACROSS, new Point(from, level), new Point(to, level), label);
    }

    private static Section.Dimension out(double from, double to, double at, String label) {
        return new Section.Dimension(Section.Direction.OUT, new Point(at, from), new Point(at, to), label);
    }
}
