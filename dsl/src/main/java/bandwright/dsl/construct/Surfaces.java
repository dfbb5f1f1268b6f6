// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;

/** Numbers for the faces of a part, and what each number means: the definition that made the face and which face of it. */
public final class Surfaces {
    /** @param definition name of the band, cut or pins; empty for the flat ends of a piece */
    public record Face(String definition, String what) {}

    private final List<Face> faces = new ArrayList<>();

    int number(String definition, String what) {
        faces.add(new Face(definition, what));
        return faces.size() - 1;
    }

    public Face face(int surface) {
        return faces.get(surface);
    }
}
