// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.threemf;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import bandwright.dsl.export.Content;
import bandwright.dsl.export.ExportFile;
import bandwright.dsl.export.Format;
import bandwright.dsl.view.ring.RingPictures;

/** A 3MF package: the model, a small picture, and what ties them together (Open Packaging Conventions, ECMA-376 part 2). */
public final class ThreeMfFormat implements Format {
    private static final int PICTURE = 256;

    private static final String TYPES = """
            <?xml version="1.0" encoding="UTF-8"?>
            <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
            <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
            <Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
            <Default Extension="png" ContentType="image/png"/>
            </Types>
            """;

    private static final String RELATIONS = """
            <?xml version="1.0" encoding="UTF-8"?>
            <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
            <Relationship Target="/3D/3dmodel.model" Id="rel0" \
            Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
            <Relationship Target="/Metadata/thumbnail.png" Id="rel1" \
            Type="http://schemas.openxmlformats.org/package/2006/relationships/metadata/thumbnail"/>
            </Relationships>
            """;

    @Override
    public String ending() {
        return "3mf";
    }

    @Override
    public Content.Kind holds() {
        return Content.Kind.MODEL;
    }

    @Override
    public List<ExportFile> write(String name, Content content) {
        Content.Model model = (Content.Model) content;
        Set<String> parts = new LinkedHashSet<>();
        model.parts().forEach(part -> parts.add(part.name()));
        StoredZip zip = new StoredZip();
        zip.add("[Content_Types].xml", utf8(TYPES));
        zip.add("_rels/.rels", utf8(RELATIONS));
        zip.add("3D/3dmodel.model", utf8(ModelXml.of(model)));
        zip.add("Metadata/thumbnail.png", RingPictures.thumbnail(model.ring(), parts, PICTURE));
        return List.of(new ExportFile(name, zip.bytes()));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
