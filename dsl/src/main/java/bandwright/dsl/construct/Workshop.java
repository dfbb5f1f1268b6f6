// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.StoneRow;

/**
 * Makes rings and remembers the bodies it made, by what they were made from: a change of title, metal or price makes none
 * anew, a change of one part leaves the others. Serves any number of threads.
 */
public final class Workshop {
    /** Enough for the variants that a notebook looks at together; a body is a megabyte or two. */
    private static final int REMEMBERED = 96;

    /** A carved body is some megabytes, with what it was carved from. */
    private static final int CARVED_REMEMBERED = 24;

    /**
     * All that a body's shape depends on.
     *
     * @param section what is turned; empty for what is carved
     * @param faces the number of the surface that each curve of the section sweeps
     * @param seam the angle, in radians, of the plane through the finger's axis that parts it into halves
     */
    record Recipe(
            Region section,
            Optional<Solid> carved,
            Map<Curve, Integer> faces,
            List<Feature> cuts,
            List<Feature> additions,
            int folds,
            OptionalDouble seam) {
        Recipe(Region section, List<Feature> cuts, List<Feature> additions, int folds) {
            this(section, Optional.empty(), Map.of(), cuts, additions, folds, OptionalDouble.empty());
        }
    }

    /** What the places of a row depend on. */
    private record Setting(StoneRow row, PartSection part) {}

    private final Surfaces surfaces = new Surfaces();
    private final Map<Recipe, Body.Shape> shapes = memory(REMEMBERED);
    private final Map<Solid, Carved> carved = memory(CARVED_REMEMBERED);

    private final Map<Setting, StoneLayout> layouts = memory(REMEMBERED);

    public Ring ring(Design design) {
        return new Ring(design, this);
    }

    public Surfaces surfaces() {
        return surfaces;
    }

    Body.Shape shape(Recipe recipe, Supplier<Body.Shape> maker) {
        return remembered(shapes, recipe, maker);
    }

    Carved carved(Solid solid) {
        return remembered(carved, solid, () -> Carved.make(solid, this::carved));
    }

    StoneLayout layout(StoneRow row, PartSection part, Supplier<StoneLayout> maker) {
        return remembered(layouts, new Setting(row, part), maker);
    }

    private static <K, V> V remembered(Map<K, V> memory, K key, Supplier<V> maker) {
        synchronized (memory) {
            V known = memory.get(key);
            if (known != null) {
                return known;
            }
        }
        V made = maker.get();
        synchronized (memory) {
            memory.put(key, made);
        }
        return made;
    }

    private static <K, V> Map<K, V> memory(int size) {
        return new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > size;
            }
        };
    }
}
