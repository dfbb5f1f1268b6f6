// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.quantity;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A unit: its spelling, its kind, and how many base units (mm, g, deg, one of a currency) it is.
 *
 * <p>Exact by definition: the inch is 25.4 mm, the troy ounce 31.1034768 g and the pennyweight a twentieth of it
 * (international yard and pound agreement, 1959); the metric carat is 0.2 g (4th General Conference on Weights and
 * Measures, 1907).
 */
public record Unit(String symbol, double factor, Dimension dimension) {
    private static final Map<String, Unit> WORDS = words();
    private static final Pattern POWER = Pattern.compile("([a-zA-Z]+|%)(?:\\^(\\d{1,3}))?");
    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

    public static final Unit MILLIMETRE = word("mm");
    public static final Unit GRAM = word("g");
    public static final Unit DEGREE = word("deg");
    public static final Unit CARAT = word("ct");
    public static final Unit PERCENT = word("%");

    private static final Unit NONE = new Unit("", 1, Dimension.NUMBER);
    private static final Unit DENSITY = new Unit("g/cm^3", 1e-3, Dimension.DENSITY);

    /** The unit words of the language, in the order a person meets them. */
    public static Set<String> symbols() {
        return WORDS.keySet();
    }

    public static Unit currency(String code) {
        return new Unit(code, 1, Dimension.money(code));
    }

    /**
     * Reads {@code mm}, {@code cm^3}, {@code g/cm^3}, {@code EUR/g}; empty when it is none. Only lengths have powers,
     * and those are 2 and 3.
     */
    public static Optional<Unit> parse(String text) {
        Unit product = null;
        for (String part : text.split("/", -1)) {
            Optional<Unit> unit = power(part);
            if (unit.isEmpty() || (product != null && !product.dimension.mixesWith(unit.get().dimension))) {
                return Optional.empty();
            }
            product = product == null ? unit.get() : product.dividedBy(unit.get(), text);
        }
        return Optional.ofNullable(product).map(unit -> new Unit(text, unit.factor, unit.dimension));
    }

    /** The unit in which values of a kind are shown when nobody asks for another. */
    public static Unit shownFor(Dimension dimension) {
        if (dimension.equals(Dimension.DENSITY)) {
            return DENSITY;
        }
        StringJoiner above = new StringJoiner("*");
        StringJoiner below = new StringJoiner("/");
        factor(dimension.currency() == null ? "" : dimension.currency(), dimension.money(), above, below);
        factor("g", dimension.mass(), above, below);
        factor("mm", dimension.length(), above, below);
        factor("deg", dimension.angle(), above, below);
        if (dimension.isNumber()) {
            return NONE;
        }
        String numerator = above.length() == 0 ? "1" : above.toString();
        String symbol = below.length() == 0 ? numerator : numerator + "/" + below;
        return new Unit(symbol, 1, dimension);
    }

    private static void factor(String symbol, int exponent, StringJoiner above, StringJoiner below) {
        int size = Math.abs(exponent);
        String text = size == 1 ? symbol : symbol + "^" + size;
        if (exponent > 0) {
            above.add(text);
        } else if (exponent < 0) {
            below.add(text);
        }
    }

    private static Optional<Unit> power(String text) {
        Matcher matcher = POWER.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String word = matcher.group(1);
        Unit unit = WORDS.get(word);
        if (unit == null && CURRENCY.matcher(word).matches()) {
            unit = currency(word);
        }
        if (unit == null || matcher.group(2) == null) {
            return Optional.ofNullable(unit);
        }
        int exponent = Integer.parseInt(matcher.group(2));
        boolean areaOrVolume = unit.dimension.equals(Dimension.LENGTH) && (exponent == 2 || exponent == 3);
        return areaOrVolume
                ? Optional.of(new Unit(text, StrictMath.pow(unit.factor, exponent), unit.dimension.power(exponent)))
                : Optional.empty();
    }

    private Unit dividedBy(Unit other, String text) {
        return new Unit(text, factor / other.factor, dimension.dividedBy(other.dimension));
    }

    private static Unit word(String symbol) {
        Unit unit = WORDS.get(symbol);
        if (unit == null) {
            throw new IllegalStateException("no unit " + symbol);
        }
        return unit;
    }

    private static Map<String, Unit> words() {
        Map<String, Unit> words = new LinkedHashMap<>();
        add(words, "mm", 1, Dimension.LENGTH);
        add(words, "cm", 10, Dimension.LENGTH);
        add(words, "inch", 25.4, Dimension.LENGTH);
        add(words, "um", 0.001, Dimension.LENGTH);
        add(words, "deg", 1, Dimension.ANGLE);
        add(words, "g", 1, Dimension.MASS);
        add(words, "kg", 1000, Dimension.MASS);
        add(words, "dwt", 1.55517384, Dimension.MASS);
        add(words, "ozt", 31.1034768, Dimension.MASS);
        add(words, "ct", 0.2, Dimension.MASS);
        add(words, "pt", 0.002, Dimension.MASS);
        add(words, "%", 0.01, Dimension.NUMBER);
        return words;
    }

    private static void add(Map<String, Unit> words, String symbol, double factor, Dimension dimension) {
        words.put(symbol, new Unit(symbol, factor, dimension));
    }
}
