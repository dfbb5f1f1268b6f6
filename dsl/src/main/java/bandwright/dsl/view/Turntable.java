// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

/**
 * A model to turn by hand: its shape as a file, and what there is to say about it. Lengths in mm, in the ring's coordinates: the finger's axis is
 * z, positive to the fingertip; the top of the ring is at +x.
 *
 * @param glb a binary glTF 2.0 file; it belongs to the model and nobody writes to it
 * @param summary the whole of it in sentences, for a reader who cannot see it
 * @param features what made the faces that the file names: a definition's name, and its dimensions as a text
 * @param marks failed and close checks
 */
@SuppressWarnings("ArrayRecordComponent")
public record Turntable(
        String title,
        byte[] glb,
        String summary,
        List<Part> parts,
        Map<String, String> features,
        List<Mark> marks,
        double widthMm,
        double outerRadiusMm) {
    public Turntable {
        parts = List.copyOf(parts);
        features = new LinkedHashMap<>(features);
        marks = List.copyOf(marks);
    }

    /**
     * A part, or a row of stones.
     *
     * @param name of its node in the file
     * @param material metal, or cut and stone
     * @param colour for its place in a list, {@code #rrggbb}
     * @param way how it is taken off; absent if it stays
     */
    public record Part(
            String name,
            boolean stones,
            String material,
            String colour,
            List<Measure> measures,
            @Nullable Way way) {
        public Part {
            measures = List.copyOf(measures);
        }
    }

    /** A named value as the language shows it. */
    public record Measure(String name, String value) {}

    /**
     * How a part goes when the ring is taken apart, the way it went in turned round.
     *
     * @param slide how far it moves in all, mm
     * @param apart how far its halves move from one another along a direction, each by so much to its side, mm; zero if it has none
     * @param lift how far each of its stones moves along its own axis, mm
     * @param begins when it starts, as a share of the whole, 0 to 1
     * @param ends when it is off
     * @param words the way in words
     */
    public record Way(List<Double> slide, List<Double> apart, double lift, double begins, double ends, String words) {
        public Way {
            slide = List.copyOf(slide);
            apart = List.copyOf(apart);
        }
    }

    /**
     * A check that failed or is close.
     *
     * @param verdict in a word
     * @param at the place in space, mm; absent where it has none
     */
    public record Mark(
            String verdict,
            String title,
            String about,
            String sentence,
            @Nullable List<Double> at) {}

    /** All but the file, as JSON. */
    public String json() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("title", title);
        tree.put("summary", summary);
        tree.put("width", Json.number(widthMm));
        tree.put("radius", Json.number(outerRadiusMm));
        List<Object> all = new ArrayList<>();
        parts.forEach(part -> all.add(tree(part)));
        tree.put("parts", all);
        tree.put("features", features);
        List<Object> pointed = new ArrayList<>();
        marks.forEach(mark -> pointed.add(tree(mark)));
        tree.put("marks", pointed);
        return Json.write(tree);
    }

    private static Map<String, Object> tree(Part part) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", part.name);
        tree.put("stones", part.stones);
        tree.put("material", part.material);
        tree.put("colour", part.colour);
        List<Object> measures = new ArrayList<>();
        part.measures.forEach(measure -> measures.add(List.of(measure.name, measure.value)));
        tree.put("measures", measures);
        if (part.way != null) {
            Map<String, Object> way = new LinkedHashMap<>();
            way.put("slide", numbers(part.way.slide));
            way.put("apart", numbers(part.way.apart));
            way.put("lift", Json.number(part.way.lift));
            way.put("begins", Json.number(part.way.begins));
            way.put("ends", Json.number(part.way.ends));
            way.put("words", part.way.words);
            tree.put("way", way);
        }
        return tree;
    }

    private static Map<String, Object> tree(Mark mark) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("verdict", mark.verdict);
        tree.put("title", mark.title);
        tree.put("about", mark.about);
        tree.put("sentence", mark.sentence);
        if (mark.at != null) {
            tree.put("at", numbers(mark.at));
        }
        return tree;
    }

    private static List<Object> numbers(List<Double> values) {
        List<Object> numbers = new ArrayList<>();
        values.forEach(value -> numbers.add(Json.number(value)));
        return numbers;
    }
}
