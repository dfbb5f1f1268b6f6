// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Point;

import static org.assertj.core.api.Assertions.assertThat;

/** What holds of the labels of every drawing. */
public final class Labels {
    private Labels() {}

    /** No label lies over another, and none beyond the paper. */
    public static void assertApart(Drawing drawing) {
        List<Mark.Label> labels = drawing.marks().stream()
                .filter(Mark.Label.class::isInstance)
                .map(Mark.Label.class::cast)
                .toList();
        for (int i = 0; i < labels.size(); i++) {
            Bounds one = labels.get(i).bounds();
            assertThat(one.minX() >= drawing.box().minX()
                            && one.maxX() <= drawing.box().maxX())
                    .as("%s is on the paper", labels.get(i).text())
                    .isTrue();
            for (int j = 0; j < i; j++) {
                Bounds other = labels.get(j).bounds();
                boolean apart = one.maxX() <= other.minX()
                        || other.maxX() <= one.minX()
                        || one.maxY() <= other.minY()
                        || other.maxY() <= one.minY();
                assertThat(apart)
                        .as("%s and %s", labels.get(i).text(), labels.get(j).text())
                        .isTrue();
            }
        }
    }

    /** Lines to the places of checks: none crosses another, none runs over a text, and no dot lies on one. */
    public static void assertChecksClear(Drawing drawing) {
        List<Mark> marks = drawing.marks();
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i) instanceof Mark.Stroke leader && isSign(leader.colour())) {
                for (int j = 0; j < marks.size(); j++) {
                    if (j < i && marks.get(j) instanceof Mark.Stroke other && isSign(other.colour())) {
                        assertThat(cross(leader.points(), other.points()))
                                .as("lines %s and %s", leader.points(), other.points())
                                .isFalse();
                    } else if (marks.get(j) instanceof Mark.Label label && !isBacked(marks, j, i)) {
                        assertThat(meet(leader.points(), label.bounds()))
                                .as("a line over %s", label.text())
                                .isFalse();
                    }
                }
            } else if (marks.get(i) instanceof Mark.Shape dot && isSign(dot.fill())) {
                for (Mark mark : marks) {
                    if (mark instanceof Mark.Label label) {
                        Bounds box = label.bounds();
                        Bounds place = dot.bounds();
                        assertThat(place.maxX() <= box.minX()
                                        || place.minX() >= box.maxX()
                                        || place.maxY() <= box.minY()
                                        || place.minY() >= box.maxY())
                                .as("a dot on %s", label.text())
                                .isTrue();
                    }
                }
            }
        }
    }

    private static boolean isSign(int colour) {
        return colour == CheckSigns.FAILED || colour == CheckSigns.CLOSE;
    }

    /** Whether a label is written on paper that covers a line drawn before it. */
    private static boolean isBacked(List<Mark> marks, int label, int line) {
        return label > line
                && marks.get(label - 1) instanceof Mark.Shape paper
                && paper.edge() == Mark.NONE
                && paper.bounds().equals(marks.get(label).bounds());
    }

    private static boolean cross(List<Point> one, List<Point> other) {
        return side(one, other.get(0)) * side(one, other.get(1)) < 0
                && side(other, one.get(0)) * side(other, one.get(1)) < 0;
    }

    private static double side(List<Point> line, Point point) {
        Point from = line.get(0);
        Point to = line.get(1);
        double side = (to.x() - from.x()) * (point.y() - from.y()) - (to.y() - from.y()) * (point.x() - from.x());
        return Math.abs(side) < 1e-9 ? 0 : side;
    }

    private static boolean meet(List<Point> line, Bounds box) {
        for (int i = 0; i <= 400; i++) {
            double share = i / 400.0;
            double x = line.get(0).x() + share * (line.get(1).x() - line.get(0).x());
            double y = line.get(0).y() + share * (line.get(1).y() - line.get(0).y());
            if (x > box.minX() && x < box.maxX() && y > box.minY() && y < box.maxY()) {
                return true;
            }
        }
        return false;
    }
}
