package perkilo.corpus;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.desk.TakeInPrices;
import perkilo.desk.TakeInRequest;
import perkilo.desk.Watch;
import perkilo.pricelists.TakeIn;
import perkilo.pricelists.TakenIn;
import perkilo.xlsx.grid.Csv;

/** Lists in very many layouts: each is taken in as it says, or something is asked; none is wrong in silence. */
final class ListCorpusTest {

    private static final int LISTS = Integer.getInteger("perkilo.lists", 150);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void none_of_many_lists_goes_in_wrong_and_most_go_in_at_once() throws IOException {
        List<String> wrong = new ArrayList<>();
        Map<String, Integer> asked = new TreeMap<>();
        int right = 0;
        for (int seed = 0; seed < LISTS; seed++) {
            ListCase list = new ListMaker(seed).make();
            String called = seed + " " + list.layout();
            Path at = folder.resolve(String.valueOf(seed));
            Files.createDirectories(at);
            Path file = Files.write(at.resolve(list.file()), list.bytes());
            TakenIn taken = new TakeInPrices()
                    .take(
                            new TakeInRequest(
                                    List.of(file),
                                    at.resolve("kept"),
                                    null,
                                    new TakeIn.Said(list.truth().supplier(), null, null)),
                            Watch.NONE)
                    .lists()
                    .get(0);
            if (!taken.isKept()) {
                boolean said = !taken.questions().isEmpty() || taken.findings().stream().anyMatch(f -> f.isError());
                if (!said) {
                    wrong.add(seed + " refused without a word: " + list.layout());
                }
                taken.findings().stream()
                        .filter(f -> f.isError())
                        .limit(1)
                        .forEach(f -> asked.merge(called + "\n      " + f, 1, Integer::sum));
                taken.questions().stream()
                        .limit(1)
                        .forEach(q -> asked.merge(called + "\n      ? " + q.sentence(), 1, Integer::sum));
                continue;
            }
            List<String> is = kept(taken);
            List<String> shall = truth(list.truth());
            if (is.equals(shall)) {
                right++;
            } else {
                List<String> more = new ArrayList<>(is);
                more.removeAll(shall);
                List<String> less = new ArrayList<>(shall);
                less.removeAll(is);
                wrong.add(seed + " " + list.layout() + "\n   not said but read: " + more + "\n   said but not read: " + less);
            }
        }
        System.out.println("right at once " + right + " of " + LISTS + ", wrong " + wrong.size());
        asked.keySet().forEach(System.out::println);
        assertThat(wrong).isEmpty();
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
        BigDecimal ofPack =
                switch (f.get(6)) {
                    case "pack" -> price;
                    case "100 g", "100 ml", "100 mL" -> price.multiply(size).movePointRight(1);
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
