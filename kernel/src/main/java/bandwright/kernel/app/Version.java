// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import picocli.CommandLine;

/** The version, as the jar's manifest has it. */
final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"bandwright " + (version == null ? "(not packaged)" : version)};
    }
}
