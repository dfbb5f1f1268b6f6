// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.material.LinearColour;

/** A scene with all that every picture of it needs. */
final class PreparedScene {
    private final TriangleSoup soup;
    private final TriangleTree tree;
    private final GroundShadow shadow;
    private final List<Finish> finishes;
    private final List<@Nullable StoneSolid> stones = new ArrayList<>();

    PreparedScene(Scene scene) {
        soup = new TriangleSoup(scene);
        tree = new TriangleTree(soup);
        shadow = new GroundShadow(soup);
        finishes = scene.bodies().stream().map(Body::finish).toList();
        for (Body body : scene.bodies()) {
            stones.add(body.finish() instanceof Finish.Stone ? new StoneSolid(body.mesh()) : null);
        }
    }

    TriangleSoup soup() {
        return soup;
    }

    TriangleTree tree() {
        return tree;
    }

    GroundShadow shadow() {
        return shadow;
    }

    Finish finish(int body) {
        return finishes.get(body);
    }

    StoneSolid stone(int body) {
        StoneSolid solid = stones.get(body);
        if (solid == null) {
            throw new IllegalStateException("Body " + body + " is no stone");
        }
        return solid;
    }

    /** What a body's mirror image in another is tinted by. */
    LinearColour colour(int body) {
        Finish finish = finishes.get(body);
        return finish instanceof Finish.Metal metal ? metal.reflectance() : ((Finish.Stone) finish).body();
    }
}
