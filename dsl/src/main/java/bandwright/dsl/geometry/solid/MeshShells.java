// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The surfaces of a mesh that share no vertex, each as a mesh of its own, in the order of their first vertices. */
public final class MeshShells {
    private MeshShells() {}

    public static List<Mesh> of(Mesh mesh) {
        int[] root = roots(mesh);
        List<Integer> first = new ArrayList<>();
        int[] shellOf = new int[mesh.vertexCount()];
        Arrays.fill(shellOf, -1);
        for (int corner : mesh.triangles()) {
            if (shellOf[root[corner]] < 0) {
                shellOf[root[corner]] = first.size();
                first.add(root[corner]);
            }
        }
        if (first.size() == 1) {
            return List.of(mesh);
        }
        List<Mesh> shells = new ArrayList<>();
        for (int shell = 0; shell < first.size(); shell++) {
            shells.add(part(mesh, root, first.get(shell)));
        }
        return shells;
    }

    private static Mesh part(Mesh mesh, int[] root, int which) {
        MeshBuilder builder = new MeshBuilder(mesh.vertexCount(), mesh.triangleCount());
        int[] index = new int[mesh.vertexCount()];
        for (int v = 0; v < index.length; v++) {
            index[v] = root[v] == which ? builder.vertex(mesh.x(v), mesh.y(v), mesh.z(v)) : -1;
        }
        int[] corners = mesh.triangles();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (root[corners[3 * t]] == which) {
                builder.triangle(
                        index[corners[3 * t]],
                        index[corners[3 * t + 1]],
                        index[corners[3 * t + 2]],
                        mesh.surfaces()[t]);
            }
        }
        return builder.build();
    }

    private static int[] roots(Mesh mesh) {
        int[] parent = new int[mesh.vertexCount()];
        for (int v = 0; v < parent.length; v++) {
            parent[v] = v;
        }
        int[] corners = mesh.triangles();
        for (int h = 0; h < corners.length; h++) {
            int a = MeshMeasures.root(parent, corners[h]);
            int b = MeshMeasures.root(parent, corners[h % 3 == 2 ? h - 2 : h + 1]);
            parent[Math.max(a, b)] = Math.min(a, b);
        }
        for (int v = 0; v < parent.length; v++) {
            parent[v] = MeshMeasures.root(parent, v);
        }
        return parent;
    }
}
