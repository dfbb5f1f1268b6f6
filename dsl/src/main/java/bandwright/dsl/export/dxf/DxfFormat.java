// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.dxf;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

import bandwright.dsl.export.Content;
import bandwright.dsl.export.ExportFile;
import bandwright.dsl.export.Format;
import bandwright.dsl.export.LayerNames;
import bandwright.dsl.export.PlanBox;
import bandwright.dsl.export.PlanLayer;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;

/**
 * A plan as text DXF of release 12 (Autodesk, DXF Reference, AC1009), which every reader knows; that release has no word for its unit,
 * so a comment says mm. What means the same has a layer.
 */
public final class DxfFormat implements Format {
    /** What release 12 allows. */
    private static final int LONGEST_NAME = 31;

    /** Of the standard palette: white or black, red, blue, green, magenta, cyan, yellow. */
    private static final int[] COLOURS = {7, 1, 5, 3, 6, 4, 2};

    @Override
    public String ending() {
        return "dxf";
    }

    @Override
    public Content.Kind holds() {
        return Content.Kind.PLAN;
    }

    @Override
    public List<ExportFile> write(String name, Content content) {
        byte[] bytes = dxf((Content.Plan) content).getBytes(StandardCharsets.US_ASCII);
        return List.of(new ExportFile(name, bytes));
    }

    private static String dxf(Content.Plan plan) {
        Map<String, String> names = LayerNames.of(plan.layers(), LONGEST_NAME);
        DxfText dxf = new DxfText();
        dxf.add(999, "Bandwright: " + plan.title());
        dxf.add(999, "1 unit = 1 mm, true size; fingerprint " + plan.fingerprint());
        names.forEach((layer, written) -> dxf.add(999, "layer " + written + ": " + layer));
        header(dxf, PlanBox.of(plan));
        tables(dxf, List.copyOf(names.values()));
        dxf.add(0, "SECTION").add(2, "ENTITIES");
        for (PlanLayer layer : plan.layers()) {
            DxfShapes shapes = new DxfShapes(dxf, names.getOrDefault(layer.name(), "0"));
            for (Outline outline : layer.closed()) {
                shapes.closed(outline);
            }
            for (List<Point> line : layer.lines()) {
                shapes.open(line);
            }
            layer.notes().forEach(shapes::note);
        }
        return dxf.add(0, "ENDSEC").add(0, "EOF").toString();
    }

    private static void header(DxfText dxf, Bounds box) {
        dxf.add(0, "SECTION").add(2, "HEADER");
        dxf.add(9, "$ACADVER").add(1, "AC1009");
        dxf.add(9, "$EXTMIN").point(10, box.minX(), box.minY());
        dxf.add(9, "$EXTMAX").point(10, box.maxX(), box.maxY());
        dxf.add(0, "ENDSEC");
    }

    private static void tables(DxfText dxf, List<String> layers) {
        dxf.add(0, "SECTION").add(2, "TABLES");
        dxf.add(0, "TABLE").add(2, "LTYPE").add(70, 1);
        dxf.add(0, "LTYPE").add(2, "CONTINUOUS").add(70, 0).add(3, "Solid line");
        dxf.add(72, 65).add(73, 0).number(40, 0).add(0, "ENDTAB");
        dxf.add(0, "TABLE").add(2, "LAYER").add(70, layers.size());
        for (int i = 0; i < layers.size(); i++) {
            dxf.add(0, "LAYER").add(2, layers.get(i)).add(70, 0);
            dxf.add(62, COLOURS[i % COLOURS.length]).add(6, "CONTINUOUS");
        }
        dxf.add(0, "ENDTAB").add(0, "ENDSEC");
    }
}
