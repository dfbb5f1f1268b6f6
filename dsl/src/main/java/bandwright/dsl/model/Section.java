// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.model;

import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.source.Place;

/**
 * A named cross-section.
 *
 * @param form the form's word, such as {@code d-shape}, or {@code outline} for a free shape
 * @param outline counter-clockwise, x across (0 in the middle, positive to the fingertip) and y out (0 on the finger), mm
 * @param widthMm extent across
 * @param heightMm extent out
 */
public record Section(String name, Place place, String form, Outline outline, double widthMm, double heightMm) {}
