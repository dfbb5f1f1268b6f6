// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A handle and the values it is to have.
 *
 * @param name of a definition
 * @param range {@code 3 mm..8 mm step 0.1 mm}, or values with commas between, or empty for the definition's own range
 */
public record Over(String name, String range) {
    private static final Pattern STRETCH =
            Pattern.compile("(?<low>.+?)\\s*\\.\\.\\s*(?<high>.+?)(\\s+step\\s+(?<step>.+))?", Pattern.DOTALL);
    private static final Pattern SYSTEM = Pattern.compile("(?<system>\\p{L}+)\\s.*", Pattern.DOTALL);
    private static final Pattern LETTER = Pattern.compile("\\p{L}( \\d/\\d)?");
    private static final Pattern NUMBER = Pattern.compile("[\\d./ ]+");
    private static final Pattern NUMBER_WITH_UNIT =
            Pattern.compile("[\\d./ ]+(?<unit>\\p{L}.*|[%€°].*)", Pattern.DOTALL);

    /** Of {@code NAME=RANGE}, or of {@code NAME} alone. */
    public static Over of(String text) throws CatalogueFault {
        int equals = text.indexOf('=');
        String name = (equals < 0 ? text : text.substring(0, equals)).strip();
        String range = equals < 0 ? "" : text.substring(equals + 1).strip();
        if (name.isEmpty() || (equals >= 0 && range.isEmpty())) {
            throw new CatalogueFault(
                    "--over takes NAME=RANGE, such as breadth=\"3 mm..8 mm step 0.1 mm\"; this was given: " + text);
        }
        return new Over(name, range);
    }

    boolean isOwnRange() {
        return range.isEmpty();
    }

    /** As {@code vary} has it. */
    String axis() {
        if (isOwnRange()) {
            return name;
        }
        Matcher stretch = STRETCH.matcher(range);
        if (!stretch.matches()) {
            return name + " over " + range;
        }
        String low = stretch.group("low").strip();
        String high = stretch.group("high").strip();
        String step = stretch.group("step");
        String from = withUnitOf(high, low);
        String to = withSystemOf(low, high);
        return name + " from " + from + " to " + to + (step == null ? "" : " step " + step.strip());
    }

    /** In {@code 3..8 mm} both are millimetres. */
    private static String withUnitOf(String high, String low) {
        Matcher unit = NUMBER_WITH_UNIT.matcher(high);
        return unit.matches() && NUMBER.matcher(low).matches() ? low + " " + unit.group("unit") : low;
    }

    /** In {@code US 3..13} both are US sizes, in {@code UK H..Q} both are UK ones. */
    private static String withSystemOf(String low, String high) {
        Matcher system = SYSTEM.matcher(low);
        return system.matches()
                        && (NUMBER.matcher(high).matches()
                                || LETTER.matcher(high).matches())
                ? system.group("system").toUpperCase(Locale.ROOT) + " " + high
                : high;
    }
}
