// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import bandwright.kernel.notebook.NotebookReader;

/** Designs to start from. */
final class Starts {
    private static final Map<String, String> TEXTS = new LinkedHashMap<>();

    static {
        TEXTS.put("a plain band", """
                finger-size = US 7
                breadth     = 4 mm     between 2 mm and 8 mm
                thickness   = 1.9 mm   between 1.4 mm and 3 mm

                profile section = d-shape(width: breadth, height: thickness, side: 1.3 mm)

                band shank {
                  finger   finger-size
                  profile  section
                  metal    yellow-gold-750
                }

                show weights
                """);
        TEXTS.put("two metals", """
                finger-size = US 7
                breadth     = 5 mm     between 4 mm and 8 mm
                thickness   = 2 mm     between 1.8 mm and 3 mm

                profile section = d-shape(width: breadth, height: thickness, side: 1.25 mm)

                band shank {
                  finger   finger-size
                  profile  section
                  metal    white-gold-585-pd
                }

                cut trough from shank {
                  width   breadth / 3
                  depth   0.9 mm
                  keep    stripe in red-gold-585
                  let-in  from fingertip leaving collar
                }

                show section
                show weights
                """);
        TEXTS.put("a row of stones", """
                finger-size = US 7
                breadth     = 3.2 mm   between 2.8 mm and 5 mm

                profile slim = flat(width: breadth, height: 2 mm, edge: 0.2 mm)

                band shank {
                  finger   finger-size
                  profile  slim
                  metal    platinum-950-ru
                }

                stone-row lights on shank {
                  stone    round diamond 1.5 mm
                  around   full
                  spacing  at least 0.2 mm
                  sink     0.25 mm
                }

                cut seats for lights from shank {
                  hole       0.8 mm
                  bearing    0.35 mm
                  clearance  0.02 mm
                  made at bench
                }

                prongs pins for lights on shank {
                  diameter    0.6 mm
                  rise        0.3 mm
                  root        0.6 mm
                  reach       0.1 mm
                  set-height  0.2 mm
                }

                show layout of lights
                show stones
                """);
        TEXTS.put("nothing", "");
    }

    private Starts() {}

    static List<String> names() {
        return List.copyOf(TEXTS.keySet());
    }

    /** The file's text. */
    static String text(String start, String name) throws DeskFault {
        String text = TEXTS.get(start);
        if (text == null) {
            throw new DeskFault("there is no such start");
        }
        return name.toLowerCase(Locale.ROOT).endsWith(".ring")
                ? text
                : NotebookReader.ofText(text).json();
    }
}
