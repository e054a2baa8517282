package perkilo.reading;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.reading.table.DateText;
import perkilo.reading.table.Findings;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * The European Central Bank's reference rates as CSV: one row per day, one column per currency, each rate the units of
 * that currency for one euro.
 */
final class WideRates {

    /** The name of the bank as a source. */
    static final String SOURCE = "European Central Bank";

    /** The currency that every rate of the bank is from. */
    static final CurrencyUnit EURO = Currencies.of("EUR");

    private final Grid grid;
    private final int dateColumn;
    private final Map<Integer, CurrencyUnit> currencies;
    private final Findings findings;
    private final List<DatedRate> rates = new ArrayList<>();

    private WideRates(Grid grid, int dateColumn, Map<Integer, CurrencyUnit> currencies, Findings findings) {
        this.grid = grid;
        this.dateColumn = dateColumn;
        this.currencies = currencies;
        this.findings = findings;
    }

    /** How the bank's own file names begin. */
    private static final String NAME = "eurofxref";

    /** The least number of currencies in a file of the bank: it published rates of 28 or more. */
    private static final int LEAST_CURRENCIES = 20;

    /**
     * The rates of the first sheet, if it is the bank's file; none otherwise. That is so if its first row is Date and
     * codes of currencies, and either the file has the bank's name, or the codes begin with USD and JPY as in the
     * bank's files, are at least twenty, and do not include EUR.
     */
    static List<DatedRate> read(List<Grid> grids, Findings findings) {
        if (grids.isEmpty() || grids.get(0).rows().isEmpty()) {
            return List.of();
        }
        Grid grid = grids.get(0);
        NavigableMap<Integer, Cell> top = grid.row(grid.rows().first());
        if (!top.firstEntry().getValue().text().equalsIgnoreCase("date")) {
            return List.of();
        }
        Map<Integer, CurrencyUnit> currencies = new TreeMap<>();
        top.tailMap(top.firstKey(), false)
                .forEach((column, cell) ->
                        Currencies.find(cell.text()).ifPresent(currency -> currencies.put(column, currency)));
        if (currencies.isEmpty() || !isBanks(grid, currencies)) {
            return List.of();
        }
        top.tailMap(top.firstKey(), false).forEach((column, cell) -> {
            if (!currencies.containsKey(column)) {
                findings.warning(
                        grid.origin(grid.rows().first(), column), RateTableMessages.unknownCurrency(cell.text()));
            }
        });
        WideRates reader = new WideRates(grid, top.firstKey(), currencies, findings);
        for (int row : grid.rows().below(grid.rows().first())) {
            reader.row(row, grid.row(row));
        }
        return reader.rates;
    }

    private static boolean isBanks(Grid grid, Map<Integer, CurrencyUnit> currencies) {
        List<String> codes =
                currencies.values().stream().map(CurrencyUnit::getCurrencyCode).toList();
        return grid.file().toLowerCase(Locale.ROOT).startsWith(NAME)
                || (codes.size() >= LEAST_CURRENCIES
                        && codes.get(0).equals("USD")
                        && codes.get(1).equals("JPY")
                        && !codes.contains("EUR"));
    }

    private void row(int row, NavigableMap<Integer, Cell> cells) {
        LocalDate day = day(cells.getOrDefault(dateColumn, Cell.BLANK));
        if (day == null) {
            findings.error(
                    grid.origin(row, dateColumn),
                    RateTableMessages.notADate(
                            cells.getOrDefault(dateColumn, Cell.BLANK).text()));
            return;
        }
        currencies.forEach((column, currency) -> {
            Cell cell = cells.getOrDefault(column, Cell.BLANK);
            if (!cell.isBlank() && !cell.text().equalsIgnoreCase("N/A")) {
                rate(row, column, currency, cell, day);
            }
        });
    }

    private void rate(int row, int column, CurrencyUnit currency, Cell cell, LocalDate day) {
        BigDecimal number = cell.number();
        if (number == null || number.signum() <= 0) {
            findings.error(
                    grid.origin(row, column), RateTableMessages.notARate(currency.getCurrencyCode(), cell.text()));
        } else if (!currency.equals(EURO)) {
            rates.add(new DatedRate(EURO, currency, new Figure(number, grid.origin(row, column), null), day, SOURCE));
        }
    }

    private static @Nullable LocalDate day(Cell cell) {
        if (cell.date() != null) {
            return cell.date();
        }
        return Optional.of(DateText.parse(cell.text()))
                .filter(DateText.Parsed.class::isInstance)
                .map(DateText.Parsed.class::cast)
                .map(DateText.Parsed::day)
                .orElse(null);
    }
}
