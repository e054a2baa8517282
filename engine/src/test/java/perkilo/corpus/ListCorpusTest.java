package perkilo.corpus;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.desk.TakeInPrices;
import perkilo.desk.TakeInRequest;
import perkilo.desk.Watch;
import perkilo.origin.Finding;
import perkilo.pricelists.TakeIn;
import perkilo.pricelists.TakenIn;
import perkilo.review.QuestionsSheet;
import perkilo.xlsx.grid.Csv;

/** Lists in very many layouts: each is taken in as it says, or something is asked; none is wrong in silence. */
final class ListCorpusTest {

    private static final int LISTS = Integer.getInteger("perkilo.lists", 200);

    private static final int MOST_ROUNDS = 3;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void no_list_goes_in_wrong_and_nearly_all_go_in_after_one_round() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<String> waiting = new ArrayList<>();
        int atOnce = 0;
        int afterRounds = 0;
        int later = 0;
        Map<String, Integer> asked = new TreeMap<>();
        for (int seed = 0; seed < LISTS; seed++) {
            ListMaker maker = new ListMaker(seed);
            ListCase list = maker.make();
            String called = seed + " " + list.layout();
            Path at = folder.resolve(String.valueOf(seed));
            Files.createDirectories(at);
            Files.write(at.resolve(list.file()), list.bytes());
            TakenIn first = take(at, list);
            TakenIn last = first;
            if (!first.isKept()) {
                boolean says = !first.questions().isEmpty()
                        || first.findings().stream().anyMatch(Finding::isError)
                        || !first.seen().notRead().isEmpty();
                assertThat(says).as(called + " is refused without a word").isTrue();
                answer(at, maker, first);
                last = take(at, list);
                for (int round = 2; round <= MOST_ROUNDS && !last.isKept(); round++) {
                    answer(at, maker, last);
                    last = take(at, list);
                    later += last.isKept() ? 1 : 0;
                }
            }
            if (!last.isKept()) {
                waiting.add(called + "\n      first " + said(first) + "\n      then " + said(last));
                continue;
            }
            List<String> is = kept(last);
            List<String> shall = truth(list.truth());
            if (!is.equals(shall)) {
                List<String> more = new ArrayList<>(is);
                more.removeAll(shall);
                List<String> less = new ArrayList<>(shall);
                less.removeAll(is);
                wrong.add(called + "\n   not said but read: " + more + "\n   said but not read: " + less);
            } else if (first.isKept()) {
                atOnce++;
            } else {
                afterRounds++;
                first.questions().stream()
                        .map(question ->
                                question.field() + " in " + list.layout().split(" ", -1)[2])
                        .distinct()
                        .forEach(field -> asked.merge(field, 1, Integer::sum));
            }
        }
        String all = atOnce + " at once and " + afterRounds + " after answers (" + later
                + " of them after two rounds or three) of " + LISTS + ", which asked for " + asked
                + "; waiting:\n"
                + String.join("\n", waiting);
        System.out.println(all);
        assertThat(wrong).isEmpty();
        assertThat(atOnce + afterRounds - later).as(all).isGreaterThanOrEqualTo(LISTS * 9 / 10);
    }

    private static TakenIn take(Path at, ListCase list) throws IOException {
        TakeInRequest request = new TakeInRequest(
                List.of(at.resolve(list.file())),
                at.resolve("kept"),
                null,
                new TakeIn.Said(list.truth().supplier(), null, null),
                review(at));
        return new TakeInPrices().take(request, Watch.NONE).lists().get(0);
    }

    private static Path review(Path at) {
        return at.resolve("prices-review.xlsx");
    }

    private static String said(TakenIn taken) {
        List<String> all = new ArrayList<>();
        taken.questions()
                .forEach(question ->
                        all.add("? " + question.field() + " " + question.key() + " " + question.sentence()));
        taken.findings().stream().filter(Finding::isError).forEach(finding -> all.add(finding.toString()));
        taken.seen().notRead().forEach(row -> all.add("not read " + row));
        return String.join(" | ", all);
    }

    /** Types what a person who knows the list would type into the review. */
    private static void answer(Path at, ListMaker maker, TakenIn taken) throws IOException {
        byte[] bytes;
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(review(at)));
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            Sheet sheet = book.getSheet(QuestionsSheet.NAME);
            int question = -1;
            int answer = -1;
            for (Row row : sheet) {
                for (Cell cell : row) {
                    String text = cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "";
                    question = text.equals("Question") ? cell.getColumnIndex() : question;
                    answer = text.equals(QuestionsSheet.ANSWER) ? cell.getColumnIndex() : answer;
                }
                Cell asked = question < 0 ? null : row.getCell(question);
                if (asked != null && asked.getCellType() == CellType.STRING && answer >= 0) {
                    String text = asked.getStringCellValue();
                    Optional<String> typed = taken.questions().stream()
                            .filter(one -> text.startsWith(one.text()))
                            .findFirst()
                            .flatMap(maker::answer);
                    if (typed.isPresent()) {
                        row.getCell(answer, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK)
                                .setCellValue(typed.get());
                    }
                }
            }
            book.write(out);
            bytes = out.toByteArray();
        }
        Files.write(review(at), bytes);
    }

    /** What was kept, a line a price: item, pack, from, price of the pack, currency, days. */
    private static List<String> kept(TakenIn taken) throws IOException {
        var kept = taken.kept();
        assertThat(kept).isNotNull();
        List<String> lines = new ArrayList<>();
        for (Csv.Line line : Csv.read(Files.readString(kept.file(), StandardCharsets.UTF_8), ',')) {
            List<String> f = line.fields().stream().map(Csv.Field::text).toList();
            if (!f.get(0).equals("Supplier")) {
                lines.add(normal(f));
            }
        }
        return lines.stream().sorted().toList();
    }

    private static String normal(List<String> f) {
        BigDecimal size = new BigDecimal(f.get(2));
        BigDecimal from = f.get(4).isEmpty() ? BigDecimal.ZERO : new BigDecimal(f.get(4));
        BigDecimal price = new BigDecimal(f.get(5));
        BigDecimal ofPack = switch (f.get(6)) {
            case "pack" -> price;
            case "mL" -> price.multiply(size).movePointRight(3);
            default -> f.get(6).equals(f.get(3)) ? price.multiply(size) : BigDecimal.ONE.negate();
        };
        return line(f.get(1), size, f.get(3), from, ofPack, f.get(7), f.get(11), f.get(12));
    }

    private static List<String> truth(Truth truth) {
        return truth.prices().stream()
                .map(price -> line(
                        price.item(),
                        price.size(),
                        price.unit(),
                        price.from(),
                        price.ofPack(),
                        truth.currency(),
                        truth.quotedOn().toString(),
                        truth.validUntil() == null ? "" : truth.validUntil().toString()))
                .sorted()
                .toList();
    }

    private static String line(
            String item,
            BigDecimal size,
            String unit,
            BigDecimal from,
            BigDecimal ofPack,
            String currency,
            String quoted,
            String until) {
        BigDecimal begins = from.compareTo(size) <= 0 ? BigDecimal.ZERO : from;
        return String.join(
                "|",
                item,
                plain(size) + " " + unit,
                "from " + plain(begins),
                plain(ofPack) + " " + currency,
                quoted,
                until);
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
