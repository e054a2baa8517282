package perkilo.corpus;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
                                .findFirst()
                                .orElseThrow());
            } else if (runs(kept).equals(runs(own))) {
                right++;
            } else {
                wrong.add(called + "\n   " + kept.findings());
            }
        }
        System.out.println("right at once " + right + " of " + BOOKS + ", wrong " + wrong.size());
        asked.forEach(System.out::println);
        assertThat(wrong).isEmpty();
    }

    private static CostAnswer cost(Path book) throws IOException {
        return new CostBook()
                .cost(new CostRequest(Sources.of(book), RunSizes.OF_THE_BOOK, LocalDate.of(2026, 11, 20)), Watch.NONE);
    }

    private static JsonNode runs(CostAnswer answer) throws IOException {
        String json = CostJson.of(((CostAnswer.Costed) answer).costed(), answer.findings())
                .toString();
        return new ObjectMapper().readTree(json).get("runs");
    }
}
