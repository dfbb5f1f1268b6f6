// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The letters of a document: their widths, and where lines break. Signs that the typeface lacks are shown as a question mark. */
final class Letters {
    /** Liberation Sans, SIL Open Font License 1.1; comes with PDFBox. */
    private static final String TYPEFACE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private static final String MISSING = "?";

    private final PDFont font;
    private final Map<Integer, Boolean> known = new HashMap<>();

    Letters(PDDocument document) throws IOException {
        try (InputStream typeface = PDDocument.class.getResourceAsStream(TYPEFACE)) {
            if (typeface == null) {
                throw new IllegalStateException("no typeface " + TYPEFACE);
            }
            font = PDType0Font.load(document, typeface, true);
        }
    }

    PDFont font() {
        return font;
    }

    /** The text with nothing in it that cannot be set. */
    String settable(String text) {
        StringBuilder settable = new StringBuilder();
        text.codePoints().forEach(sign -> {
            if (Character.isWhitespace(sign)) {
                settable.append(' ');
            } else if (isKnown(sign)) {
                settable.appendCodePoint(sign);
            } else {
                settable.append(MISSING);
            }
        });
        return settable.toString();
    }

    private boolean isKnown(int sign) {
        return known.computeIfAbsent(sign, each -> {
            try {
                return font.encode(Character.toString(each)).length > 0;
            } catch (IllegalArgumentException missing) {
                return false;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** How long a settable text is, in the unit of its size. */
    double width(String text, double size) {
        try {
            return font.getStringWidth(text) / 1000 * size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Breaks a text into lines no longer than a width; a word that is longer by itself is broken too. Never empty. */
    List<String> lines(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        double length = 0;
        double space = width(" ", size);
        for (String word : words(settable(text))) {
            double wide = width(word, size);
            if (!line.isEmpty() && length + space + wide > width) {
                lines.add(line.toString());
                line.setLength(0);
                length = 0;
            }
            if (!line.isEmpty()) {
                line.append(' ');
                length += space;
            }
            if (wide <= width) {
                line.append(word);
                length += wide;
                continue;
            }
            for (int sign : word.codePoints().toArray()) {
                double letter = width(Character.toString(sign), size);
                if (!line.isEmpty() && length + letter > width) {
                    lines.add(line.toString());
                    line.setLength(0);
                    length = 0;
                }
                line.appendCodePoint(sign);
                length += letter;
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private static List<String> words(String settable) {
        return List.of(settable.strip().split(" +", -1));
    }

    /** The longest of a text's words. */
    double longestWord(String text, double size) {
        double longest = 0;
        for (String word : words(settable(text))) {
            longest = Math.max(longest, width(word, size));
        }
        return longest;
    }
}
