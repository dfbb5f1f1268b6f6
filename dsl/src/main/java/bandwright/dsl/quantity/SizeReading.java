// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.quantity;

import java.util.Optional;

/** What came of reading a finger size: the size, or one sentence on why there is none. */
public sealed interface SizeReading {
    /** A size that a finger can have. */
    record Accepted(FingerSize size) implements SizeReading {}

    /** No size; the sentence names the numbers and says what would have been right. */
    record Refused(String problem) implements SizeReading {}

    /**
     * Reads a size from its parts, as they stand behind the system's word.
     *
     * @param system the system that was named
     * @param main the number ({@code 7}, {@code 54.4}) or letter ({@code N}, {@code Z+1})
     * @param fraction a fraction behind it ({@code 1/2}), or empty text
     */
    static SizeReading read(SizeSystem system, String main, String fraction) {
        Optional<Double> rest = fraction.isBlank() ? Optional.of(0.0) : SizeParts.fraction(fraction.strip());
        if (rest.isEmpty()) {
            return new Refused("'" + fraction.strip() + "' is no part of a size; write 1/4, 1/2 or 3/4");
        }
        String text = main.strip();
        Optional<Double> whole = system == SizeSystem.UK ? SizeParts.letter(text) : SizeParts.number(text);
        if (whole.isEmpty()) {
            return new Refused("'" + text + "' is no " + system.word() + " size; write it like " + example(system));
        }
        // 7.5 1/2 says the part twice.
        if (rest.get() != 0 && whole.get() != Math.rint(whole.get())) {
            return new Refused("'" + text + " " + fraction.strip() + "' gives the part of a size twice");
        }
        FingerSize size = new FingerSize(system, whole.get() + rest.get());
        return size.problem().<SizeReading>map(Refused::new).orElseGet(() -> new Accepted(size));
    }

    private static String example(SizeSystem system) {
        return switch (system) {
            case US -> "US 7 1/4";
            case UK -> "UK N 1/2";
            case ISO -> "ISO 54";
            case JP -> "JP 14";
            case CH -> "CH 14";
            case DE -> "DE 17.25";
        };
    }
}
