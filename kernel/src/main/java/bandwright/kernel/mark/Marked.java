// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.mark;

import java.util.List;

/**
 * What came of one work.
 *
 * @param failure why it could not be marked; empty text if it was
 * @param title the design's, or empty text
 * @param key a judgement for each line of the key; none if it was not marked
 * @param own the same for the work's own {@code require} lines
 * @param troubles what it was told, as plain texts, errors and warnings
 * @param errors how many of its cells had an error
 * @param javaCells how many of its cells are in Java, none of which was run
 */
public record Marked(
        String failure,
        String title,
        List<Judgement> key,
        List<Judgement> own,
        List<String> troubles,
        int errors,
        int javaCells) {
    public Marked {
        key = List.copyOf(key);
        own = List.copyOf(own);
        // All of it can come from a work.
        failure = Works.printable(failure);
        title = Works.printable(title);
        troubles = troubles.stream().map(Works::printable).toList();
    }

    /** A work without marks. */
    public static Marked not(String failure) {
        return new Marked(failure, "", List.of(), List.of(), List.of(), 0, 0);
    }

    public boolean wasMarked() {
        return failure.isEmpty();
    }

    /** What a line of the key brings. */
    public double points(Key key, int line) {
        return line < this.key.size() && this.key.get(line).passed()
                ? key.lines().get(line).points()
                : 0;
    }

    /** What all lines of the key bring together. */
    public double points(Key key) {
        double points = 0;
        for (int i = 0; i < key.lines().size(); i++) {
            points += points(key, i);
        }
        return points;
    }

    /** How many of its own conditions passed. */
    public long ownPassed() {
        return own.stream().filter(Judgement::passed).count();
    }
}
