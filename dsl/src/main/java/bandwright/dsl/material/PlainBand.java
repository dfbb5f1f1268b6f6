// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

/**
 * A ring of rectangular section bent from strip: the one ring whose volume and blank a bench works out in the head.
 *
 * @param innerDiameterMm inner diameter in mm
 * @param thicknessMm thickness of the strip in mm
 * @param widthMm width of the strip in mm
 */
public record PlainBand(double innerDiameterMm, double thicknessMm, double widthMm) {
    /**
     * Length in mm of the strip the ring is bent from: pi x (inner diameter + thickness), the length of the line in the
     * middle of the thickness, which bending neither stretches nor shortens. Source: Nancy L T Hamilton, Inside ring blank
     * measurements, 2021; Rio Grande, Measuring a ring blank.
     */
    public double blankLengthMm() {
        return Math.PI * (innerDiameterMm + thicknessMm);
    }

    /** Volume in mm3: the blank's length x thickness x width; exact for a rectangle (a ring less a ring). */
    public double volumeMm3() {
        return blankLengthMm() * thicknessMm * widthMm;
    }

    /** Mass in grams at a density in g/cm3. */
    public double grams(double densityGPerCm3) {
        return volumeMm3() * densityGPerCm3 / 1000;
    }
}
