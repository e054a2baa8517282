package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cents are too coarse for a unit that costs less than one. */
final class SmallUnitsTest {

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource({"minimal, 500 × Simple balm 30 g, 4", "launch, 300 × Hand balm, 2"})
    void a_unit_below_one_has_four_decimals(String template, String run, int decimals) throws IOException {
        Path book = folder.resolve("book.xlsx");
        CommandLineRun.of("new", template, book);
        JsonNode cost = JsonMapper.builder()
                .build()
                .readTree(CommandLineRun.of("cost", "--json", book).out())
                .get("runs")
                .get(0);

        String line = CommandLineRun.of("cost", book)
                .out()
                .lines()
                .filter(one -> one.startsWith(run))
                .findFirst()
                .orElseThrow();

        assertThat(line.substring(run.length()).strip().split(" +"))
                .contains(rounded(cost.get("unitCost"), decimals), rounded(cost.get("cashPerUnit"), decimals));
    }

    private static String rounded(JsonNode amount, int decimals) {
        return new BigDecimal(amount.get("EUR").asText())
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
