// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.glb;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.joml.Matrix3d;
import org.joml.Quaterniond;
import org.joml.Vector3d;

import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.export.Content;
import bandwright.dsl.export.Plate;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshShells;
import bandwright.dsl.material.LinearColour;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.view.Json;
import bandwright.dsl.view.render.StoneModel;

/**
 * Writes a ring as one binary glTF 2.0 file (Khronos Group; 2021). Numbers in the file are millimetres in the ring's own coordinates; the root
 * node makes them metres and stands the ring up, as the format wants it: its top is up (+y), the fingertip in front (+z).
 *
 * <ol>
 *   <li>A node for each part and each row of stones, called as in the text; below it one node a copy, all of which share a mesh.
 *   <li>A part that repeats on its way round is written once and turned; what does not repeat is written whole. Together the copies are the closed
 *       body. A part in two halves has two nodes.
 *   <li>A part's mesh names its faces: pairs of the definition that made the face and which of its faces it is, and where its triangles begin.
 *   <li>Metals and stones are the format's own materials, their colours those of our pictures; a stone lets light through where the reader can.
 * </ol>
 *
 * The same ring gives the same bytes.
 */
public final class GlbWriter {
    /** Of diamond; stands in where a material's own is not known. */
    private static final double USUAL_REFRACTIVE_INDEX = 2.417;

    private static final double POLISHED = 0.2;

    private static final String STEPS = "KHR_mesh_quantization";

    private final Ring ring;
    private final GlbFile file = new GlbFile();
    private final List<Object> nodes = new ArrayList<>();
    private final List<Object> meshes = new ArrayList<>();
    private final List<Object> materials = new ArrayList<>();
    private final Map<String, Integer> materialNumbers = new LinkedHashMap<>();
    private boolean hasStones;

    private final boolean small;
    private boolean hasSteps;

    /** @param small whether what is written whole is packed */
    private GlbWriter(Ring ring, boolean small) {
        this.ring = ring;
        this.small = small;
    }

    /**
     * The file's bytes.
     *
     * @param parts names of the parts that are written, with the stones set in them
     * @param fingerprint of the design, kept in the file
     */
    public static byte[] write(Ring ring, Set<String> parts, String fingerprint) {
        return new GlbWriter(ring, false).file(parts, fingerprint);
    }

    /**
     * The same for a page, which cannot hold much: where a part does not repeat on its way round, places are told in steps of 1/2048 mm, so that they
     * are off by a quarter of a thousandth at most, and directions by half a degree (Khronos Group; KHR_mesh_quantization; 2020). Parts larger than
     * 32 mm have steps twice as long.
     */
    public static byte[] writeSmall(Ring ring, Set<String> parts, String fingerprint) {
        return new GlbWriter(ring, true).file(parts, fingerprint);
    }

    /** Parts as they stand in a model, which may be larger than the ring or lie on a plate: without stones, each written whole. */
    static byte[] write(Content.Model model) {
        return new GlbWriter(model.ring(), false).file(model);
    }

    private byte[] file(Content.Model model) {
        List<Object> children = new ArrayList<>();
        Map<String, Object> root = root(model.title(), children);
        List<Plate.Shift> shifts = model.plate()
                .shifts(model.parts().stream().map(Content.Part::mesh).toList());
        for (int i = 0; i < model.parts().size(); i++) {
            Content.Part part = model.parts().get(i);
            int material = material(ring.section(part.name()).metal());
            List<Object> pieces = new ArrayList<>();
            for (Mesh piece : MeshShells.of(part.mesh())) {
                Map<String, Object> node = new LinkedHashMap<>();
                node.put("mesh", mesh(part.name(), GlbMesh.ofRepeat(piece, ring.surfaces(), 1, 0), material));
                if (model.plate().laidOut()) {
                    Plate.Shift shift = shifts.get(i);
                    node.put("translation", numbers(shift.x(), shift.y(), shift.z()));
                }
                pieces.add(add(node));
            }
            children.add(group(part.name(), pieces));
        }
        if (model.plate().laidOut()) {
            // On a plate the finger's axis is upright: the plate is the ground.
            double half = Math.sqrt(0.5);
            root.put("rotation", numbers(-half, 0, 0, half));
        }
        return written(model.title(), model.fingerprint(), model.words());
    }

