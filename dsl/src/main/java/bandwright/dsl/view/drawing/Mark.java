// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.view.image.StrokeText;

/** One thing on a drawing. Lengths in mm of the thing drawn, y upwards; colours 0xRRGGBB or {@link #NONE}. */
public sealed interface Mark {
    /** No colour: not filled, or without an edge. */
    int NONE = -1;

    /** The box the mark needs; of a text, a little more than it should take in any sans-serif font. */
    Bounds bounds();

    /** A filled shape. */
    record Shape(Region region, int fill, int edge, double edgeWidthMm) implements Mark {
        @Override
        public Bounds bounds() {
            return region.bounds();
        }
    }

    /** A line through points. */
    record Stroke(List<Point> points, int colour, double widthMm, Dash dash) implements Mark {
        public Stroke {
            points = List.copyOf(points);
        }

        @Override
        public Bounds bounds() {
            Bounds bounds = Bounds.NONE;
            for (Point point : points) {
                bounds = bounds.with(point);
            }
            return bounds;
        }
    }

    /** Alternating lengths of line and gap, in mm; empty for a line without gaps. */
    record Dash(List<Double> lengthsMm) {
        public static final Dash NONE = new Dash(List.of());

        public Dash {
            lengthsMm = List.copyOf(lengthsMm);
        }
    }

    /**
     * A text.
     *
     * @param at its start, middle or end on the base line
     * @param upwards turned left by a quarter
     */
    record Label(String text, Point at, double sizeMm, StrokeText.Anchor anchor, boolean upwards, int colour)
            implements Mark {
        private static final double WIDER = 1.12;

        /** How long a text is taken to be. */
        public static double length(String text, double sizeMm) {
            return WIDER * sizeMm * StrokeText.width(text);
        }

        /** A patch that goes under the text, so that lines behind it do not disturb. */
        Shape backed(int ground) {
            Bounds box = bounds();
            Outline patch = Outline.rectangle(box.minX(), box.minY(), box.maxX(), box.maxY());
            return new Shape(Region.of(patch), ground, NONE, 0);
        }

        @Override
        public Bounds bounds() {
            double length = length(text, sizeMm);
            double from = switch (anchor) {
                case START -> 0;
                case MIDDLE -> -length / 2;
                case END -> -length;
            };
            double low = -0.22 * sizeMm;
            double high = 0.78 * sizeMm;
            return upwards
                    ? new Bounds(at.x() - high, at.y() + from, at.x() - low, at.y() + from + length)
                    : new Bounds(at.x() + from, at.y() + low, at.x() + from + length, at.y() + high);
        }
    }
}
