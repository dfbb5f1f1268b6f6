// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.view.Picture;
import bandwright.dsl.view.render.Camera;
import bandwright.dsl.view.render.Renderer;

/** Shaded pictures of a ring or its parts. */
public final class RingPictures {
    private static final int WIDTH = 800;
    private static final int HEIGHT = 600;

    private RingPictures() {}

    /** @param side from where, for the words that stand for the picture */
    public static Picture picture(Ring ring, Set<String> parts, Camera camera, String side) {
        return new Renderer(RingScene.of(ring, parts)).picture(camera, WIDTH, HEIGHT, words(ring, parts, side));
    }

    /** The camera that has a place on the ring straight before it: 0 deg is the crown. */
    public static Camera facing(double degrees) {
        double turn = degrees - 360 * Math.floor(degrees / 360);
        // Counter-clockwise from the top, seen from the fingertip, is to the left of a camera there.
        return turn <= 180 ? Camera.from(270, 90 - turn) : Camera.from(90, turn - 270);
    }

    private static String words(Ring ring, Set<String> parts, String side) {
        List<String> seen = new ArrayList<>();
        for (Body body : ring.bodies()) {
            if (parts.contains(body.name())) {
                seen.add(body.name() + " in " + body.section().metal().name());
            }
        }
        for (StoneRow row : ring.design().stoneRows()) {
            if (parts.contains(row.part())) {
                seen.add(ring.layout(row.name()).count() + " stones, "
                        + row.cut().word() + " " + row.material().name());
            }
        }
        return "Picture of "
                + ring.design().title().orElse("the ring")
                + " from " + side + ": "
                + String.join("; ", seen);
    }
}