    private byte[] file(Set<String> parts, String fingerprint) {
        String title = ring.design().title().orElse("ring");
        List<Object> children = new ArrayList<>();
        root(title, children);
        for (Body body : ring.bodies()) {
            if (parts.contains(body.name())) {
                children.add(part(body));
            }
        }
        for (StoneRow row : ring.design().stoneRows()) {
            if (parts.contains(row.part())) {
                children.add(stones(ring.layout(row.name())));
            }
        }
        return written(title, fingerprint, List.of());
    }

    /** The node above all: metres, the top of the ring up, the fingertip in front. */
    private Map<String, Object> root(String title, List<Object> children) {
        Map<String, Object> root = named(title);
        double half = Math.sqrt(0.5);
        root.put("rotation", numbers(0, 0, half, half));
        root.put("scale", numbers(0.001, 0.001, 0.001));
        root.put("children", children);
        nodes.add(root);
        return root;
    }

    private byte[] written(String title, String fingerprint, List<String> words) {
        Map<String, Object> asset = new LinkedHashMap<>();
        asset.put("version", "2.0");
        asset.put("generator", "Bandwright");
        Map<String, Object> extras = new LinkedHashMap<>();
        extras.put("title", title);
        extras.put("fingerprint", fingerprint);
        if (!words.isEmpty()) {
            extras.put("holds", String.join("; ", words));
        }
        asset.put("extras", extras);
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("asset", asset);
        List<Object> used = new ArrayList<>();
        if (hasStones) {
            used.add("KHR_materials_ior");
            used.add("KHR_materials_transmission");
        }
        if (hasSteps) {
            used.add(STEPS);
            tree.put("extensionsRequired", List.of(STEPS));
        }
        if (!used.isEmpty()) {
            tree.put("extensionsUsed", used);
        }
        tree.put("scene", 0);
        tree.put("scenes", List.of(Map.of("nodes", List.of(0))));
        tree.put("nodes", nodes);
        tree.put("meshes", meshes);
        tree.put("materials", materials);
        return file.write(tree);
    }

    private int part(Body body) {
        List<Object> copies = new ArrayList<>();
        int material = material(body.section().metal());
        List<Mesh> pieces = body.repeats() == 1 ? MeshShells.of(body.mesh()) : List.of(body.mesh());
        for (Mesh piece : pieces) {
            // Repeats meet at their ends and must do so exactly.
            GlbMesh repeat = small && body.repeats() == 1
                    ? GlbMesh.inSteps(piece, ring.surfaces())
                    : GlbMesh.ofRepeat(piece, ring.surfaces(), body.repeats(), body.repeatsFrom());
            int mesh = mesh(body.name(), repeat, material);
            for (int i = 0; i < body.repeats(); i++) {
                Map<String, Object> copy = new LinkedHashMap<>();
                copy.put("mesh", mesh);
                if (i > 0) {
                    double half = StrictMath.PI * i / body.repeats();
                    copy.put("rotation", numbers(0, 0, StrictMath.sin(half), StrictMath.cos(half)));
                }
                if (repeat.isInSteps()) {
                    copy.put("scale", numbers(repeat.step(), repeat.step(), repeat.step()));
                }
                copies.add(add(copy));
            }
        }
        return group(body.name(), copies);
    }

