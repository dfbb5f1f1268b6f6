// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.glb;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import bandwright.dsl.export.Content;
import bandwright.dsl.export.ExportFile;
import bandwright.dsl.export.Format;

/** A model to look at or to hand on, as binary glTF 2.0; a finished ring in true size has its stones in. */
public final class GlbFormat implements Format {
    @Override
    public String ending() {
        return "glb";
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
        byte[] file =
                model.withStones() ? GlbWriter.write(model.ring(), parts, model.fingerprint()) : GlbWriter.write(model);
        return List.of(new ExportFile(name, file));
    }
}
