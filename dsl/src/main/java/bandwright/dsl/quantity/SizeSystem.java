// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.quantity;

import java.util.Optional;

/**
 * A way to write a finger size. Every system is a straight line between its own number and either the inner diameter or
 * the inner circumference of the ring, so each one is described by where it starts and how far one of its steps goes.
 *
 * <p>The numbers are in the system's own steps: US sizes, letters counted from A = 1, millimetres of circumference for
 * ISO and CH (less 40), JCS numbers, millimetres of diameter for DE.
 */
public enum SizeSystem {
    /**
     * Inner diameter 0.458 inch at size 0 and 0.032 inch more a size. A trade scale without a standard of its own; makers
     * of mandrels differ from it by up to a tenth of a millimetre of diameter.
     */
    US(
            "US",
            "United States and Canada",
            "trade scale; Ring size - Systems, conversion chart, Wikipedia, about 2012",
            "diameter = 25.4 mm x (0.458 + 0.032 x size)",
            25.4 * 0.458 * Math.PI,
            25.4 * 0.032 * Math.PI,
            0.25,
            0),
    /**
     * Letters, 1.25 mm of circumference each, C being 40 mm. Restatements of the standard were read, not its text. Rival
     * tables are in use: old charts (A = 37.8 mm), a casting house's (A = 37.7 mm) and the older gauges, on which US 7 is
     * O and not N 1/2; they differ from this one by up to a letter.
     */
    UK(
            "UK",
            "United Kingdom, Ireland, Australia, New Zealand",
            "BS 6820:1987 as restated in the comments of an open-source units library; its text was not seen",
            "circumference = 36.25 mm + 1.25 mm x letter, A = 1, C = 40 mm",
            36.25,
            1.25,
            0.5,
            1),
    /** The inner circumference in millimetres. */
    ISO(
            "ISO",
            "international",
            "ISO 8653 Jewellery - Ring-sizes - Definition, measurement and designation; 2016",
            "circumference = size in mm",
            0,
            1,
            1,
            0),
    /**
     * The Japanese trade's own scale (Japan Custom Size): 13 mm of inner diameter at 1, a third of a millimetre more a
     * number. Not JIS S 4700, which is the ISO circumference.
     */
    JP(
            "JP",
            "Japan, trade sizes (JCS)",
            "Ring size standards JCS and JIS, Unknown Craftsman; Ring number and inside diameter, Tenmaya Jewellery",
            "diameter = 13 mm + (number - 1) x 1/3 mm",
            (13 - 1.0 / 3) * Math.PI,
            Math.PI / 3,
            1,
            1),
    /** The inner circumference in millimetres, less 40. */
    CH(
            "CH",
            "Switzerland, Italy, Spain, Netherlands",
            "Ring size - Systems, conversion chart, Wikipedia, about 2012; Ring measure, lexicon, TheJewellerShop",
            "circumference = size + 40 mm",
            40,
            1,
            1,
            1),
    /** The inner diameter in millimetres. */
    DE(
            "DE",
            "Germany, by diameter",
            "Ring measure, lexicon, TheJewellerShop; quarter steps from memory",
            "diameter = size in mm",
            0,
            Math.PI,
            0.25,
            0);

    private final String word;
    private final String fullName;
    private final String standard;
    private final String formula;
    private final double circumferenceAtZeroMm;
    private final double circumferenceOfStepMm;
    private final double standardStep;
    private final double smallest;

    SizeSystem(
            String word,
            String fullName,
            String standard,
            String formula,
            double circumferenceAtZeroMm,
            double circumferenceOfStepMm,
            double standardStep,
            double smallest) {
        this.word = word;
        this.fullName = fullName;
        this.standard = standard;
        this.formula = formula;
        this.circumferenceAtZeroMm = circumferenceAtZeroMm;
        this.circumferenceOfStepMm = circumferenceOfStepMm;
        this.standardStep = standardStep;
        this.smallest = smallest;
    }

    /** The word in front of a size: {@code US}. */
    public String word() {
        return word;
    }

    /** Where it is used. */
    public String fullName() {
        return fullName;
    }

    /** The standard or the published source behind it. */
    public String standard() {
        return standard;
    }

    /** The formula in words and numbers, for people. */
    public String formula() {
        return formula;
    }

    /** What to know before relying on it, as a sentence for people; empty where systems and tables agree. */
    public Optional<String> caution() {
        return switch (this) {
            case US -> Optional.of("mandrels differ from this scale by up to 0.1 mm of diameter");
            case UK -> Optional.of("rival letter tables are in use: US 7 is N, N 1/2 or O; ISO is safer");
            case JP -> Optional.of("this is the trade's scale (JCS); JIS S 4700 is the ISO circumference");
            case DE -> Optional.of("the circumference is used in Germany too: ask which one is meant");
            case ISO, CH -> Optional.empty();
        };
    }

    /** How finely sizes are made, in the system's own steps: quarters, half letters, whole numbers, quarter millimetres. */
    public double standardStep() {
        return standardStep;
    }

    /** The smallest number that is written in this system: JP, CH and the letters start at 1, the others at 0. */
    public double smallest() {
        return smallest;
    }

    /** The inner circumference of a ring of that number, in millimetres. */
    public double circumferenceMm(double number) {
        return circumferenceAtZeroMm + circumferenceOfStepMm * number;
    }

    /** The number, in this system's own steps, of a ring of that inner circumference in millimetres. */
    public double number(double circumferenceMm) {
        return (circumferenceMm - circumferenceAtZeroMm) / circumferenceOfStepMm;
    }
}
