// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.profile;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The named forms of a cross-section. Each takes a width and a height, may take an edge, and has sizes of its own.
 *
 * <p>{@code edge} rounds the outer corners, those where the top meets a wall (the inner corners of a half-round, which has
 * no walls): by an arc of that radius, tangent to what meets there, be it a line or an arc. A ridge stays sharp.
 */
public enum Form {
    /** Flat inside and out. */
    FLAT("flat", ""),
    /** The same as flat. */
    RECTANGLE("rectangle", ""),
    /** Flat inside, upright walls up to {@code side} (0.6 of the height if not given), one arc over the top. */
    D_SHAPE("d-shape", "side"),
    /** Flat inside, one arc from edge to edge: a half circle if the height is half the width, a flatter arc if less. */
    HALF_ROUND("half-round", ""),
    /**
     * Curved inside and out: the inner arc touches the finger in the middle and stands off by {@code inside} (0.15 of the
     * height) at the edges; walls up to {@code side} (0.6 of the height), one arc over the top.
     */
    COURT("court", "side inside"),
    /** Curved inside as {@link #COURT}, flat outside. */
    FLAT_COURT("flat-court", "inside"),
    /** Flat inside, walls up to {@code side} (0.25 of the height), two straight slopes to a ridge in the middle. */
    KNIFE_EDGE("knife-edge", "side"),
    /**
     * Flat inside and out, the outer corners cut off: {@code bevel} is how far the cut reaches across, {@code side} where
     * it begins. With one of them the cut slopes at 45 deg; with none it does, and takes a quarter of the smaller of width
     * and height.
     */
    BEVELLED("bevelled", "bevel side"),
    /**
     * Flat inside, hollow outside: the middle lies {@code dip} (0.2 of the height) below the edges. Rounding those takes a
     * little of the height.
     */
    CONCAVE("concave", "dip");

    private final String word;
    private final String ownSizes;

    Form(String word, String ownSizes) {
        this.word = word;
        this.ownSizes = ownSizes;
    }

    /** The language's word. */
    public String word() {
        return word;
    }

    /** The words of its sizes, {@code width} and {@code height} first, which alone must be given. */
    public List<String> sizes() {
        return List.of(("width height " + ownSizes + " edge").split(" +"));
    }

    /** The form of that word; case counts. */
    public static Optional<Form> find(String word) {
        return Stream.of(values()).filter(form -> form.word.equals(word)).findFirst();
    }

    public static List<String> words() {
        return Stream.of(values()).map(Form::word).toList();
    }
}
