package perkilo.xlsx.author;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.sheet.Look;
import perkilo.sheet.Report;
import perkilo.sheet.SheetBuilder;

/** Any text can be written to a cell. */
final class CellTextTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+49 30", "-", "@home"})
    void looks_like_a_formula(String text) {
        assertThat(CellText.looksLikeFormula(text)).isTrue();
    }

    @Test
    void what_no_file_can_hold_is_left_out() {
        assertThat(CellText.storable("a\u0000b\u001Bc\uFFFEd")).isEqualTo("abcd");
        assertThat(CellText.storable("_x000D_")).isEqualTo("_x005F_x000D_");
        assertThat(CellText.storable("x".repeat(40_000))).hasSize(32_767);
    }

    @Property(tries = 100)
    void any_words_come_back(@ForAll String words) throws Exception {
        Report report = new Report(
                List.of(new SheetBuilder("S").text(0, 0, words, Look.PLAIN).build()));
        Links links = new Links("b.xlsx", List.of(), Map.of("S", "S"));
        try (XSSFWorkbook workbook = Written.read(report, links)) {
            String kept = workbook.getSheetAt(0).getRow(0).getCell(0).getStringCellValue();
            assertThat(kept).isEqualTo(CellText.storable(words).replace("_x005F_", "_"));
        }
    }
}
