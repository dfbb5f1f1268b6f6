// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The pieces a size is written from. */
final class SizeParts {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,6}(\\.\\d{1,9})?");
    private static final Pattern FRACTION = Pattern.compile("(\\d{1,3})/(\\d{1,3})");
    private static final Pattern LETTER = Pattern.compile("([A-Z])|Z\\+(\\d{1,3})");

    private SizeParts() {}

    static Optional<Double> number(String text) {
        if (NUMBER.matcher(text).matches()) {
            return Optional.of(Double.parseDouble(text));
        }
        // A fraction alone is a size too: US 1/2.
        return fraction(text);
    }

    static Optional<Double> fraction(String text) {
        Matcher matcher = FRACTION.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int above = Integer.parseInt(matcher.group(1));
        int below = Integer.parseInt(matcher.group(2));
        return below == 0 || above >= below ? Optional.empty() : Optional.of((double) above / below);
    }

    static Optional<Double> letter(String text) {
        Matcher matcher = LETTER.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String single = matcher.group(1);
        return Optional.of(single != null ? single.charAt(0) - 'A' + 1.0 : 26.0 + Integer.parseInt(matcher.group(2)));
    }
}
