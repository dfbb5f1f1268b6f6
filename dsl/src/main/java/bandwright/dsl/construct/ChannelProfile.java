// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.material.StoneAngles;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * The cross-section of a channel, seen along the row, from the girdle line: x across, y along the stone's axis, outwards positive, mm.
 *
 * <p>The slot has straight walls. In each stands the notch for the girdles, as deep as asked, with the shape that the setter's bur and the stone ask
 * for: its floor slopes as the pavilion does, its roof as the crown ({@link StoneAngles}). Between them, where the notch is deepest, it is as high as
 * the girdle and the clearance, and as much more as a straight girdle stands off the round that the notch follows: √(r² + e²) − r for the
 * half length e of what of the stone lies in the wall.
 *
 * @param half half the slot's width
 * @param notch how far the notch is cut into each wall
 * @param high height of the notch where it is deepest
 */
record ChannelProfile(double half, double notch, double high, StoneAngles angles) {
    static ChannelProfile of(Seats seats, StoneRow row, double girdleRadius) {
        Seats.Channel channel = seats.channel().orElseThrow();
        double half = channel.widthMm() / 2;
        double inWall = row.aroundMm() / 2;
        if (!SeatShape.isRectangular(row.cut())) {
            double share = half / (row.widthMm() / 2);
            inWall *= Math.sqrt(Math.max(0, 1 - share * share));
        }
        double off = Math.sqrt(girdleRadius * girdleRadius + inWall * inWall) - girdleRadius;
        double girdle = row.girdleShare() * row.size().widthMm();
        return new ChannelProfile(half, channel.notchMm(), girdle + seats.clearanceMm() + off, row.angles());
    }

    /** Where the notch's floor meets the wall. */
    double foot() {
        return -notch * angles.pavilionSlope();
    }

    /** The notch's roof, that far from the middle. */
    double roof(double across) {
        return high + (half + notch - across) * angles.crownSlope();
    }

    /** How far the channel reaches from its middle. */
    double reach() {
        return half + notch;
    }

    /** The faces that the sides of {@link #tool} make, in its order. */
    static final List<String> FACES = List.of(
            "floor",
            "wall at the fingertip",
            "notch at the fingertip",
            "notch at the fingertip",
            "notch at the fingertip",
            "lip at the fingertip",
            "top",
            "lip at the hand",
            "notch at the hand",
            "notch at the hand",
            "notch at the hand",
            "wall at the hand");

    /** The channel from its bottom to beyond the metal, where a line of the row stands: x across, y from the finger's axis, mm. */
    List<Point> tool(StoneLayout.Line line, double bottom, double top) {
        double wide = half + notch;
        List<Point> points = new ArrayList<>();
        for (double side : new double[] {1, -1}) {
            List<Point> wall = new ArrayList<>(List.of(
                    new Point(side * half, bottom),
                    new Point(side * half, foot()),
                    new Point(side * wide, 0),
                    new Point(side * wide, high),
                    new Point(side * half, roof(half)),
                    new Point(side * half, top)));
            if (side < 0) {
                Collections.reverse(wall);
            }
            points.addAll(wall);
        }
        // The list begins at the bottom on the side of the fingertip: the floor's side comes first.
        points.add(0, points.remove(points.size() - 1));
        return points.stream()
                .map(point -> new Point(across(line, point.x(), point.y()), radius(line, point.x(), point.y())))
                .toList();
    }

    static double across(StoneLayout.Line line, double x, double y) {
        return line.across() + x * line.axisOut() + y * line.axisAcross();
    }

    static double radius(StoneLayout.Line line, double x, double y) {
        return line.girdleRadius() + y * line.axisOut() - x * line.axisAcross();
    }
}