    private int stones(StoneLayout layout) {
        StoneRow row = layout.row();
        int mesh = mesh(
                row.name(),
                GlbMesh.ofStone(StoneModel.of(row.cut(), row.widthMm(), row.aroundMm())),
                material(row.material()));
        List<Object> copies = new ArrayList<>();
        for (StoneLayout.Place place : layout.places()) {
            Map<String, Object> copy = new LinkedHashMap<>();
            copy.put("mesh", mesh);
            copy.put("rotation", rotation(place));
            copy.put("translation", numbers(place.centre()));
            copies.add(add(copy));
        }
        hasStones = true;
        return group(row.name(), copies);
    }

    /** As {@link StoneModel#placed}: the stone's x goes sideways, its z along the axis. */
    private static List<Object> rotation(StoneLayout.Place place) {
        Vector3d sideways = new Vector3d(place.sideways());
        Vector3d axis = new Vector3d(place.axis());
        Vector3d third = axis.cross(sideways, new Vector3d());
        Quaterniond turn = new Quaterniond().setFromNormalized(new Matrix3d(sideways, third, axis));
        return numbers(turn.x, turn.y, turn.z, turn.w);
    }

    private int group(String name, List<Object> copies) {
        Map<String, Object> group = named(name);
        group.put("children", copies);
        return add(group);
    }

    private int add(Map<String, Object> node) {
        nodes.add(node);
        return nodes.size() - 1;
    }

    private int mesh(String name, GlbMesh mesh, int material) {
        Map<String, Object> attributes = new LinkedHashMap<>();
        if (mesh.isInSteps()) {
            hasSteps = true;
            attributes.put("POSITION", file.steps(mesh.positions(), mesh.step()));
            attributes.put("NORMAL", file.directions(mesh.normals()));
        } else {
            attributes.put("POSITION", file.vectors(mesh.positions(), true));
            attributes.put("NORMAL", file.vectors(mesh.normals(), false));
        }
        Map<String, Object> primitive = new LinkedHashMap<>();
        primitive.put("attributes", attributes);
        primitive.put("indices", file.indices(mesh.triangles(), mesh.vertexCount()));
        primitive.put("material", material);
        Map<String, Object> tree = named(name);
        tree.put("primitives", List.of(primitive));
        if (!mesh.faces().isEmpty()) {
            List<Object> faces = new ArrayList<>();
            mesh.faces().forEach(face -> faces.add(List.of(face.definition(), face.what(), face.triangle())));
            tree.put("extras", Map.of("faces", faces));
        }
        meshes.add(tree);
        return meshes.size() - 1;
    }

    private int material(Metal metal) {
        return materialNumbers.computeIfAbsent(
                metal.name(), name -> material(name, metal.picture(), 1, POLISHED, Map.of()));
    }

    private int material(StoneMaterial stone) {
        Double index = stone.refractiveIndex();
        Map<String, Object> clear = new LinkedHashMap<>();
        clear.put("KHR_materials_ior", Map.of("ior", Json.number(index == null ? USUAL_REFRACTIVE_INDEX : index)));
        clear.put("KHR_materials_transmission", Map.of("transmissionFactor", 1));
        return materialNumbers.computeIfAbsent(
                "stone " + stone.name(), name -> material(stone.name(), stone.body(), 0, 0, clear));
    }

    private int material(
            String name, LinearColour colour, int metallic, double roughness, Map<String, Object> extensions) {
        Map<String, Object> surface = new LinkedHashMap<>();
        surface.put("baseColorFactor", numbers(colour.red(), colour.green(), colour.blue(), 1));
        surface.put("metallicFactor", metallic);
        surface.put("roughnessFactor", Json.number(roughness));
        Map<String, Object> material = named(name);
        material.put("pbrMetallicRoughness", surface);
        if (!extensions.isEmpty()) {
            material.put("extensions", extensions);
        }
        materials.add(material);
        return materials.size() - 1;
    }

    private static Map<String, Object> named(String name) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", name);
        return tree;
    }

    private static List<Object> numbers(double... values) {
        List<Object> numbers = new ArrayList<>();
        for (double value : values) {
            numbers.add(Json.number(value));
        }
        return numbers;
    }
}
