// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.operation.SelfCrossing;
import bandwright.dsl.geometry.solid.MeshMeasures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

/** Bands that change on their way round with grooves that take part of it, by chance. */
class RandomBandTest {
    @Test
    void random_bands_close_and_lose_nothing() {
        Random random = new Random(20_260);
        List<String> rings = new ArrayList<>();
        int times = System.getenv("BANDWRIGHT_LONG_TESTS") == null ? 1 : 10;
        for (int i = 0; i < 100 * times; i++) {
            rings.add(randomBand(random) + "\n" + randomGroove(random));
        }
        rings.parallelStream().forEach(text -> {
            String band = text.substring(0, text.indexOf("cut trough"));
            Ring ring = TextRing.of(text);
            ring.bodies()
                    .forEach(body -> assertThat(MeshMeasures.closednessFault(body.mesh()))
                            .as(text)
                            .isEmpty());
            ring.bodies()
                    .forEach(body ->
                            assertThat(SelfCrossing.depth(body.mesh())).as(text).isLessThan(1e-6));
            double sum = ring.bodies().stream().mapToDouble(Body::volumeMm3).sum();
            assertThat(sum).as(text).isCloseTo(TextRing.of(band).body("shank").volumeMm3(), withinPercentage(1e-6));
        });
    }

    private static String randomBand(Random random) {
        int stations = 1 + random.nextInt(4);
        StringBuilder text = new StringBuilder();
        List<String> places = new ArrayList<>();
        double start = random.nextInt(360);
        for (int i = 0; i < stations; i++) {
            double height = between(random, 1.5, 2.2);
            String sizes = "(width: " + mm(between(random, 4.5, 6)) + ", height: " + mm(height);
            String form = switch (random.nextInt(7)) {
                case 0 -> "rectangle" + sizes + ")";
                case 1 -> "d-shape" + sizes + ", side: " + mm(0.6 * height) + ")";
                case 2 -> "half-round" + sizes + ")";
                case 3 -> "court" + sizes + ", side: " + mm(0.7 * height) + ", inside: 0.15 mm)";
                case 4 -> "knife-edge" + sizes + ", side: " + mm(0.6 * height) + ")";
                case 5 -> "bevelled" + sizes + ", bevel: 0.4 mm)";
                default -> "flat" + sizes + ", edge: 0.2 mm)";
            };
            text.append("profile p").append(i).append(" = ").append(form).append('\n');
            places.add("p" + i
                    + (stations == 1
                            ? ""
                            : String.format(
                                    Locale.ROOT, " at %.3f deg", start + i * 360.0 / stations + random.nextInt(30))));
        }
        return text + "band shank { finger ISO 57  profile " + String.join(", ", places) + "  metal silver-925 }\n";
    }

    private static String randomGroove(Random random) {
        String around = random.nextInt(4) == 0
                ? "full"
                : String.format(Locale.ROOT, "%.3f deg centred %d deg", between(random, 25, 330), random.nextInt(360));
        return "cut trough from shank { width " + mm(between(random, 0.6, 1.8)) + "  depth "
                + mm(between(random, 0.2, 0.7))
                + "  across " + mm(between(random, -0.2, 0.2)) + "  around " + around
                + (random.nextBoolean() ? "  ends round" : "")
                + (random.nextInt(3) == 0
                        ? "  inside"
                        : random.nextInt(3) == 0 ? "  let-in from fingertip leaving collar" : "")
                + "  keep stripe in red-gold-585 }";
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static String mm(double value) {
        return String.format(Locale.ROOT, "%.4f mm", value);
    }
}
