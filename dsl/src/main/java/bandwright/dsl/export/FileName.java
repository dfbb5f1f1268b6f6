// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Whether a text can name a file on every system, inside a folder. */
public final class FileName {
    /** File systems take 255 bytes; some are left for what is added to tell files of one name apart. */
    private static final int LONGEST_BYTES = 200;

    /** Names of devices on some systems, whatever their ending (Microsoft, Naming Files, Paths, and Namespaces). */
    private static final Pattern DEVICE = Pattern.compile("(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(\\..*)?");

    private static final String REFUSED = "<>:|?*\\";

    private FileName() {}

    /** Why it cannot, as the end of a sentence; nothing if it can. */
    public static Optional<String> fault(String name) {
        if (name.isBlank()) {
            return Optional.of("it is empty");
        }
        if (name.startsWith("/") || name.startsWith("\\") || name.matches("[A-Za-z]:.*")) {
            return Optional.of("files are written inside the notebook's folder, and this begins outside of it");
        }
        Optional<Integer> unseen =
                name.codePoints().boxed().filter(FileName::isUnseen).findFirst();
        if (unseen.isPresent()) {
            return Optional.of("it holds the unseen sign " + String.format(Locale.ROOT, "U+%04X", unseen.get()));
        }
        for (String piece : name.split("/", -1)) {
            if (piece.equals("..") || piece.equals(".")) {
                return Optional.of(
                        "files are written inside the notebook's folder, and \"" + piece + "\" leads elsewhere");
            }
            Optional<String> fault = pieceFault(piece);
            if (fault.isPresent()) {
                return fault;
            }
        }
        return Optional.empty();
    }

    private static Optional<String> pieceFault(String piece) {
        if (piece.isBlank()) {
            return Optional.of("a folder in it has no name");
        }
        Optional<String> sign = piece.chars()
                .filter(each -> REFUSED.indexOf(each) >= 0)
                .mapToObj(Character::toString)
                .findFirst();
        if (sign.isPresent()) {
            return Optional.of("some systems take no " + sign.get() + " in a name");
        }
        if (!piece.strip().equals(piece) || piece.endsWith(".") || piece.startsWith(".")) {
            return Optional.of("names begin with no point and end with none, and have no space at either end");
        }
        if (DEVICE.matcher(piece.toLowerCase(Locale.ROOT)).matches()) {
            return Optional.of(piece + " is a device on some systems");
        }
        boolean tooLong = piece.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES;
        return tooLong ? Optional.of("it is longer than " + LONGEST_BYTES + " bytes") : Optional.empty();
    }

    private static boolean isUnseen(int point) {
        int type = Character.getType(point);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.UNASSIGNED
                || type == Character.PRIVATE_USE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }
}
