// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.stl;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.export.Content;
import bandwright.dsl.export.ExportFile;
import bandwright.dsl.export.Format;
import bandwright.dsl.export.Plate;
import bandwright.dsl.geometry.operation.GridMesh;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;
import bandwright.dsl.geometry.solid.MeshShells;

/**
 * Binary STL (3D Systems, StereoLithography Interface Specification, 1989): 80 bytes of header, the number of triangles, then for each
 * its normal and corners in single precision. Neighbours find each other by their corners alone, so these must be equal to the last
 * bit, and bodies that touch must not share a file: each body of a part has its own.
 */
public final class StlFormat implements Format {
    private static final int HEADER = 80;
    private static final int TRIANGLE = 50;

    @Override
    public String ending() {
        return "stl";
    }

    @Override
    public Content.Kind holds() {
        return Content.Kind.MODEL;
    }

    @Override
    public List<ExportFile> write(String name, Content content) {
        Content.Model model = (Content.Model) content;
        String stem = name.substring(0, name.length() - ending().length() - 1);
        String ending = name.substring(stem.length());
        List<Mesh> meshes =
                model.parts().stream().map(part -> GridMesh.of(part.mesh())).toList();
        List<Plate.Shift> shifts = model.plate().shifts(meshes);
        List<ExportFile> files = new ArrayList<>();
        for (int i = 0; i < meshes.size(); i++) {
            Content.Part part = model.parts().get(i);
            // What is assembled keeps the ring's own frame, whatever the plate.
            Plate.Shift shift = model.plate().laidOut() ? shifts.get(i) : new Plate.Shift(0, 0, 0);
            List<Mesh> bodies = bodies(meshes.get(i));
            for (int k = 0; k < bodies.size(); k++) {
                String whose = meshes.size() == 1 ? "" : "-" + part.name();
                String which = bodies.size() == 1 ? "" : "-" + (k + 1);
                files.add(new ExportFile(
                        stem + whose + which + ending, bytes(bodies.get(k), shift, header(model, part))));
            }
        }
        return files;
    }

    /** The separate bodies of a part; a hollow stays with the metal round it. */
    private static List<Mesh> bodies(Mesh mesh) {
        List<Mesh> shells = MeshShells.of(mesh);
        boolean hollow = shells.stream().anyMatch(shell -> MeshMeasures.volume(shell) < 0);
        return hollow ? List.of(mesh) : shells;
    }

    /** Must not begin with "solid", by which readers know the text form. */
    private static String header(Content.Model model, Content.Part part) {
        return "Bandwright, mm, fingerprint " + model.fingerprint() + ", " + part.name() + " in " + part.metal();
    }

    private static byte[] bytes(Mesh mesh, Plate.Shift shift, String header) {
        ByteBuffer file = ByteBuffer.allocate(HEADER + 4 + TRIANGLE * mesh.triangleCount());
        file.order(ByteOrder.LITTLE_ENDIAN);
        byte[] words = header.getBytes(StandardCharsets.US_ASCII);
        file.put(words, 0, Math.min(words.length, HEADER));
        file.position(HEADER);
        file.putInt(mesh.triangleCount());
        double[] p = new double[9];
        for (int t = 0; t < mesh.triangleCount(); t++) {
            for (int k = 0; k < 3; k++) {
                int v = mesh.triangles()[3 * t + k];
                p[3 * k] = written(mesh.x(v) + shift.x());
                p[3 * k + 1] = written(mesh.y(v) + shift.y());
                p[3 * k + 2] = written(mesh.z(v) + shift.z());
            }
            // Of the corners as they are read, which tilts a sliver's normal by more than readers let pass.
            normal(file, p);
            for (double coordinate : p) {
                file.putFloat((float) coordinate);
            }
            file.putShort((short) 0);
        }
        return file.array();
    }

    /** On the grid again, so that a shift cannot part what belongs together; then in single precision. */
    private static double written(double mm) {
        return (float) GridMesh.onGrid(mm);
    }

    private static void normal(ByteBuffer file, double[] p) {
        double ux = p[3] - p[0];
        double uy = p[4] - p[1];
        double uz = p[5] - p[2];
        double vx = p[6] - p[0];
        double vy = p[7] - p[1];
        double vz = p[8] - p[2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        file.putFloat((float) (nx / length));
        file.putFloat((float) (ny / length));
        file.putFloat((float) (nz / length));
    }
}
