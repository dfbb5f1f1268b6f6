// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class ModuleBundleTest {
    @Test
    void imports_and_exports_become_plain_statements() {
        ModuleBundle bundle = new ModuleBundle();
        bundle.add("./core.js", "const a=1,b=2;export{a as One,b};");
        bundle.add(
                "lib",
                "import{One as x}from\"./core.js\";export{One,b as Two}from\"./core.js\";const y=x;export{y as Three};");
        bundle.add("./own.js", "import {\n    Three,\n    Two as two,\n} from 'lib';\nThree + two;\nexport {};\n");

        assertThat(bundle.script())
                .contains("const {One: x} = modules[\"./core.js\"];const y=x;")
                .contains("return {One: modules[\"./core.js\"].One, Two: modules[\"./core.js\"].b, Three: y};")
                .contains("const {Three: Three, Two: two} = modules[\"lib\"];")
                .doesNotContain("import", "export");
    }

    @Test
    void what_was_not_added_cannot_be_imported() {
        assertThatThrownBy(() -> new ModuleBundle().add("a", "import { b } from 'b';"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("imports b");
    }

    @Test
    void nothing_may_end_the_script_early() {
        ModuleBundle bundle = new ModuleBundle();
        bundle.add("a", "const text = '</script>';");

        assertThatThrownBy(bundle::script).isInstanceOf(IllegalStateException.class);
    }
}
