// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.model.Design;

/**
 * Makes rings and remembers the bodies it made, by what they were made from: a change of title, metal or price makes none
 * anew, a change of one part leaves the others. Serves any number of threads.
 */
public final class Workshop {
    /** Enough for the variants that a notebook looks at together; a body is a megabyte or two. */
    private static final int REMEMBERED = 96;

    /** All that a body's shape depends on. */
    record Recipe(Region section, List<Feature> cuts, List<Feature> additions, int folds) {}

    private final Surfaces surfaces = new Surfaces();
    private final Map<Recipe, Body.Shape> shapes = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Recipe, Body.Shape> eldest) {
            return size() > REMEMBERED;
        }
    };

    public Ring ring(Design design) {
        return new Ring(design, this);
    }

    public Surfaces surfaces() {
        return surfaces;
    }

    Body.Shape shape(Recipe recipe, Supplier<Body.Shape> maker) {
        synchronized (shapes) {
            Body.Shape known = shapes.get(recipe);
            if (known != null) {
                return known;
            }
        }
        Body.Shape made = maker.get();
        synchronized (shapes) {
            shapes.put(recipe, made);
        }
        return made;
    }
}
