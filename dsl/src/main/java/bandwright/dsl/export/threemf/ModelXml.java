// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.threemf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import bandwright.dsl.export.Content;
import bandwright.dsl.export.Digits;
import bandwright.dsl.export.Plate;
import bandwright.dsl.export.XmlText;
import bandwright.dsl.geometry.operation.GridMesh;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.view.image.Srgb;

/**
 * The model part of a 3MF package. An object for each part, with the base material of its metal; assembled, one more object
 * holds them all and is what is built. Nothing that is built reaches below 0.
 */
final class ModelXml {
    private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
    /** For the one entry that the specification has no name for. */
    private static final String OURS = "urn:bandwright:3mf";

    private static final int MATERIALS = 1;
    private static final int FIRST_OBJECT = 2;

    private final Content.Model model;
    private final List<Mesh> meshes;
    private final StringBuilder xml = new StringBuilder();

    private ModelXml(Content.Model model) {
        this.model = model;
        this.meshes =
                model.parts().stream().map(part -> GridMesh.of(part.mesh())).toList();
    }

    static String of(Content.Model model) {
        return new ModelXml(model).write();
    }

    private String write() {
        xml.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<model unit=\"millimeter\" xml:lang=\"en-US\" xmlns=\"")
                .append(CORE)
                .append("\" xmlns:bandwright=\"")
                .append(OURS)
                .append("\">\n");
        metadata("Title", model.title());
        metadata("Description", String.join("; ", model.words()));
        metadata("Application", "Bandwright");
        metadata("bandwright:fingerprint", model.fingerprint());
        xml.append("<resources>\n");
        Map<String, Integer> metals = materials();
        for (int i = 0; i < meshes.size(); i++) {
            Content.Part part = model.parts().get(i);
            xml.append("<object id=\"").append(FIRST_OBJECT + i);
            xml.append("\" type=\"model\" name=\"").append(XmlText.escaped(part.name()));
            xml.append("\" pid=\"").append(MATERIALS).append("\" pindex=\"").append(metals.get(part.metal()));
            xml.append("\">\n<mesh>\n");
            mesh(meshes.get(i));
            xml.append("</mesh>\n</object>\n");
        }
        build();
        return xml.append("</model>\n").toString();
    }

    private void metadata(String name, String value) {
        xml.append("<metadata name=\"").append(name).append("\">");
        xml.append(XmlText.escaped(value)).append("</metadata>\n");
    }

    /** One for each metal; told by its name, where it stands. */
    private Map<String, Integer> materials() {
        Map<String, Integer> metals = new LinkedHashMap<>();
        xml.append("<basematerials id=\"").append(MATERIALS).append("\">\n");
        for (Content.Part part : model.parts()) {
            if (metals.putIfAbsent(part.metal(), metals.size()) == null) {
                xml.append("<base name=\"")
                        .append(XmlText.escaped(part.metal()))
                        .append("\" displaycolor=\"");
                xml.append(String.format(Locale.ROOT, "#%06X", Srgb.code(part.colour())));
                xml.append("\"/>\n");
            }
        }
        xml.append("</basematerials>\n");
        return metals;
    }

    private void mesh(Mesh mesh) {
        xml.append("<vertices>\n");
        for (int v = 0; v < mesh.vertexCount(); v++) {
            xml.append("<vertex x=\"");
            Digits.append(xml, mesh.x(v));
            xml.append("\" y=\"");
            Digits.append(xml, mesh.y(v));
            xml.append("\" z=\"");
            Digits.append(xml, mesh.z(v));
            xml.append("\"/>\n");
        }
        xml.append("</vertices>\n<triangles>\n");
        int[] corners = mesh.triangles();
        for (int at = 0; at < corners.length; at += 3) {
            xml.append("<triangle v1=\"").append(corners[at]);
            xml.append("\" v2=\"").append(corners[at + 1]);
            xml.append("\" v3=\"").append(corners[at + 2]).append("\"/>\n");
        }
        xml.append("</triangles>\n");
    }

    private void build() {
        List<Plate.Shift> shifts = model.plate().shifts(meshes);
        List<String> items = new ArrayList<>();
        if (model.plate().laidOut()) {
            for (int i = 0; i < meshes.size(); i++) {
                items.add(item(FIRST_OBJECT + i, shifts.get(i)));
            }
        } else {
            int whole = FIRST_OBJECT + meshes.size();
            xml.append("<object id=\"").append(whole).append("\" type=\"model\" name=\"");
            xml.append(XmlText.escaped(model.title())).append("\">\n<components>\n");
            for (int i = 0; i < meshes.size(); i++) {
                xml.append("<component objectid=\"").append(FIRST_OBJECT + i).append("\"/>\n");
            }
            xml.append("</components>\n</object>\n");
            items.add(item(whole, shifts.get(0)));
        }
        xml.append("</resources>\n<build>\n");
        items.forEach(xml::append);
        xml.append("</build>\n");
    }

    private static String item(int object, Plate.Shift shift) {
        return "<item objectid=\"" + object + "\" transform=\"1 0 0 0 1 0 0 0 1 " + Digits.of(shift.x()) + " "
                + Digits.of(shift.y()) + " " + Digits.of(shift.z()) + "\"/>\n";
    }
}
