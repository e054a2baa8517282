package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person types to steer a search for cheaper materials: roles, lines to keep, and the least saving. */
final class RoleAndKeepTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String FORMULA = "Face cream";
    private static final int MATERIAL = 1;
    private static final int ROLE = 4;
    private static final int KEEP = 5;

    @TempDir
    private Path folder = Path.of("");

    /** Roles and lines to keep by material, and settings, typed into the template. */
    private CommandLineRun search(Map<String, String> roles, Map<String, String> keep, Map<String, String> settings)
            throws IOException {
        Path book = folder.resolve("book.xlsx");
        Files.deleteIfExists(book);
        assertThat(CommandLineRun.of("new", "emollients", book).exit()).isEqualTo(Exit.DONE);
        XSSFWorkbook workbook;
        try (InputStream in = Files.newInputStream(book)) {
            workbook = new XSSFWorkbook(in);
        }
        XSSFSheet formula = workbook.getSheet(FORMULA);
        formula.getRow(0).createCell(ROLE).setCellValue("Role");
        formula.getRow(0).createCell(KEEP).setCellValue("Keep");
        for (Row row : formula) {
            String material = row.getCell(MATERIAL).getStringCellValue();
            if (roles.containsKey(material)) {
                row.createCell(ROLE).setCellValue(roles.get(material));
            }
            if (keep.containsKey(material)) {
                row.createCell(KEEP).setCellValue(keep.get(material));
            }
        }
        XSSFSheet sheet = workbook.getSheet("Settings");
        settings.forEach((name, value) -> {
            Row row = sheet.createRow(sheet.getLastRowNum() + 1);
            row.createCell(0).setCellValue(name);
            row.createCell(1).setCellValue(value);
        });
        try (OutputStream out = Files.newOutputStream(book)) {
            workbook.write(out);
        }
        workbook.close();
        return CommandLineRun.of("swap", book, "--json");
    }

    private static List<String> candidates(CommandLineRun run, String material) throws IOException {
        List<String> found = new ArrayList<>();
        for (JsonNode swap : JSON.readTree(run.out()).get("swaps")) {
            if (swap.get("formula").asText().equals(FORMULA)
                    && swap.get("material").asText().equals(material)) {
                found.add(swap.get("candidate").asText());
            }
        }
        return found;
    }

    @Test
    void a_line_to_keep_is_not_swapped_and_the_others_are() throws IOException {
        CommandLineRun free = search(Map.of(), Map.of(), Map.of());
        CommandLineRun kept = search(Map.of(), Map.of("Octyldodecanol", "yes"), Map.of());

        assertThat(candidates(free, "Octyldodecanol")).isNotEmpty();
        assertThat(candidates(kept, "Octyldodecanol")).isEmpty();
        assertThat(candidates(kept, "Cetearyl isononanoate")).isEqualTo(candidates(free, "Cetearyl isononanoate"));
        assertThat(kept.out()).contains("\"Octyldodecanol\"");
    }

    /** In a cream, cetearyl alcohol that was said to be there as a wax is compared with waxes only. */
    @Test
    void the_role_of_a_line_decides_what_it_is_compared_with() throws IOException {
        CommandLineRun free = search(Map.of(), Map.of(), Map.of());
        CommandLineRun typed = search(Map.of("Octyldodecanol", "fatty alcohol"), Map.of(), Map.of());

        assertThat(candidates(free, "Octyldodecanol")).contains("Decyl oleate");
        assertThat(candidates(typed, "Octyldodecanol")).doesNotContain("Decyl oleate");
        assertThat(typed.exit()).isEqualTo(Exit.DONE);
    }

    @Test
    void a_role_that_is_none_is_named_with_the_one_that_was_meant() throws IOException {
        CommandLineRun typed = search(Map.of("Octyldodecanol", "emolient ester"), Map.of(), Map.of());

        assertThat(candidates(typed, "Octyldodecanol")).isEmpty();
        assertThat(typed.out()).contains("emolient ester").contains("Did you mean \\\"emollient ester\\\"?");
    }

    @Test
    void a_word_that_is_neither_yes_nor_no_is_an_error_with_its_cell() throws IOException {
        CommandLineRun typed = search(Map.of(), Map.of("Octyldodecanol", "perhaps"), Map.of());

        assertThat(typed.err() + typed.out()).contains("perhaps").contains(FORMULA + "!F8");
    }

    /** What saves less than the setting says is not offered; what saves more stays as it was. */
    @Test
    void what_saves_too_little_is_not_offered() throws IOException {
        CommandLineRun all = search(Map.of(), Map.of(), Map.of("Least saving", "0"));
        CommandLineRun few = search(Map.of(), Map.of(), Map.of("Least saving", "2"));
        Map<String, Double> saving = savings(all);
        Map<String, Double> left = savings(few);

        assertThat(left).isNotEmpty().hasSizeLessThan(saving.size());
        double most = saving.entrySet().stream()
                .filter(each -> !left.containsKey(each.getKey()))
                .mapToDouble(Map.Entry::getValue)
                .max()
                .orElseThrow();
        assertThat(left)
                .containsKeys(saving.entrySet().stream()
                        .filter(each -> each.getValue() > most)
                        .map(Map.Entry::getKey)
                        .toArray(String[]::new));
    }

    /** The largest part of the unit's raw materials that a swap saves at any run, by the figures of the answer. */
    private static Map<String, Double> savings(CommandLineRun run) throws IOException {
        JsonNode answer = JSON.readTree(run.out());
        Map<String, Double> savings = new TreeMap<>();
        for (JsonNode swap : answer.get("swaps")) {
            if (!swap.get("formula").asText().equals(FORMULA)) {
                continue;
            }
            double most = 0;
            for (JsonNode change : swap.get("unitCostChange")) {
                most = Math.max(most, -Double.parseDouble(change.asText()));
            }
            savings.put(
                    swap.get("material").asText() + " -> "
                            + swap.get("candidate").asText(),
                    most);
        }
        return savings;
    }
}
