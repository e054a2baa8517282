package perkilo.layouts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Pairs of columns, each a quantity and its price: {@code Qty 1, Price 1, Qty 2, Price 2}. */
final class PairedColumns {

    private static final Pattern NUMBERED = Pattern.compile("(.*\\D)(\\d{1,2})\\.?\\s*(\\(.*\\))?");

    private PairedColumns() {}

    /**
     * The pairs of a table.
     *
     * @param headers what is written above each column
     * @param readings what each header means; corrected for columns in pairs
     * @return for each column of prices its column of quantities
     */
    static Map<Integer, Integer> of(NavigableMap<Integer, String> headers, Map<Integer, HeaderReading> readings) {
        Map<Integer, Integer> numbered = numbered(headers, readings);
        return numbered.isEmpty() ? alternating(headers, readings) : numbered;
    }

    private static Map<Integer, Integer> numbered(
            NavigableMap<Integer, String> headers, Map<Integer, HeaderReading> readings) {
        Map<String, Integer> quantities = new TreeMap<>();
        Map<String, Integer> prices = new TreeMap<>();
        Map<Integer, HeaderReading> found = new HashMap<>();
        headers.forEach((column, header) -> {
            Matcher number = NUMBERED.matcher(header.strip());
            HeaderReading base = number.matches()
                    ? HeaderReading.of(number.group(1) + (number.group(3) == null ? "" : number.group(3)))
                            .orElse(null)
                    : null;
            if (base != null && is(base, Meaning.FROM)) {
                quantities.putIfAbsent(number.group(2), column);
                found.put(column, base);
            } else if (base != null && is(base, Meaning.PRICE)) {
                prices.putIfAbsent(number.group(2), column);
                found.put(column, base);
            }
        });
        quantities.keySet().retainAll(prices.keySet());
        Map<Integer, Integer> pairs = new LinkedHashMap<>();
        if (quantities.size() > 1) {
            quantities.forEach((number, quantity) -> {
                int price = prices.getOrDefault(number, quantity);
                pairs.put(price, quantity);
                readings.put(price, found.getOrDefault(price, readings.get(price)));
                readings.put(quantity, found.getOrDefault(quantity, readings.get(quantity)));
            });
        }
        return pairs;
    }

    private static Map<Integer, Integer> alternating(
            NavigableMap<Integer, String> headers, Map<Integer, HeaderReading> readings) {
        Map<Integer, Integer> pairs = new LinkedHashMap<>();
        List<Integer> columns = new ArrayList<>(headers.keySet());
        for (int at = 0; at + 1 < columns.size(); at++) {
            int quantity = columns.get(at);
            int price = columns.get(at + 1);
            if (is(readings.get(quantity), Meaning.FROM) && is(readings.get(price), Meaning.PRICE)) {
                pairs.put(price, quantity);
            }
        }
        return pairs.size() > 1 ? pairs : Map.of();
    }

    private static boolean is(@Nullable HeaderReading reading, Meaning meaning) {
        ColumnUse use = reading == null ? null : reading.use();
        return use != null && use.meaning() == meaning && use.from() == null;
    }
}
