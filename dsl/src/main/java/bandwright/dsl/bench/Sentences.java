// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** The room's sentences, kept in one file so that they can be read as a whole. */
public final class Sentences {
    private static final Properties TEXTS = read();

    private Sentences() {}

    /** The sentence of a key, with {0}, {1} … replaced. */
    public static String of(String key, String... values) {
        String text = TEXTS.getProperty(key);
        if (text == null) {
            throw new IllegalStateException("no sentence " + key);
        }
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", values[i]);
        }
        return text;
    }

    private static Properties read() {
        Properties texts = new Properties();
        try (InputStream stream = Sentences.class.getResourceAsStream("sentences.properties")) {
            if (stream == null) {
                throw new IllegalStateException("no sentences");
            }
            texts.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }
}
