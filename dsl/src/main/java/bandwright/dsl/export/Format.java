// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.util.List;

/** A kind of file. A new one is one more of these, named where the workbench makes its {@link Formats}. */
public interface Format {
    /** The end of the names of such files, after the point, in small letters. */
    String ending();

    /** What such files hold. */
    Content.Kind holds();

    /**
     * Makes the file, or files where one cannot hold it all.
     *
     * @param name of the file; further ones have names that begin like it
     * @param content of the kind that {@link #holds}
     */
    List<ExportFile> write(String name, Content content);
}
