// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.diagnostic;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;

import org.jspecify.annotations.Nullable;

/** The sentences of all diagnostics, from {@code messages.properties}; {@code {0}} stands for the first argument. */
public final class Messages {
    private static final Properties TEXTS = load();

    private Messages() {}

    /** All codes that have a message, in alphabetical order. */
    public static Set<String> codes() {
        Set<String> codes = new TreeSet<>();
        for (String key : TEXTS.stringPropertyNames()) {
            if (!key.contains(".")) {
                codes.add(key);
            }
        }
        return codes;
    }

    static String message(String code, List<String> arguments) {
        String text = text(code, arguments);
        if (text == null) {
            throw new IllegalStateException("messages.properties has no text for " + code);
        }
        return text;
    }

    static @Nullable String expected(String code, List<String> arguments) {
        return text(code + ".expected", arguments);
    }

    static @Nullable String advice(String code, List<String> arguments) {
        return text(code + ".advice", arguments);
    }

    /** One pass from left to right, so that braces inside an argument stay as they are. */
    private static @Nullable String text(String key, List<String> arguments) {
        String template = TEXTS.getProperty(key);
        if (template == null) {
            return null;
        }
        StringBuilder text = new StringBuilder();
        for (int at = 0; at < template.length(); at++) {
            boolean argument = template.startsWith("{", at)
                    && template.startsWith("}", at + 2)
                    && Character.isDigit(template.charAt(at + 1));
            if (!argument) {
                text.append(template.charAt(at));
                continue;
            }
            int index = template.charAt(at + 1) - '0';
            if (index >= arguments.size()) {
                throw new IllegalStateException("the text of " + key + " needs argument " + index);
            }
            text.append(arguments.get(index));
            at += 2;
        }
        return text.toString();
    }

    private static Properties load() {
        Properties texts = new Properties();
        try (InputStream stream = Messages.class.getResourceAsStream("messages.properties")) {
            if (stream == null) {
                throw new IllegalStateException("messages.properties is missing");
            }
            texts.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return texts;
    }
}
