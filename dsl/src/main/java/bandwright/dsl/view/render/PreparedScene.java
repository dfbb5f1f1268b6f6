// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.material.LinearColour;

/** A scene with all that every picture of it needs. */
final class PreparedScene {
    /** How many times more than once light has been thrown back by the most colourful metal there could be. */
    private static final double DEPTH = 1.2;

    private final TriangleSoup soup;
    private final TriangleTree tree;
    private final GroundShadow shadow;
    private final List<Finish> finishes;
    private final List<LinearColour> colours;
    private final List<@Nullable StoneSolid> stones = new ArrayList<>();

    PreparedScene(Scene scene) {
        soup = new TriangleSoup(scene);
        tree = new TriangleTree(soup);
        shadow = new GroundShadow(soup);
        finishes = scene.bodies().stream().map(Body::finish).toList();
        colours = finishes.stream().map(PreparedScene::colour).toList();
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

    /** What metal tints the light by that it throws back, and a body its mirror image in another. */
    LinearColour colour(int body) {
        return colours.get(body);
    }

    private static LinearColour colour(Finish finish) {
        return finish instanceof Finish.Metal metal ? deepened(metal.reflectance()) : ((Finish.Stone) finish).body();
    }

    /**
     * A colour as light has it that metal has thrown back more than once, as it does between one's hands, from the ring itself
     * and in the fine marks of its polish; the more colourful, the more that shows. Our approximation, by eye.
     */
    private static LinearColour deepened(LinearColour colour) {
        double most = Math.max(1e-9, Math.max(colour.red(), Math.max(colour.green(), colour.blue())));
        double least = Math.min(colour.red(), Math.min(colour.green(), colour.blue()));
        double colourful = 1 - least / most;
        double more = DEPTH * colourful * colourful;
        return new LinearColour(
                colour.red() * StrictMath.pow(colour.red() / most, more),
                colour.green() * StrictMath.pow(colour.green() / most, more),
                colour.blue() * StrictMath.pow(colour.blue() / most, more));
    }
}
