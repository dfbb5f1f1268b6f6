// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Writes pages as PDF (ISO 32000). The typeface is embedded; there are no dates, and the file's number comes from its content, so
 * that the same document gives the same bytes wherever the platform packs them alike.
 */
public final class PdfWriter {
    private PdfWriter() {}

    public static byte[] write(PaperDocument pages) {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(pages.number());
            PDDocumentInformation about = new PDDocumentInformation();
            about.setTitle(pages.title());
            about.setCreator("Bandwright");
            document.setDocumentInformation(about);
            document.getDocumentCatalog().setLanguage("en");
            PDViewerPreferences shown =
                    new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
            shown.setDisplayDocTitle(true);
            document.getDocumentCatalog().setViewerPreferences(shown);

            PageFlow flow = new PageFlow(document, pages);
            flow.flow();
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            // Plain objects: some readers count packed ones wrongly.
            document.save(file, CompressParameters.NO_COMPRESSION);
            return file.toByteArray();
        } catch (IOException e) {
            // Nothing is read or written but memory.
            throw new UncheckedIOException(e);
        }
    }
}
