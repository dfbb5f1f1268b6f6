// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

/** What reading a file gave: a notebook, or why there is none. */
public sealed interface Reading permits Notebook, NotebookFault {}
