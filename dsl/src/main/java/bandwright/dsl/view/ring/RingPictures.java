// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.pattern.AsCast;
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

    /**
     * Parts as set: with their stones, over which pins lie.
     *
     * @param side from where, for the words that stand for the picture
     */
    public static Picture picture(Ring ring, Set<String> parts, Camera camera, String side) {
        return new Renderer(RingScene.of(ring, parts)).picture(camera, WIDTH, HEIGHT, words(ring, parts, side));
    }

    /** Parts from the caster: without stones and without what the bench cuts, pins standing. */
    public static Picture asCast(Ring ring, Set<String> parts, Camera camera, String side) {
        String pins = ring.design().prongs().stream()
                .filter(prongs -> parts.contains(prongs.part()))
                .map(prongs -> "; " + prongs.name() + " standing")
                .collect(Collectors.joining());
        String words = "Picture of " + title(ring) + " as cast, without stones, from " + side + ": "
                + String.join("; ", metals(ring.of(AsCast.of(ring.design())), parts)) + pins;
        return new Renderer(RingScene.asCast(ring, parts)).picture(camera, WIDTH, HEIGHT, words);
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
        boolean set = ring.design().stoneRows().stream().anyMatch(row -> parts.contains(row.part()));
        return "Picture of " + title(ring) + (set ? " as set" : "") + " from " + side + ": "
                + String.join("; ", seen(ring, parts));
    }

    private static String title(Ring ring) {
        return ring.design().title().orElse("the ring");
    }

    private static List<String> metals(Ring ring, Set<String> parts) {
        return ring.sections().stream()
                .filter(section -> parts.contains(section.name()))
                .map(section -> section.name() + " in " + section.metal().name())
                .toList();
    }

    private static List<String> seen(Ring ring, Set<String> parts) {
        List<String> seen = new ArrayList<>(metals(ring, parts));
        for (StoneRow row : ring.design().stoneRows()) {
            if (parts.contains(row.part())) {
                seen.add(ring.layout(row.name()).count() + " stones, "
                        + row.cut().word() + " " + row.material().name());
            }
        }
        SetPins.among(ring.design(), parts).forEach(prongs -> seen.add(prongs.name() + " laid over their stones"));
        return seen;
    }
}
