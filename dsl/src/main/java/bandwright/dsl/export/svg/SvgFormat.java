// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.svg;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import bandwright.dsl.export.Content;
import bandwright.dsl.export.Digits;
import bandwright.dsl.export.ExportFile;
import bandwright.dsl.export.Format;
import bandwright.dsl.export.LayerNames;
import bandwright.dsl.export.PlanBox;
import bandwright.dsl.export.PlanLayer;
import bandwright.dsl.export.XmlText;
import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;

/**
 * A plan as SVG (W3C, SVG 1.1) in its true size: one user unit is one mm, lines have no area, arcs stay arcs. What means the same is
 * a group, which drawing programs show as a layer.
 */
public final class SvgFormat implements Format {
    private static final double MARGIN_MM = 1;
    private static final int LONGEST_NAME = 64;

    @Override
    public String ending() {
        return "svg";
    }

    @Override
    public Content.Kind holds() {
        return Content.Kind.PLAN;
    }

    @Override
    public List<ExportFile> write(String name, Content content) {
        String svg = svg((Content.Plan) content);
        return List.of(new ExportFile(name, svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static String svg(Content.Plan plan) {
        Bounds box = PlanBox.of(plan);
        String width = Digits.of(box.width() + 2 * MARGIN_MM);
        String height = Digits.of(box.height() + 2 * MARGIN_MM);
        StringBuilder svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" ");
        svg.append("xmlns:inkscape=\"http://www.inkscape.org/namespaces/inkscape\" width=\"");
        svg.append(width).append("mm\" height=\"").append(height).append("mm\" viewBox=\"");
        svg.append(Digits.of(box.minX() - MARGIN_MM)).append(' ').append(Digits.of(-box.maxY() - MARGIN_MM));
        svg.append(' ').append(width).append(' ').append(height).append("\">\n");
        svg.append("<title>").append(XmlText.escaped(plan.title())).append("</title>\n");
        svg.append("<desc>").append(XmlText.escaped(String.join(". ", plan.words())));
        svg.append(". Fingerprint ").append(plan.fingerprint()).append("</desc>\n");
        Map<String, String> names = LayerNames.of(plan.layers(), LONGEST_NAME);
        for (PlanLayer layer : plan.layers()) {
            layer(svg, layer, names.getOrDefault(layer.name(), ""));
        }
        return svg.append("</svg>\n").toString();
    }

    private static void layer(StringBuilder svg, PlanLayer layer, String id) {
        String colour = String.format(Locale.ROOT, "#%06x", layer.colour());
        svg.append("<g id=\"").append(id).append("\" inkscape:groupmode=\"layer\" inkscape:label=\"");
        svg.append(XmlText.escaped(layer.name()))
                .append("\" fill=\"none\" stroke=\"")
                .append(colour);
        svg.append("\" stroke-width=\"0.05\" stroke-linejoin=\"round\">\n");
        for (Outline outline : layer.closed()) {
            svg.append("<path d=\"M");
            point(svg, outline.curves().get(0).start());
            outline.curves().forEach(curve -> curve(svg, curve));
            svg.append("Z\"/>\n");
        }
        for (List<Point> line : layer.lines()) {
            svg.append("<path d=\"");
            for (int i = 0; i < line.size(); i++) {
                svg.append(i == 0 ? 'M' : 'L');
                point(svg, line.get(i));
            }
            svg.append("\"/>\n");
        }
        for (PlanLayer.Note note : layer.notes()) {
            // Capitals of common faces are about seven tenths of the type size high.
            double down = note.heightMm() / 2;
            svg.append("<text x=\"").append(Digits.of(note.at().x()));
            svg.append("\" y=\"").append(Digits.of(-note.at().y() + down));
            svg.append("\" font-family=\"sans-serif\" font-size=\"").append(Digits.of(note.heightMm() / 0.7));
            svg.append("\" text-anchor=\"middle\" fill=\"").append(colour).append("\" stroke=\"none\">");
            svg.append(XmlText.escaped(note.text())).append("</text>\n");
        }
        svg.append("</g>\n");
    }

    private static void point(StringBuilder svg, Point point) {
        Digits.append(svg, point.x());
        svg.append(' ');
        Digits.append(svg, -point.y());
    }

    private static void curve(StringBuilder svg, Curve curve) {
        if (!(curve instanceof Arc arc)) {
            svg.append('L');
            point(svg, curve.end());
            return;
        }
        // More than half a turn is drawn as two arcs, so that none is in doubt.
        int pieces = Math.abs(arc.sweep()) > StrictMath.PI * 0.99 ? 2 : 1;
        for (int i = 1; i <= pieces; i++) {
            svg.append('A');
            Digits.append(svg, arc.radius());
            svg.append(' ');
            Digits.append(svg, arc.radius());
            // Paper counts its heights downwards, so a turn to the left is one to the right there.
            svg.append(" 0 0 ").append(arc.sweep() > 0 ? 0 : 1).append(' ');
            point(svg, i == pieces ? arc.end() : arc.at(0.5));
        }
    }
}
