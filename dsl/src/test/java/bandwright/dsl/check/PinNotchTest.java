// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class PinNotchTest {
    /** A pin of 1 mm: alone, opposite each other, side by side, and through. */
    @ParameterizedTest
    @CsvSource({"0.4, 0, 180, 0.4", "0.4, 0.3, 180, 0.7", "0.4, 0.3, 90, 0.4", "0.6, 0.5, 180, 1", "-0.1, 0.2, 180, 0.2"
    })
    void notches_of_two_girdles(double first, double second, double degrees, double share) {
        assertThat(new PinNotch(0.5, first, second, Math.toRadians(degrees)).share())
                .isCloseTo(share, within(1e-9));
    }

    /** Against points of the circle that both notches leave. */
    @ParameterizedTest
    @CsvSource({"0.3, 0.25, 150", "0.2, 0.2, 120", "0.4, 0.45, 170"})
    void notches_at_an_angle_leave_the_least_width_of_what_is_left(double first, double second, double degrees) {
        double least = Double.POSITIVE_INFINITY;
        double turn = Math.toRadians(degrees);
        for (int n = 0; n < 720; n++) {
            double way = Math.PI * n / 720;
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double x = -0.5; x <= 0.5; x += 0.004) {
                for (double y = -0.5; y <= 0.5; y += 0.004) {
                    boolean stands = x * x + y * y <= 0.25
                            && x <= 0.5 - first
                            && x * Math.cos(turn) + y * Math.sin(turn) <= 0.5 - second;
                    double along = x * Math.cos(way) + y * Math.sin(way);
                    low = stands ? Math.min(low, along) : low;
                    high = stands ? Math.max(high, along) : high;
                }
            }
            least = Math.min(least, high - low);
        }

        assertThat(new PinNotch(0.5, first, second, turn).share()).isCloseTo(1 - least, within(0.01));
    }
}
