// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;

/**
 * A drawing as SVG that stands alone and can stand beside others on one page: no ids, no style sheet, nothing referred to.
 * The user units are mm of the thing drawn, arcs are arcs, numbers have four decimals.
 */
public final class SvgWriter {
    private SvgWriter() {}

    public static String write(Drawing drawing) {
        Bounds box = drawing.box();
        StringBuilder svg = new StringBuilder();
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\"");
        attribute(svg, "width", number(box.width() * drawing.scale()) + "mm");
        attribute(svg, "height", number(box.height() * drawing.scale()) + "mm");
        attribute(
                svg,
                "viewBox",
                number(box.minX()) + " " + number(-box.maxY()) + " " + number(box.width()) + " "
                        + number(box.height()));
        svg.append(">\n<title>").append(escaped(drawing.title())).append("</title>\n");
        svg.append("<desc>").append(escaped(drawing.description())).append("</desc>\n");
        svg.append("<rect");
        attribute(svg, "x", number(box.minX()));
        attribute(svg, "y", number(-box.maxY()));
        attribute(svg, "width", number(box.width()));
        attribute(svg, "height", number(box.height()));
        attribute(svg, "fill", colour(0xffffff));
        svg.append("/>\n");
        drawing.marks().forEach(mark -> append(svg, mark));
        return svg.append("</svg>\n").toString();
    }

    private static void append(StringBuilder svg, Mark mark) {
        if (mark instanceof Mark.Shape shape) {
            svg.append("<path");
            attribute(svg, "d", path(shape.region()));
            attribute(svg, "fill", colour(shape.fill()));
            attribute(svg, "fill-rule", "evenodd");
            if (shape.edge() != Mark.NONE) {
                attribute(svg, "stroke", colour(shape.edge()));
                attribute(svg, "stroke-width", number(shape.edgeWidthMm()));
                attribute(svg, "stroke-linejoin", "round");
            }
        } else if (mark instanceof Mark.Stroke stroke) {
            svg.append("<path");
            attribute(svg, "d", path(stroke.points()));
            attribute(svg, "fill", "none");
            attribute(svg, "stroke", colour(stroke.colour()));
            attribute(svg, "stroke-width", number(stroke.widthMm()));
            if (!stroke.dash().lengthsMm().isEmpty()) {
                attribute(
                        svg,
                        "stroke-dasharray",
                        stroke.dash().lengthsMm().stream()
                                .map(SvgWriter::number)
                                .collect(Collectors.joining(" ")));
            }
        } else if (mark instanceof Mark.Label label) {
            append(svg, label);
            return;
        }
        svg.append("/>\n");
    }

    private static void append(StringBuilder svg, Mark.Label label) {
        String x = number(label.at().x());
        String y = number(-label.at().y());
        svg.append("<text");
        attribute(svg, "x", x);
        attribute(svg, "y", y);
        attribute(svg, "font-family", "sans-serif");
        attribute(svg, "font-size", number(label.sizeMm()));
        attribute(svg, "fill", colour(label.colour()));
        attribute(
                svg,
                "text-anchor",
                switch (label.anchor()) {
                    case START -> "start";
                    case MIDDLE -> "middle";
                    case END -> "end";
                });
        if (label.upwards()) {
            attribute(svg, "transform", "rotate(-90 " + x + " " + y + ")");
        }
        svg.append('>').append(escaped(label.text())).append("</text>\n");
    }

    private static String path(Region region) {
        StringBuilder path = new StringBuilder();
        for (Region.Piece piece : region.pieces()) {
            append(path, piece.outer());
            piece.holes().forEach(hole -> append(path, hole));
        }
        return path.toString();
    }

    private static void append(StringBuilder path, Outline outline) {
        path.append('M').append(pair(outline.curves().get(0).start()));
        for (Curve curve : outline.curves()) {
            if (curve instanceof Arc arc) {
                // A whole circle starts where it ends, which SVG takes for nothing; so it goes in two halves.
                boolean whole = Math.abs(arc.sweep()) > 6.28;
                if (whole) {
                    append(path, arc, arc.middle(), arc.sweep() / 2);
                }
                append(path, arc, arc.end(), whole ? arc.sweep() / 2 : arc.sweep());
            } else {
                path.append('L').append(pair(curve.end()));
            }
        }
        path.append('Z');
    }

    private static void append(StringBuilder path, Arc arc, Point to, double sweep) {
        String radius = number(arc.radius());
        path.append('A').append(radius).append(' ').append(radius).append(" 0 ");
        path.append(Math.abs(sweep) > StrictMath.PI ? 1 : 0).append(' ');
        // With y downwards, a counter-clockwise arc runs against SVG's positive sense.
        path.append(sweep > 0 ? 0 : 1).append(' ').append(pair(to));
    }

    private static String path(List<Point> points) {
        return "M" + points.stream().map(SvgWriter::pair).collect(Collectors.joining("L"));
    }

    private static String pair(Point point) {
        return number(point.x()) + " " + number(-point.y());
    }

    private static void attribute(StringBuilder svg, String name, String value) {
        svg.append(' ').append(name).append("=\"").append(value).append('"');
    }

    private static String colour(int colour) {
        return colour == Mark.NONE ? "none" : String.format(Locale.ROOT, "#%06x", colour);
    }

    /** Four decimals, halves away from zero, without trailing zeros. */
    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
