// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view;

/**
 * A picture ready to be shown.
 *
 * @param width in pixels
 * @param height in pixels
 * @param png the file's bytes; they belong to the picture and nobody writes to them
 * @param alternativeText what the picture shows, for a reader who cannot see it
 */
@SuppressWarnings("ArrayRecordComponent")
public record Picture(int width, int height, byte[] png, String alternativeText) {}
