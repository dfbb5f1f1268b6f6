// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class RegionBooleanTest {
    @Test
    void laws_hold_for_six_hundred_pairs_of_figures() {
        Random random = new Random(11);
        for (int i = 0; i < 600; i++) {
            Region a = Figures.random(random);
            Region b = Figures.random(random);
            Moments both = a.moments().plus(b.moments());
            Moments or = RegionBoolean.union(a, b).moments();
            Moments and = RegionBoolean.intersection(a, b).moments();
            same(or.plus(and), both, "union and intersection of pair " + i);
            Moments less = RegionBoolean.difference(a, b).moments();
            same(less.plus(and), a.moments(), "cut and kept part of pair " + i);
        }
    }

    private static void same(Moments found, Moments expected, String what) {
        assertThat(found.area()).as("area, %s", what).isEqualTo(expected.area(), within(1e-9));
        assertThat(found.aboutX()).as("moment about x, %s", what).isEqualTo(expected.aboutX(), within(1e-8));
        assertThat(found.aboutY()).as("moment about y, %s", what).isEqualTo(expected.aboutY(), within(1e-8));
    }

    /**
     * The circular segment beyond a chord at distance d: area r² acos(d/r) − d√(r² − d²), first moment about the line through
     * the centre ⅔(r² − d²)^(3/2). Bronstein, Semendjajew: Taschenbuch der Mathematik, plane geometry.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-1.4, -0.75, -0.1, 0, 0.3, 0.9, 1.4999})
    void circle_cut_by_a_rectangle(double d) {
        double r = 1.5;
        Region segment = RegionBoolean.intersection(Figures.circle(0, 0, r), Figures.rectangle(d, -2, 2, 2));
        double half = r * r - d * d;
        assertThat(segment.moments().area())
                .isEqualTo(r * r * StrictMath.acos(d / r) - d * Math.sqrt(half), within(1e-12));
        assertThat(segment.moments().aboutY()).isEqualTo(2.0 / 3 * half * Math.sqrt(half), within(1e-12));
        assertThat(segment.moments().aboutX()).isEqualTo(0, within(1e-12));
    }

    /** The lens of two circles of one size: 2r² acos(d/2r) − ½d√(4r² − d²). */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 1, 1.7, 1.99})
    void lens_of_two_circles(double d) {
        Region lens = RegionBoolean.intersection(Figures.circle(0, 9, 1), Figures.circle(d, 9, 1));
        double area = 2 * StrictMath.acos(d / 2) - d / 2 * Math.sqrt(4 - d * d);
        assertThat(lens.moments().area()).isEqualTo(area, within(1e-12));
        assertThat(lens.moments().centroid().x()).isEqualTo(d / 2, within(1e-9));
        assertThat(lens.moments().centroid().y()).isEqualTo(9, within(1e-9));
    }

    @Test
    void what_only_touches_shares_nothing() {
        Region left = Figures.rectangle(0, 0, 1, 1);
        assertThat(RegionBoolean.intersection(left, Figures.rectangle(1, 0, 2, 1))
                        .isEmpty())
                .isTrue();
        assertThat(RegionBoolean.intersection(left, Figures.rectangle(1, 1, 2, 2))
                        .isEmpty())
                .isTrue();
        Region together = RegionBoolean.union(left, Figures.rectangle(1, 0, 2, 1));
        assertThat(together.pieces()).hasSize(1);
        assertThat(together.moments().area()).isEqualTo(2, within(1e-15));
        assertThat(RegionBoolean.difference(left, left).isEmpty()).isTrue();
    }

    @Test
    void a_circle_inside_leaves_a_hole() {
        Region washer = RegionBoolean.difference(Figures.circle(0, 9, 2), Figures.circle(0.3, 9.1, 1));
        assertThat(washer.pieces()).hasSize(1);
        assertThat(washer.pieces().get(0).holes()).hasSize(1);
        assertThat(washer.moments().area()).isEqualTo(3 * StrictMath.PI, within(1e-12));
    }
}
