// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import bandwright.dsl.source.Span;

/** How a profile is drawn. */
public sealed interface ProfileShape extends Node {
    /** A named form with its sizes: {@code d-shape(width: 5 mm, height: 2 mm)}. */
    record Form(Name form, List<Argument> sizes, Span span) implements ProfileShape {
        public Form {
            sizes = List.copyOf(sizes);
        }
    }

    /** A free line from a start through segments; closed by a straight line where it does not return. */
    record Outline(Point start, List<Segment> segments, Span span) implements ProfileShape {
        public Outline {
            segments = List.copyOf(segments);
        }
    }

    /** A point of a cross-section: along the finger, and out from the inner wall. */
    record Point(Expression across, Expression out, Span span) implements Node {}

    /** A piece of an outline; it begins where the one before ends. */
    sealed interface Segment extends Node {
        Point to();
    }

    record Line(Point to, Span span) implements Segment {}

    /** A circular arc through a point. */
    record Arc(Point through, Point to, Span span) implements Segment {}
}
