// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

/**
 * Why a file is no notebook that can be run.
 *
 * @param message one sentence for people, with the file's name
 */
public record NotebookFault(String message) implements Reading {}
