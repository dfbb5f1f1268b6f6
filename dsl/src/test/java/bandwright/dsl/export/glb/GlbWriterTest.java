// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.glb;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import bandwright.dsl.Answer;
import bandwright.dsl.Workbench;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.TextRing;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.view.Turntable;

import static org.assertj.core.api.Assertions.assertThat;

/** The file itself; that outside readers take it is shown in the kernel's tests, by the format's own validator. */
class GlbWriterTest {
    private static final String HARBOUR_LIGHT = read(Path.of("src/test/golden/workbench/harbour-light.ring"));

    private static final String HALVES = """
            profile dome = d-shape(width: 4.6 mm, height: 2 mm, side: 1.25 mm)
            band shank { finger ISO 57  profile dome  metal silver-925 }
            cut trough from shank {
              width 1.9 mm  depth 1 mm
              keep stripe in red-gold-585
              let-in in halves at 90 deg
            }
            view stripe
            """;

    @Test
    void the_file_is_small_where_the_ring_repeats() {
        assertThat(viewed(HARBOUR_LIGHT + "\nview ring\n").glb().length).isBetween(20_000, 300_000);
    }

    /** A line round the most of a ring, of which nothing repeats. */
    private static final String LOPSIDED = """
            profile bar = flat(width: 5 mm, height: 2.2 mm)
            band shank { finger ISO 57  profile bar  metal yellow-gold-750 }
            stone-row lights on shank {
              stone round diamond 1.5 mm  around 300 deg  spacing at least 0.2 mm  sink 0.2 mm
            }
            cut seats for lights from shank { hole 0.8 mm  bearing 0.35 mm  clearance 0.01 mm }
            prongs pins for lights on shank { diameter 0.5 mm  rise 0.3 mm  across 0.42 mm }
            view ring
            """;

    @Test
    void the_page_s_file_is_small_where_nothing_repeats() {
        assertThat(viewed(LOPSIDED).glb().length).isBetween(500_000, 1_200_000);
    }

    /** Each corner of the packed mesh is one of the ring's, no further off than half a step in each direction. */
    @Test
    void steps_are_a_quarter_of_a_thousandth_at_most_from_the_ring() {
        Ring ring = TextRing.of(LOPSIDED.replace("view ring", ""));
        Mesh mesh = ring.body("shank").mesh();
        GlbMesh packed = GlbMesh.inSteps(mesh, ring.surfaces());

        assertThat(packed.step()).isEqualTo(1.0 / 2048);
        Set<List<Long>> places = new HashSet<>();
        for (int v = 0; v < mesh.vertexCount(); v++) {
            places.add(List.of(steps(mesh.x(v)), steps(mesh.y(v)), steps(mesh.z(v))));
        }
        for (int v = 0; v < packed.vertexCount(); v++) {
            float[] at = packed.positions();
            List<Long> place = List.of(steps(at[3 * v]), steps(at[3 * v + 1]), steps(at[3 * v + 2]));
            assertThat(places.contains(place)).as("%s", place).isTrue();
        }
        assertThat(packed.triangles()).hasSize(3 * mesh.triangleCount());
    }

    private static long steps(double mm) {
        double steps = mm * 2048;
        assertThat(Math.abs(steps)).isLessThan(32767);
        return Math.round(steps);
    }

    @Test
    void header_and_chunks_say_how_long_they_are() {
        byte[] glb = viewed(HARBOUR_LIGHT + "\nview ring\n").glb();
        ByteBuffer file = ByteBuffer.wrap(glb).order(ByteOrder.LITTLE_ENDIAN);

        assertThat(new String(glb, 0, 4, StandardCharsets.US_ASCII)).isEqualTo("glTF");
        assertThat(file.getInt(4)).isEqualTo(2);
        assertThat(file.getInt(8)).isEqualTo(glb.length);
        int json = file.getInt(12);
        int binary = file.getInt(20 + json);
        assertThat(12 + 8 + json + 8 + binary).isEqualTo(glb.length);
        assertThat(json(glb))
                .startsWith("{\"asset\":{\"version\":\"2.0\",\"generator\":\"Bandwright\",\"extras\":{\"title\":")
                .contains("\"name\":\"shank\"", "\"name\":\"stripe\"", "\"name\":\"collar\"", "\"name\":\"lights\"")
                .contains("[\"seats\",");
    }

    @Test
    void the_same_ring_gives_the_same_bytes_whatever_was_made_before() {
        Workbench first =
                Workbench.empty().run("other", new SourceText("other", HALVES)).workbench();
        Workbench cleared = first.without("other");

        byte[] after = viewed(cleared, HARBOUR_LIGHT + "\nview ring\n").glb();

        assertThat(after).isEqualTo(viewed(HARBOUR_LIGHT + "\nview ring\n").glb());
    }

    @Test
    void halves_are_two_nodes() {
        Turntable turntable = viewed(HALVES);

        assertThat(json(turntable.glb()))
                .contains("\"name\":\"stripe\",\"children\":[1,2]")
                .doesNotContain("shank\",\"c");
        assertThat(turntable.json()).contains("in two halves, away from each other");
    }

    private static Turntable viewed(String text) {
        return viewed(Workbench.empty(), text);
    }

    private static Turntable viewed(Workbench workbench, String text) {
        return workbench.run("it", new SourceText("it", text)).answers().stream()
                .filter(Answer.Viewed.class::isInstance)
                .map(answer -> ((Answer.Viewed) answer).turntable())
                .findFirst()
                .orElseThrow();
    }

    private static String json(byte[] glb) {
        int length = ByteBuffer.wrap(glb).order(ByteOrder.LITTLE_ENDIAN).getInt(12);
        return new String(glb, 20, length, StandardCharsets.UTF_8);
    }

    private static String read(Path path) {
        try {
            return Files.readString(path);
        } catch (java.io.IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }
}
