// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.List;

/** All that is in the picture; bodies may touch and lie inside one another. */
public record Scene(List<Body> bodies) {
    public Scene {
        bodies = List.copyOf(bodies);
    }
}
