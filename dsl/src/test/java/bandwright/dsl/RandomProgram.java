// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import bandwright.dsl.resolve.profile.Form;

/** A valid text made by chance, as statements that may stand in any order: no two make the same name. */
final class RandomProgram {
    private static final List<String> METALS =
            List.of("silver-925", "platinum-950-ru", "white-gold-585-pd", "red-gold-585", "own-alloy");
    private static final List<String> SIZES =
            List.of("ISO 54", "ISO 57.5", "US 7 1/4", "US 9", "UK N 1/2", "UK Q", "JP 14", "CH 16", "DE 17.25");

    private final Random random;
    private final List<String> statements = new ArrayList<>();
    private final List<String> lengths = new ArrayList<>();

    private RandomProgram(Random random) {
        this.random = random;
    }

    static List<String> statements(Random random) {
        RandomProgram program = new RandomProgram(random);
        program.write();
        return program.statements;
    }

    private void write() {
        add("title \"Ring %d\"", random.nextInt(100));
        int silver = 5 + random.nextInt(20);
        add("metal own-alloy { gold 58.5 %%  silver %d %%  copper %s %% }", silver, decimal(41.5 - silver));
        double width = 3 + random.nextInt(50) / 10.0;
        double height = 1.6 + random.nextInt(10) / 10.0;
        add("breadth = %s mm between 2 mm and 10 mm because \"reason %d\"", decimal(width), random.nextInt(9));
        add("thickness = %s", inDifferentWords(height));
        add("finger-size = %s", pick(SIZES));
        for (int i = random.nextInt(4); i > 0; i--) {
            definition(i);
        }
        profile(width, height);
        add("band shank { finger finger-size  profile form  metal %s }", pick(METALS));
        String part = "shank";
        if (random.nextBoolean()) {
            double groove = 1.3 + random.nextInt(10) / 10.0;
            if (groove < width - 0.8) {
                groove(groove, height);
                part = "stripe";
            }
        }
        if (random.nextInt(3) > 0) {
            row(part, random.nextBoolean());
        }
        add("require wall(shank) >= 0.%d mm", 1 + random.nextInt(9));
    }

    /** The same length, now as a sum, now as a product, now in another unit. */
    private String inDifferentWords(double mm) {
        return switch (random.nextInt(5)) {
            case 0 -> decimal(mm) + " mm";
            case 1 -> decimal(mm / 2) + " mm * 2";
            case 2 -> decimal(mm - 0.5) + " mm + 1/2 mm";
            case 3 -> "if 2 mm > 1 mm then " + decimal(mm) + " mm else 0 mm";
            default -> "max(" + decimal(mm) + " mm, 0.1 cm)";
        };
    }

    private void definition(int number) {
        String name = "extra-" + (char) ('a' + number);
        String value = lengths.isEmpty() || random.nextBoolean() ? "breadth" : pick(lengths);
        String text = switch (random.nextInt(6)) {
            case 0 -> value + " / 2 - 0.1 mm";
            case 1 -> "round(" + value + ", 0.25 mm)";
            case 2 -> "sqrt(" + value + "^2 + (1 mm)^2)";
            case 3 -> "(" + value + " + thickness) * sin(30 deg)";
            case 4 -> "diameter(finger-size) - " + value;
            default -> "-(-" + value + ") * 110 %";
        };
        add("%s = %s", name, text);
        lengths.add(name);
    }

    private void profile(double width, double height) {
        Form form = Form.find(pick(Form.words())).orElseThrow();
        // Half a circle is as high as a form with this name may be.
        String tall = form == Form.HALF_ROUND ? "min(thickness, breadth / 2)" : "thickness";
        add("profile form = %s(width: breadth, height: %s)", form.word(), tall);
        if (width < 2 * height && form == Form.BEVELLED) {
            statements.remove(statements.size() - 1);
            add("profile form = flat(width: breadth, height: %s, edge: 0.2 mm)", tall);
        }
    }

    private void groove(double width, double height) {
        String letIn = random.nextBoolean() ? "  let-in from fingertip leaving collar" : "  let-in cast";
        add(
                "cut trough from shank { width %s mm  depth %s mm  keep stripe in %s%s }",
                decimal(width), decimal(height / 3), pick(METALS), letIn);
    }

    private void row(String part, boolean pins) {
        String around = random.nextBoolean() ? "full" : 90 + random.nextInt(90) + " deg";
        String spacing = random.nextBoolean() ? "spacing at least 0.2 mm" : "count " + (3 + random.nextInt(10));
        add("stone-row lights on %s { stone round diamond 1.2 mm  around %s  %s  sink 0.2 mm }", part, around, spacing);
        add("cut seats for lights from %s { hole 0.6 mm  clearance 0.01 mm }", part);
        if (pins) {
            add("prongs pins for lights on %s { diameter 0.4 mm  rise 0.2 mm  across 0.4 mm }", part);
        }
    }

    private String pick(List<String> some) {
        return some.get(random.nextInt(some.size()));
    }

    private static String decimal(double value) {
        return String.format(Locale.ROOT, "%.3f", value).replaceFirst("\\.?0+$", "");
    }

    @SuppressWarnings("AnnotateFormatMethod")
    private void add(String format, Object... values) {
        statements.add(String.format(Locale.ROOT, format, values));
    }
}
