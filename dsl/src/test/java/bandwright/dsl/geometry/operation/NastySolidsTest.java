// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;
import bandwright.dsl.geometry.solid.MeshMeasures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Bodies that touch, coincide, graze or nearly do, as files. */
class NastySolidsTest {
    static List<SolidCase> sound() {
        return SolidCase.in(SolidCase.FOLDER);
    }

    @Test
    void there_are_cases() {
        assertThat(sound()).hasSizeGreaterThan(80);
    }

    @ParameterizedTest
    @MethodSource("sound")
    void all_three_booleans_are_closed_and_hold_what_they_should(SolidCase solid) {
        check(solid);
    }

    /** The measure itself: two balls in one mesh that pass through each other. */
    @Test
    void a_crossing_is_seen() {
        MeshBuilder builder = new MeshBuilder(8, 8);
        builder.append(Primitives.ball(new double[] {0, 0, 0}, 1, 12));
        builder.append(Primitives.ball(new double[] {0.7, 0.1, 0.2}, 1, 12));
        assertThat(SelfCrossing.depth(builder.build())).isGreaterThan(1e-3);
    }

    private static void check(SolidCase solid) {
        check(solid.a(), solid.b(), solid);
        check(solid.b(), solid.a(), solid);
    }

    private static void check(Mesh a, Mesh b, SolidCase solid) {
        Mesh and = SolidBoolean.intersection(a, b);
        Mesh or = SolidBoolean.union(a, b);
        Mesh less = SolidBoolean.difference(a, b);
        assertThat(MeshMeasures.closednessFault(and)).as("intersection").isEmpty();
        assertThat(MeshMeasures.closednessFault(or)).as("union").isEmpty();
        assertThat(MeshMeasures.closednessFault(less)).as("difference").isEmpty();
        // What the boolean promises: no surface passes through itself by more than this.
        assertThat(SelfCrossing.depth(and)).as("crossing of the intersection").isLessThan(1e-6);
        assertThat(SelfCrossing.depth(or)).as("crossing of the union").isLessThan(1e-6);
        assertThat(SelfCrossing.depth(less)).as("crossing of the difference").isLessThan(1e-6);
        double common = MeshMeasures.volume(and);
        double first = MeshMeasures.volume(a);
        assertThat(common).as("intersection").isEqualTo(solid.common(), within(solid.within()));
        // Between themselves the three agree far better than facets do with rounds.
        assertThat(MeshMeasures.volume(less)).as("difference").isEqualTo(first - common, within(1e-7));
        assertThat(MeshMeasures.volume(or))
                .as("union")
                .isEqualTo(first + MeshMeasures.volume(b) - common, within(1e-7));
    }
}
