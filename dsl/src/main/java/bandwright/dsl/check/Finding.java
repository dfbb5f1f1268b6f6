// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.quantity.Quantity;

/**
 * What a check found.
 *
 * @param check the check's key, such as {@code casting-wall}
 * @param title the check in words
 * @param subjects names of the parts, rows, cuts or pins it is about
 * @param measured absent where nothing can be measured
 * @param limit what it was held against, as it is told; empty where there is none
 * @param margin how far it is on the good side, negative on the other; absent where nothing was measured
 * @param rule the limit with its source; absent where the design itself sets it
 * @param source of the limit: title; publisher; year; section, or {@code common practice, no source}; the user's own: {@code own limit}
 * @param place where on the ring, where it can be told
 * @param sentence what is so
 * @param advice what helps; empty where nothing is to be done
 */
public record Finding(
        String check,
        String title,
        Severity severity,
        Verdict verdict,
        List<String> subjects,
        @Nullable Quantity measured,
        String limit,
        @Nullable Quantity margin,
        @Nullable Limit rule,
        String source,
        @Nullable RingPlace place,
        String sentence,
        String advice) {
    /** What the source of a limit is called that the user has set. */
    public static final String OWN = "own limit";

    public Finding {
        subjects = List.copyOf(subjects);
    }

    public boolean failed() {
        return verdict == Verdict.FAILED;
    }

    /** Names of what it is about, joined. */
    public String about() {
        return String.join(", ", subjects);
    }

    /** What it is about and where. */
    public String at() {
        String about = about();
        return place == null ? about : (about.isEmpty() ? "" : about + "; ") + place.text();
    }
}
