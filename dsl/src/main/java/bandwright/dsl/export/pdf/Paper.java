// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.pdf;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Sizes of paper, upright. A4 by ISO 216; letter is 8 1/2 by 11 inches (ANSI/ASME Y14.1, size A). */
public enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4);

    /** What printers leave white, and a hand needs to hold the sheet, mm. */
    static final double MARGIN = 15;

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    /** Between the margins, mm. */
    public double usableWidthMm() {
        return widthMm - 2 * MARGIN;
    }

    /** As it is written: {@code a4}, {@code letter}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** By its word, in large or small letters. */
    public static Optional<Paper> find(String word) {
        return Arrays.stream(values())
                .filter(paper -> paper.word().equals(word.toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Paper::word).toList();
    }
}
