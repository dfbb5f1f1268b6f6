// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.quantity;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class SizeReadingTest {
    @ParameterizedTest
    @CsvSource({
        "US, 7, '', US 7",
        "US, 7, 1/4, US 7 1/4",
        "US, 7.25, '', US 7 1/4",
        "US, 1/2, '', US 1/2",
        "US, 0, '', US 0",
        "UK, N, 1/2, UK N 1/2",
        "UK, Z+1, '', UK Z+1",
        "UK, A, '', UK A",
        "ISO, 54.4, '', ISO 54.4",
        "JP, 1, '', JP 1",
        "CH, 14, '', CH 14",
        "DE, 17.25, '', DE 17.25",
    })
    void reads_what_the_trade_writes(SizeSystem system, String main, String fraction, String text) {
        assertThat(SizeReading.read(system, main, fraction))
                .isInstanceOfSatisfying(
                        SizeReading.Accepted.class,
                        accepted -> assertThat(accepted.size()).hasToString(text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "US  | 400 | ''  | US 400 would be an inner diameter of 336.753 mm; fingers lie between 10 mm and 35 mm",
                "ISO | 20  | ''  | ISO 20 would be an inner diameter of 6.366 mm; fingers lie between 10 mm and 35 mm",
                "JP  | 0   | ''  | JP sizes start at 1",
                "CH  | 0   | ''  | CH sizes start at 1",
                "UK  | Z+40 | '' | UK Z+40 would be an inner diameter of 37.799 mm; fingers lie between 10 mm and 35 mm",
                "UK  | 7   | ''  | '7' is no UK size; write it like UK N 1/2",
                "UK  | n   | ''  | 'n' is no UK size; write it like UK N 1/2",
                "US  | N   | ''  | 'N' is no US size; write it like US 7 1/4",
                "US  | 7   | 5/4 | '5/4' is no part of a size; write 1/4, 1/2 or 3/4",
                "US  | 7   | 1/0 | '1/0' is no part of a size; write 1/4, 1/2 or 3/4",
                "US  | 7.5 | 1/2 | '7.5 1/2' gives the part of a size twice",
            },
            quoteCharacter = '"')
    void refuses_the_rest_in_one_sentence(SizeSystem system, String main, String fraction, String problem) {
        String part = fraction.equals("''") ? "" : fraction;
        assertThat(SizeReading.read(system, main, part)).isEqualTo(new SizeReading.Refused(problem));
    }
}
