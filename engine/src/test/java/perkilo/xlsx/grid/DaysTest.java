package perkilo.xlsx.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Days compared with POI, which reads them in another way. */
class DaysTest {

    private static final int SOME_DAY_OF_2100 = 73_100;
    private static final int NEVER_WAS = 60;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyDayOfTwoCenturiesIsTheOneThatPoiFinds(boolean from1904) {
        Random random = new Random(1900);
        for (int day = 0; day < SOME_DAY_OF_2100; day++) {
            for (double time : new double[] {0, random.nextDouble(), 1 - 1e-9, 1e-9}) {
                double value = day + time;
                if (day == NEVER_WAS) {
                    continue; // 29 February 1900, which sheets count and calendars do not
                }
                assertThat(Days.of(value, from1904))
                        .as("%s", value)
                        .isEqualTo(DateUtil.getLocalDateTime(value, from1904).toLocalDate());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "yyyy-mm-dd",
                "dd.mm.yyyy",
                "d/m/yy",
                "mmm yy",
                "mm-dd-yyyy",
                "[$-407]d. mmmm yyyy",
                "yyyy\\-mm\\-dd;@",
                "m/d/yy h:mm",
                "hh:mm:ss",
                "[h]:mm",
                "yyyy\"年\"m\"月\"d\"日\"",
                "General",
                "0",
                "0.00",
                "#,##0.00",
                "0.0%",
                "#,##0.00 \"EUR\"",
                "#,##0.00\\ \"USD\";-#,##0.00\\ \"USD\"",
                "[$£-809]#,##0.00",
                "[$CHF] #,##0.00",
                "0.00E+00",
                "@",
                "# ?/?",
                "_-* #,##0.00\\ [$kr-41D]_-",
                "[Red]0.00",
                "0.0 \"days\"",
                "0\\ \\d",
                "#,##0.00 \"kg\"",
                ""
            })
    void aFormatShowsADayWherePoiSaysSo(String code) {
        int ownFormat = 164;
        assertThat(Days.isShownBy(ownFormat, code)).isEqualTo(DateUtil.isADateFormat(ownFormat, code));
    }

    @Test
    void whatNeedsNoCodeIsToldByItsNumber() {
        for (int id = 0; id < BuiltinFormats.FIRST_USER_DEFINED_FORMAT_INDEX; id++) {
            String builtIn = BuiltinFormats.getBuiltinFormat(id);
            String code = builtIn == null ? "" : builtIn;
            assertThat(Days.isShownBy(id, code)).as("%s", id).isEqualTo(DateUtil.isADateFormat(id, code));
        }
    }
}
