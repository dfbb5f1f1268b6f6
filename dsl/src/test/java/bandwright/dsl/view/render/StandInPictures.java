// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

import bandwright.dsl.view.Picture;
import bandwright.dsl.view.image.Pixels;

/** Writes pictures of the stand-in ring for a look at them, and says how long they took. Argument: a folder. */
final class StandInPictures {
    private StandInPictures() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        Map<String, Camera> cameras = new LinkedHashMap<>();
        cameras.put("three-quarter", Camera.THREE_QUARTER);
        cameras.put("top", Camera.TOP);
        cameras.put("front", Camera.FRONT);
        cameras.put("side", Camera.SIDE);
        Scene scene = StandInRing.scene();
        int triangles = scene.bodies().stream()
                .mapToInt(body -> body.mesh().triangleCount())
                .sum();
        for (int round = 0; round < Integer.getInteger("rounds", 3); round++) {
            for (Map.Entry<String, Camera> camera : cameras.entrySet()) {
                long start = System.nanoTime();
                Renderer renderer = new Renderer(scene);
                long prepared = System.nanoTime();
                Pixels pixels = renderer.pixels(camera.getValue(), 800, 600);
                long cast = System.nanoTime();
                Picture picture = renderer.picture(camera.getValue(), 800, 600, "");
                long end = System.nanoTime();
                Files.write(folder.resolve(camera.getKey() + ".png"), picture.png());
                System.out.printf(
                        "%s: %d triangles, prepared %d ms, rays %d ms, picture %d ms, %d bytes%n",
                        camera.getKey(),
                        triangles,
                        (prepared - start) / 1_000_000,
                        (cast - prepared) / 1_000_000,
                        (end - cast) / 1_000_000,
                        picture.png().length + pixels.at(0, 0) % 1);
            }
        }
    }
}
