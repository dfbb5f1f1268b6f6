// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.view.Picture;
import bandwright.dsl.view.image.Canvas;
import bandwright.dsl.view.image.Pixels;
import bandwright.dsl.view.image.StrokeText;
import bandwright.dsl.view.render.Camera;
import bandwright.dsl.view.render.Renderer;

/** Shaded pictures of a ring or its parts. */
public final class RingPictures {
    private static final int WIDTH = 800;
    private static final int HEIGHT = 600;
    private static final int SMALL_WIDTH = 400;
    private static final int SMALL_HEIGHT = 320;
    /** For the name over a small picture, pixels. */
    private static final int HEAD = 40;

    private RingPictures() {}

    /** @param side from where, for the words that stand for the picture */
    public static Picture picture(Ring ring, Set<String> parts, Camera camera, String side) {
        return new Renderer(RingScene.of(ring, parts)).picture(camera, WIDTH, HEIGHT, words(ring, parts, side));
    }

    /**
     * Several rings beside one another, each from its three-quarter side under its name.
     *
     * @param rings by name, in the order in which they stand
     */
    public static Picture sideBySide(Map<String, Ring> rings) {
        int across = rings.size();
        Pixels all = new Pixels(across * SMALL_WIDTH, SMALL_HEIGHT + HEAD, 0xffffff);
        Canvas canvas = new Canvas(all);
        List<String> words = new ArrayList<>();
        int left = 0;
        for (Map.Entry<String, Ring> each : rings.entrySet()) {
            Ring ring = each.getValue();
            Set<String> parts = ring.sections().stream().map(PartSection::name).collect(Collectors.toSet());
            Renderer renderer = new Renderer(RingScene.of(ring, parts));
            all.put(renderer.measured(Camera.THREE_QUARTER, SMALL_WIDTH, SMALL_HEIGHT), left, HEAD);
            double middle = left + SMALL_WIDTH / 2.0;
            StrokeText.draw(canvas, each.getKey(), middle, HEAD - 12, 22, StrokeText.Anchor.MIDDLE, 0x222222);
            words.add(each.getKey() + ": " + String.join("; ", seen(ring, parts)));
            left += SMALL_WIDTH;
        }
        return all.toPicture("Pictures side by side. " + String.join(". ", words));
    }

    /** A small square picture of parts without stones, as a PNG file that has the same bytes on every machine. */
    public static byte[] thumbnail(Ring ring, Set<String> parts, int pixels) {
        return new Renderer(RingScene.metal(ring, parts))
                .pixels(Camera.THREE_QUARTER, pixels, pixels)
                .toPlainPng();
    }

    /** The camera that has a place on the ring straight before it: 0 deg is the crown. */
    public static Camera facing(double degrees) {
        double turn = degrees - 360 * Math.floor(degrees / 360);
        // Counter-clockwise from the top, seen from the fingertip, is to the left of a camera there.
        return turn <= 180 ? Camera.from(270, 90 - turn) : Camera.from(90, turn - 270);
    }

    private static String words(Ring ring, Set<String> parts, String side) {
        return "Picture of "
                + ring.design().title().orElse("the ring")
                + " from " + side + ": "
                + String.join("; ", seen(ring, parts));
    }

    private static List<String> seen(Ring ring, Set<String> parts) {
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
        return seen;
    }
}
