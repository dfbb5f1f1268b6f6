// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Numbers for the faces of parts, and what each number means: the definition that made the face and which face of it. The
 * same face always has the same number, so that a body made earlier can be used again.
 */
public final class Surfaces {
    /** @param definition name of the band, cut or pins; empty for the flat ends of a piece */
    public record Face(String definition, String what) {}

    private final List<Face> faces = new ArrayList<>();
    private final Map<Face, Integer> numbers = new HashMap<>();

    synchronized int number(String definition, String what) {
        return numbers.computeIfAbsent(new Face(definition, what), face -> {
            faces.add(face);
            return faces.size() - 1;
        });
    }

    /** The numbers of all faces that are such, as far as bodies have been made. */
    public synchronized Set<Integer> numbers(Predicate<Face> such) {
        Set<Integer> found = new TreeSet<>();
        for (int i = 0; i < faces.size(); i++) {
            if (such.test(faces.get(i))) {
                found.add(i);
            }
        }
        return found;
    }

    public synchronized Face face(int surface) {
        return faces.get(surface);
    }
}
