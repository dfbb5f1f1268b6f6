// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.files;

import java.nio.file.Path;

import bandwright.dsl.Answer;
import bandwright.dsl.export.ExportFile;

/** A file and where it goes. */
record Writing(Answer.Exported export, ExportFile file, Path target) {}
