// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.stream.IntStream;

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
    /** Rows and columns of the fine pattern in a pixel. */
    private static final int FINE = 4;

    /** Squared difference of colour, each channel 0 to 1 as the eye counts it, from which a pixel is looked at finely. */
    private static final double ROUGH = 0.003;

    private static final int FIRST = 4;

    /** Four that cover the pixel evenly, then the rest. */
    private static final int[] ORDER = {1, 7, 8, 14, 0, 2, 3, 4, 5, 6, 9, 10, 11, 12, 13, 15};

    /** Between the lightest and the darkest of the first rays, all channels of 0 to 1 together. */
    private static final double AGREED = 0.16;

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
        FirstLook first = new FirstLook(width, height);
        IntStream.range(0, height).parallel().forEach(y -> {
            Sampler sampler = new Sampler(scene, viewpoint, height);
            for (int x = 0; x < width; x++) {
                sampler.look(x + 0.5, y + 0.5);
                first.put(x, y, sampler);
            }
        });
        Pixels pixels = new Pixels(width, height, 0);
        IntStream.range(0, height).parallel().forEach(y -> {
            Sampler sampler = new Sampler(scene, viewpoint, height);
            for (int x = 0; x < width; x++) {
                pixels.set(x, y, first.isRough(x, y, ROUGH) ? fine(sampler, x, y) : first.colour(x, y));
            }
        });
        return pixels;
    }

    /** Four rays, and if they do not agree, twelve more. */
    private static int fine(Sampler sampler, int x, int y) {
        double red = 0;
        double green = 0;
        double blue = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        int count = 0;
        while (count < FIRST || (count < FINE * FINE && most - least > AGREED)) {
            // A square pattern turned so that no two of its points share a row or column.
            int point = ORDER[count++];
            int row = point / FINE;
            int column = point % FINE;
            sampler.look(x + (column + (row + 0.5) / FINE) / FINE, y + (row + (FINE - 1 - column + 0.5) / FINE) / FINE);
            red += sampler.red;
            green += sampler.green;
            blue += sampler.blue;
            double light = sampler.red + sampler.green + sampler.blue;
            least = Math.min(least, light);
            most = Math.max(most, light);
        }
        return Srgb.code(red / count, green / count, blue / count);
    }
}
