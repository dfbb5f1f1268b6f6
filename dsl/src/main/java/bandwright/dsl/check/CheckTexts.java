// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** The sentences of the checks, from {@code checks.properties}. */
final class CheckTexts {
    private static final Properties TEXTS = load();

    private CheckTexts() {}

    /** A text with {0}, {1} and so on filled in, in one pass, so that braces in what is filled in stay as they are. */
    static String text(String key, Object... arguments) {
        String template = TEXTS.getProperty(key);
        if (template == null) {
            throw new IllegalStateException("checks.properties has no " + key);
        }
        StringBuilder text = new StringBuilder();
        for (int at = 0; at < template.length(); at++) {
            boolean filled = template.startsWith("{", at)
                    && template.startsWith("}", at + 2)
                    && Character.isDigit(template.charAt(at + 1));
            if (filled) {
                text.append(arguments[template.charAt(at + 1) - '0']);
                at += 2;
            } else {
                text.append(template.charAt(at));
            }
        }
        return text.toString();
    }

    static boolean has(String key) {
        return TEXTS.containsKey(key);
    }

    private static Properties load() {
        Properties texts = new Properties();
        try (InputStream stream = CheckTexts.class.getResourceAsStream("checks.properties")) {
            if (stream == null) {
                throw new IllegalStateException("checks.properties is missing");
            }
            texts.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return texts;
    }
}
