// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.TextRing;
import bandwright.dsl.view.image.Pixels;
import bandwright.dsl.view.render.Camera;
import bandwright.dsl.view.render.Renderer;
import bandwright.dsl.view.render.Scene;

/** How long a picture of the reference ring as set takes, step by step, everything made anew but the bodies: run it at rest. */
final class PictureTimes {
    private static final int WARM_UP = 20;
    private static final int PICTURES = 40;
    private static final List<String> STEPS = List.of("scene", "normals, tree, shadow", "pixels", "PNG", "all");

    private static final String RING = """
            profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)
            band shank { finger ISO 57  profile dome  metal white-gold-585-pd }
            cut trough from shank {
              width 1.9 mm  depth 1 mm  keep stripe in red-gold-585  let-in from fingertip leaving collar
            }
            stone-row lights on stripe {
              stone round diamond 1.5 mm  around full  spacing at least 0.15 mm  sink 0.25 mm
            }
            cut seats for lights from stripe, shank { hole 0.8 mm  bearing 0.35 mm  clearance 0.01 mm }
            prongs pins for lights on stripe { diameter 0.55 mm  rise 0.28 mm  root 0.6 mm  across 0.42 mm }
            """;

    private PictureTimes() {}

    public static void main(String[] arguments) {
        Ring ring = TextRing.of(RING);
        ring.bodies().forEach(body -> body.mesh());
        double[][] times = new double[STEPS.size()][PICTURES];
        for (int i = -WARM_UP; i < PICTURES; i++) {
            long[] at = new long[STEPS.size()];
            at[0] = System.nanoTime();
            Scene scene = RingScene.of(ring, Set.of("shank", "stripe", "collar"));
            at[1] = System.nanoTime();
            Renderer renderer = new Renderer(scene);
            at[2] = System.nanoTime();
            Pixels pixels = renderer.measured(Camera.THREE_QUARTER, 800, 600);
            at[3] = System.nanoTime();
            pixels.toPicture("the reference ring");
            at[4] = System.nanoTime();
            for (int step = 0; i >= 0 && step < STEPS.size(); step++) {
                long took = step + 1 < STEPS.size() ? at[step + 1] - at[step] : at[step] - at[0];
                times[step][i] = took / 1e6;
            }
        }
        for (int step = 0; step < STEPS.size(); step++) {
            Arrays.sort(times[step]);
            System.out.println(String.format(
                    Locale.ROOT,
                    "%s: least %.0f ms, median %.0f ms",
                    STEPS.get(step),
                    times[step][0],
                    times[step][PICTURES / 2]));
        }
    }
}
