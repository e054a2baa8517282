package perkilo.desk;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import perkilo.model.Book;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/** Round run sizes between the smallest and the largest of each product, for a curve; as many between each two. */
final class SizesBetween {

    /** Points between the smallest and the largest size. Own choice: enough for a curve, few enough to wait for. */
    private static final int POINTS = 9;

    private static final MathContext ROUND = new MathContext(2, RoundingMode.HALF_UP);

    private SizesBetween() {}

    /** The runs, without those that the book has. */
    static List<Run> of(Book book) {
        Map<String, TreeSet<BigDecimal>> own = new LinkedHashMap<>();
        Map<String, String> names = new LinkedHashMap<>();
        for (Run run : book.runs()) {
            if (run instanceof Run.OfProduct product) {
                String key = Names.key(product.product());
                names.putIfAbsent(key, product.product());
                own.computeIfAbsent(key, any -> new TreeSet<>())
                        .add(product.units().value());
            }
        }
        List<Run> runs = new ArrayList<>();
        own.forEach((key, sizes) -> between(sizes)
                .forEach(size ->
                        runs.add(new Run.OfProduct(names.getOrDefault(key, key), Figure.of(size), Origin.NONE))));
        return runs;
    }

    private static SortedSet<BigDecimal> between(SortedSet<BigDecimal> own) {
        SortedSet<BigDecimal> all = new TreeSet<>();
        double first = own.first().doubleValue();
        double last = own.last().doubleValue();
        for (int point = 1; point <= POINTS && last > first; point++) {
            double size = first * Math.pow(last / first, (double) point / (POINTS + 1));
            BigDecimal round = BigDecimal.valueOf(size).round(ROUND).setScale(0, RoundingMode.HALF_UP);
            if (round.compareTo(own.first()) > 0 && round.compareTo(own.last()) < 0 && !own.contains(round)) {
                all.add(round);
            }
        }
        return all;
    }
}
