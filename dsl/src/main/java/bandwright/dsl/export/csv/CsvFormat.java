// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.csv;

import java.nio.charset.StandardCharsets;
import java.util.List;

import bandwright.dsl.export.Content;
import bandwright.dsl.export.ExportFile;
import bandwright.dsl.export.Format;

/** A table's headings and rows, in UTF-8; its title and footnotes are left out. */
public final class CsvFormat implements Format {
    @Override
    public String ending() {
        return "csv";
    }

    @Override
    public Content.Kind holds() {
        return Content.Kind.ROWS;
    }

    @Override
    public List<ExportFile> write(String name, Content content) {
        String text = ((Content.Rows) content).table().csv();
        return List.of(new ExportFile(name, text.getBytes(StandardCharsets.UTF_8)));
    }
}
