// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.util.List;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.material.LinearColour;
import bandwright.dsl.view.Table;

/** What a file is made of. */
public sealed interface Content {
    /** The kinds of content, each with the words for it. */
    enum Kind {
        MODEL("parts as solids"),
        PLAN("a section, a layout or views"),
        ROWS("a table");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    Kind kind();

    /** What it is, in sentences without an end, for people who open the file or read what was written. */
    List<String> words();

    /**
     * Parts as solids.
     *
     * @param title the design's, or "ring"
     * @param fingerprint of the design
     * @param ring as its parts are here, but for shrinkage: for pictures of it
     * @param plate how they lie
     * @param withStones whether it is the finished ring in true size, in which stones can be shown
     */
    record Model(
            String title,
            String fingerprint,
            Ring ring,
            List<Part> parts,
            Plate plate,
            boolean withStones,
            List<String> words)
            implements Content {
        public Model {
            parts = List.copyOf(parts);
            words = List.copyOf(words);
        }

        @Override
        public Kind kind() {
            return Kind.MODEL;
        }
    }

    /**
     * A part of a model.
     *
     * @param metal its word, such as {@code red-gold-585}
     * @param mesh closed, mm, in the ring's frame: the finger along z, the top of the ring along x
     */
    record Part(String name, String metal, LinearColour colour, Mesh mesh) {}

    /**
     * A section or a layout in its true size.
     *
     * @param fingerprint of the design
     * @param layers in the order in which they are painted
     */
    record Plan(String title, String fingerprint, List<PlanLayer> layers, List<String> words) implements Content {
        public Plan {
            layers = List.copyOf(layers);
            words = List.copyOf(words);
        }

        @Override
        public Kind kind() {
            return Kind.PLAN;
        }
    }

    /** A table. */
    record Rows(Table table) implements Content {
        @Override
        public Kind kind() {
            return Kind.ROWS;
        }

        @Override
        public List<String> words() {
            return List.of(table.title());
        }
    }
}
