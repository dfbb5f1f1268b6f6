// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.install;

import java.nio.file.Path;
import java.util.Map;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class DataFolderTest {
    @Test
    void every_platform_has_its_folder() throws Exception {
        assertThat(DataFolder.ofUser(Map.of("HOME", "/h"), "Linux")).isEqualTo(Path.of("/h/.local/share/jupyter"));
        assertThat(DataFolder.ofUser(Map.of("HOME", "/h", "XDG_DATA_HOME", "/x"), "Linux"))
                .isEqualTo(Path.of("/x/jupyter"));
        assertThat(DataFolder.ofUser(Map.of("HOME", "/h"), "Mac OS X")).isEqualTo(Path.of("/h/Library/Jupyter"));
        assertThat(DataFolder.ofUser(Map.of("APPDATA", "/a"), "Windows 11")).isEqualTo(Path.of("/a/jupyter"));
    }

    @Test
    void what_the_user_says_goes_before_all() throws Exception {
        assertThat(DataFolder.ofUser(Map.of("JUPYTER_DATA_DIR", "/j", "HOME", "/h"), "Linux"))
                .isEqualTo(Path.of("/j"));
    }

    @Test
    void an_active_environment_is_found() throws Exception {
        assertThat(DataFolder.ofActiveEnvironment(Map.of("VIRTUAL_ENV", "/v"))).isEqualTo(Path.of("/v/share/jupyter"));
        assertThat(DataFolder.ofActiveEnvironment(Map.of("CONDA_PREFIX", "/c"))).isEqualTo(Path.of("/c/share/jupyter"));
    }

    @Test
    void where_there_is_no_telling_the_user_is_asked() {
        assertThatThrownBy(() -> DataFolder.ofUser(Map.of(), "Linux"))
                .isInstanceOf(InstallFault.class)
                .hasMessageContaining("no HOME");
        assertThatThrownBy(() -> DataFolder.ofActiveEnvironment(Map.of()))
                .isInstanceOf(InstallFault.class)
                .hasMessageContaining("--prefix");
    }
}
