// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

/**
 * A file that is to be written.
 *
 * @param name relative to the notebook's folder, folders parted by {@code /}
 * @param bytes all of it; they belong to the file and nobody writes to them
 */
@SuppressWarnings("ArrayRecordComponent")
public record ExportFile(String name, byte[] bytes) {}
