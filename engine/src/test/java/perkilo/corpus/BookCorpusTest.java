package perkilo.corpus;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.desk.CheckBook;
import perkilo.desk.Checked;
import perkilo.desk.CostAnswer;
import perkilo.desk.CostBook;
import perkilo.desk.CostRequest;
import perkilo.desk.RunSizes;
import perkilo.desk.Watch;
import perkilo.json.CostJson;
import perkilo.reading.Sources;

/** Workbooks as people keep them cost what the same data in our own form costs, or something is asked. */
final class BookCorpusTest {

    private static final int BOOKS = Integer.getInteger("perkilo.books", 60);

    private static final int CHECKED = 12;
    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void no_workbook_is_costed_wrong_and_most_are_costed_at_once() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<String> asked = new ArrayList<>();
        int right = 0;
        for (int seed = 0; seed < BOOKS; seed++) {
            BookMaker maker = new BookMaker(seed);
            String called = seed + " " + maker.described();
            CostAnswer own = cost(Files.write(folder.resolve("own" + seed + ".xlsx"), maker.inOurForm()));
            assertThat(own).as(called + own.findings()).isInstanceOf(CostAnswer.Costed.class);
            CostAnswer kept = cost(Files.write(folder.resolve("kept" + seed + ".xlsx"), maker.asKept()));
            if (!(kept instanceof CostAnswer.Costed) || kept.findings().stream().anyMatch(f -> f.isError())) {
                asked.add(called + "\n      "
                        + kept.findings().stream()
                                .filter(f -> f.isError())
                                .map(Object::toString)
                                .reduce("", (a, b) -> a + "\n      " + b));
            } else if (runs(kept).equals(runs(own))) {
                right++;
            } else {
                wrong.add(called + "\n   " + kept.findings());
            }
        }
        System.out.println("right at once " + right + " of " + BOOKS + ", wrong " + wrong.size());
        asked.forEach(System.out::println);
        assertThat(wrong).isEmpty();
        assertThat(right).as("right at once of " + BOOKS + ": " + asked).isGreaterThanOrEqualTo(BOOKS * 9 / 10);
    }

    @Test
    void a_check_says_how_each_sheet_was_read() throws IOException {
        for (int seed = 0; seed < CHECKED; seed++) {
            BookMaker maker = new BookMaker(seed);
            Path book = Files.write(folder.resolve("checked" + seed + ".xlsx"), maker.asKept());
            Checked checked = new CheckBook().check(Sources.of(book), DAY, Watch.NONE);
            Map<String, String> read = new LinkedHashMap<>();
            List<String> lost = new ArrayList<>();
            checked.reading().account().groups().forEach(group -> {
                read.put(group.whole().place().sheet(), group.whole().as());
                lost.addAll(group.columnsNotRead());
            });
            assertThat(read).as(seed + " " + maker.described()).isEqualTo(maker.tables());
            assertThat(lost).as(seed + " " + maker.described()).isEmpty();
        }
    }

    private static CostAnswer cost(Path book) throws IOException {
        return new CostBook().cost(new CostRequest(Sources.of(book), RunSizes.OF_THE_BOOK, DAY), Watch.NONE);
    }

    private static JsonNode runs(CostAnswer answer) throws IOException {
        String json = CostJson.of(((CostAnswer.Costed) answer).costed(), answer.findings())
                .toString();
        return sorted(new ObjectMapper().readTree(json).get("runs"));
    }

    /** The same with what is bought of one item in one order: workbooks name the suppliers in any order. */
    private static JsonNode sorted(JsonNode node) {
        if (node.isObject()) {
            node.properties().forEach(field -> field.setValue(sorted(field.getValue())));
        } else if (node.isArray()) {
            List<JsonNode> all = new ArrayList<>();
            node.forEach(one -> all.add(sorted(one)));
            all.sort(Comparator.comparing(JsonNode::toString));
            return new ObjectMapper().createArrayNode().addAll(all);
        }
        return node;
    }
}
