package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.costing.Head;

/** Each head of cost is in the answer and on the result sheets, and together they are the total. */
final class EveryHeadTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void the_answer_has_an_amount_for_each_head_and_they_add_up() throws IOException {
        Ran ran = Ran.of(folder, RawBook.sound().bytes(), "cost", "--json", "--date=2026-11-20");

        JsonNode run =
                JsonMapper.builder().build().readTree(ran.out()).get("runs").get(0);
        BigDecimal sum = BigDecimal.ZERO;
        for (Head head : Head.values()) {
            JsonNode amount = run.get("heads").get(head.words());
            assertThat(amount).as("the amount of %s in the answer", head).isNotNull();
            sum = sum.add(new BigDecimal(amount.asText()));
        }
        assertThat(sum.doubleValue())
                .as("all heads together, for 500 units")
                .isCloseTo(
                        500 * Double.parseDouble(run.get("unitCost").get("EUR").asText()), Offset.offset(1e-3));
    }

    @Test
    void the_result_sheets_name_each_head() throws IOException {
        Ran ran = Ran.of(folder, RawBook.sound().bytes(), "cost", "-q", "--date=2026-11-20");

        assertThat(ran.exit()).as(ran.messages().toString()).isZero();
        for (String sheet : new String[] {"Cost summary", "Cost detail"}) {
            assertThat(words(sheet))
                    .as("the heads that %s names", sheet)
                    .containsAll(Arrays.stream(Head.values()).map(Head::words).toList());
        }
    }

    private Set<String> words(String name) throws IOException {
        Set<String> words = new HashSet<>();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(folder.resolve("book-costed.xlsx")))) {
            for (var row : book.getSheet(name)) {
                for (var cell : row) {
                    if (cell.getCellType() == CellType.STRING) {
                        words.add(cell.getStringCellValue());
                    }
                }
            }
        }
        return words;
    }
}
