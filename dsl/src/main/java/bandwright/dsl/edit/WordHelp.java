// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Properties;

/** What each word of the language means, in a sentence or two; kept in {@code words.properties}. */
public final class WordHelp {
    private static final Properties SENTENCES = read();

    private WordHelp() {}

    /** What a word of the language, a unit, a function or a measure means. */
    public static Optional<String> of(String word) {
        return Optional.ofNullable(SENTENCES.getProperty(word));
    }

    /** Its first sentence or, where it has none, nothing. */
    static String brief(String word) {
        String sentence = SENTENCES.getProperty(word, "");
        int end = sentence.indexOf(". ");
        String first = end < 0 ? sentence : sentence.substring(0, end);
        return first.endsWith(".") ? first.substring(0, first.length() - 1) : first;
    }

    private static Properties read() {
        Properties sentences = new Properties();
        try (InputStream file = WordHelp.class.getResourceAsStream("words.properties")) {
            if (file == null) {
                throw new IllegalStateException("words.properties is missing");
            }
            sentences.load(new InputStreamReader(file, StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return sentences;
    }
}
