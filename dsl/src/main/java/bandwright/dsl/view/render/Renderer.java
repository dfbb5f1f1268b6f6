// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.BitSet;

import bandwright.dsl.view.Picture;
import bandwright.dsl.view.image.Pixels;

/**
 * Takes pictures of a scene. Making one sorts the scene's triangles, so use it again for further views.
 *
 * <p>Each pixel is looked at once; where neighbours differ (an edge, a facet, a highlight), and on every stone, at four to
 * sixteen points in a fixed pattern. What metal mirrors is found by casting rays, unless the same metal round there mirrors
 * nothing but the room. Rows are shared out over all cores; each pixel depends on nothing but the scene and on what was seen
 * in a step before, so the number of threads cannot show.
 */
public final class Renderer {
    /** Squared difference of colour, each channel 0 to 1 as the eye counts it, from which a pixel is looked at finely. */
    private static final double ROUGH = 0.003;

    /** Rows of pixels that are worked on together. */
    private static final int ROWS = 16;

    private final PreparedScene scene;

    public Renderer(Scene scene) {
        this.scene = new PreparedScene(scene);
    }

    /** A picture with a scale bar, as a PNG file. */
    public Picture picture(Camera camera, int width, int height, String alternativeText) {
        return measured(camera, width, height).toPicture(alternativeText);
    }

    /** The picture with a scale bar. */
    public Pixels measured(Camera camera, int width, int height) {
        Viewpoint viewpoint = new Viewpoint(camera, scene.soup(), width, height);
        Pixels pixels = pixels(viewpoint, width, height);
        ScaleBar.draw(pixels, viewpoint.pixelsPerMm());
        return pixels;
    }

    /** The picture without the scale bar. */
    public Pixels pixels(Camera camera, int width, int height) {
        return pixels(new Viewpoint(camera, scene.soup(), width, height), width, height);
    }

    /** How many pixels a millimetre takes in the middle of such a picture. */
    public double pixelsPerMm(Camera camera, int width, int height) {
        return new Viewpoint(camera, scene.soup(), width, height).pixelsPerMm();
    }

    private Pixels pixels(Viewpoint viewpoint, int width, int height) {
        Visible visible = new Visible(viewpoint, scene.soup(), width, height);
        FirstLook first = new FirstLook(width, height);
        BitSet all = new BitSet(width * height);
        all.set(0, width * height);
        Visible.Seen[] middles = new Visible.Seen[(height + ROWS - 1) / ROWS];
        Parts.each(height, ROWS, (from, to) -> {
            Visible.Seen seen = visible.look(from, to, Points.MIDDLE, all);
            middles[from / ROWS] = seen;
            Sampler sampler = new Sampler(scene, viewpoint, height);
            for (int y = from; y < to; y += 2) {
                for (int x = 0; x < width; x += 2) {
                    sampler.look(x + 0.5, y + 0.5, seen.at(x, y, 0), Sampler.Open.NOWHERE);
                    first.put(x, y, sampler);
                }
            }
        });
        Parts.each(height, ROWS, (from, to) -> {
            Sampler sampler = new Sampler(scene, viewpoint, height);
            for (int y = from; y < to; y++) {
                for (int x = 1 - y % 2; x < width; x += 2 - y % 2) {
                    sampler.look(x + 0.5, y + 0.5, middles[from / ROWS].at(x, y, 0), first::isOpenBetween);
                    first.put(x, y, sampler);
                }
            }
        });
        Pixels pixels = new Pixels(width, height, 0);
        Parts.each(height, ROWS, (from, to) -> {
            BitSet rough = first.rough(from, to, ROUGH);
            Visible.Seen seen = visible.look(from, to, Points.SIXTEEN, rough);
            FinePixel fine = new FinePixel(new Sampler(scene, viewpoint, height), seen, first::isOpen);
            for (int y = from; y < to; y++) {
                for (int x = 0; x < width; x++) {
                    boolean again = rough.get(y * width + x);
                    pixels.set(x, y, again ? fine.colour(x, y) : first.colour(x, y));
                }
            }
        });
        return pixels;
    }
}
