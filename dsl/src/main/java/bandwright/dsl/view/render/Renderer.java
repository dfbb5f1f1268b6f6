// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.BitSet;

import bandwright.dsl.view.Picture;
import bandwright.dsl.view.image.Pixels;
import bandwright.dsl.view.image.Srgb;

/**
 * Takes pictures of a scene. Making one sorts the scene's triangles, so use it again for further views.
 *
 * <p>Each pixel gets one ray; where neighbours differ (an edge, a facet, a highlight), and on every stone, four to sixteen in
 * a fixed pattern. Rows are shared out over all cores; each pixel depends on nothing but the scene, so the number of threads cannot
 * show.
 */
public final class Renderer {
    /** Squared difference of colour, each channel 0 to 1 as the eye counts it, from which a pixel is looked at finely. */
    private static final double ROUGH = 0.003;

    private static final int FIRST = 4;

    /** Between the lightest and the darkest of the first rays, all channels of 0 to 1 together. */
    private static final double AGREED = 0.16;

    /** By which share the mean may have changed from four points to eight to stay with it. */
    private static final double STEADY = 0.03;

    /** Rows of pixels that are worked on together. */
    private static final int ROWS = 16;

    /** Each turn's place in the pixel. */
    private static final double[] RIGHT = new double[Points.SIXTEEN.count()];

    private static final double[] DOWN = new double[RIGHT.length];

    static {
        for (int turn = 0; turn < RIGHT.length; turn++) {
            int line = Points.SIXTEEN.line(turn);
            RIGHT[turn] = Points.SIXTEEN.right()[line];
            DOWN[turn] = Points.SIXTEEN.down(line);
        }
    }

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
        Parts.each(height, ROWS, (from, to) -> {
            Visible.Seen seen = visible.look(from, to, Points.MIDDLE, all);
            Sampler sampler = new Sampler(scene, viewpoint, height);
            for (int y = from; y < to; y++) {
                for (int x = 0; x < width; x++) {
                    sampler.look(x + 0.5, y + 0.5, seen.at(x, y, 0), null);
                    first.put(x, y, sampler);
                }
            }
        });
        Pixels pixels = new Pixels(width, height, 0);
        Parts.each(height, ROWS, (from, to) -> {
            BitSet rough = first.rough(from, to, ROUGH);
            Visible.Seen seen = visible.look(from, to, Points.SIXTEEN, rough);
            Sampler sampler = new Sampler(scene, viewpoint, height);
            for (int y = from; y < to; y++) {
                for (int x = 0; x < width; x++) {
                    boolean fine = rough.get(y * width + x);
                    pixels.set(x, y, fine ? fine(sampler, seen, first, x, y) : first.colour(x, y));
                }
            }
        });
        return pixels;
    }

    /** Four points, and if they do not agree, more until the mean is steady or there are sixteen. */
    private static int fine(Sampler sampler, Visible.Seen seen, FirstLook first, int x, int y) {
        double red = 0;
        double green = 0;
        double blue = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double before = 0;
        int count = 0;
        while (count < Points.SIXTEEN.count()) {
            sampler.look(x + RIGHT[count], y + DOWN[count], seen.at(x, y, count), first);
            count++;
            red += sampler.red;
            green += sampler.green;
            blue += sampler.blue;
            double light = sampler.red + sampler.green + sampler.blue;
            least = Math.min(least, light);
            most = Math.max(most, light);
            double mean = (red + green + blue) / count;
            if (count == FIRST) {
                before = mean;
                if (most - least <= AGREED) {
                    break;
                }
            } else if (count == 2 * FIRST && Math.abs(mean - before) < STEADY * mean) {
                break;
            }
        }
        return Srgb.code(red / count, green / count, blue / count);
    }
}
