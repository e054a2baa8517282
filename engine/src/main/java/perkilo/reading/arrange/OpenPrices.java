package perkilo.reading.arrange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import perkilo.layouts.Mapping;
import perkilo.layouts.PriceNote;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.UnitText;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * What a table of offers that is read as it is laid out leaves open for all its prices: what they are for, and their
 * currency. An answer on the sheet Reading is written into the header.
 */
final class OpenPrices {

    private static final int ROWS_LOOKED_AT = 500;

    private final Grid grid;
    private final FoundTable table;
    private final String header;

    OpenPrices(Grid grid, FoundTable table) {
        this.grid = grid;
        this.table = table;
        this.header = table.headerText(OffersSheet.PRICE);
    }

    private int column() {
        return place(OffersSheet.PRICE);
    }

    private int place(InputColumn column) {
        FoundTable.Place place = table.columns().get(column);
        return place == null ? -1 : place.index();
    }

    private PriceNote note() {
        return Headings.note(header);
    }

    private boolean lacksBasis() {
        return !table.has(OffersSheet.PRICE_PER) && !note().saysWhatFor();
    }

    private boolean lacksCurrency() {
        return !table.has(OffersSheet.CURRENCY_OF_PRICE) && note().currency() == null;
    }

    /** The header as the answers complete it, by row and column; empty if they say nothing of it. */
    Map<Integer, Map<Integer, Cell>> completed(Map<String, String> answers) {
        String per = lacksBasis() ? answers.getOrDefault(Mapping.PRICE_PER, "") : "";
        String currency = lacksCurrency() ? answers.getOrDefault(Mapping.CURRENCY, "") : "";
        if (per.isEmpty() && currency.isEmpty()) {
            return Map.of();
        }
        CurrencySign sign = note().currency();
        String money = !currency.isEmpty() ? currency : sign == null ? "" : sign.text();
        String basis = !per.isEmpty()
                ? per
                : note().pack()
                        ? "pack"
                        : note().per() == null ? "" : note().per().toString();
        String unit = money.isEmpty() || basis.isEmpty() ? money + basis : money + "/" + basis;
        Map<Integer, Map<Integer, Cell>> cells = new HashMap<>();
        cells.put(table.headerRow(), Map.of(column(), Cell.text(OffersSheet.PRICE.header() + " (" + unit + ")")));
        return cells;
    }

    /** The questions that are open for all prices of the table. */
    List<Arrangement.Open> open() {
        boolean basis = lacksBasis();
        boolean currency = lacksCurrency();
        boolean any = false;
        int[] rows = grid.rows().between(table.headerRow(), table.lastRow() + 1);
        for (int at = 0; at < Math.min(rows.length, ROWS_LOOKED_AT); at++) {
            Cell price = grid.at(rows[at], column());
            if (price.isBlank()) {
                continue;
            }
            any = true;
            UnitText above = UnitText.parse(table.priceUnit(rows[at])).orElse(UnitText.NONE);
            basis &= price.kind() == Cell.Kind.NUMBER && above.measure() == null && !above.pack();
            currency &= above.currency() == null
                    && price.kind() == Cell.Kind.NUMBER
                    && CurrencySign.ofFormat(price.format()).isEmpty();
        }
        List<Arrangement.Open> open = new ArrayList<>();
        if (any && basis) {
            open.add(new Arrangement.Open(
                    table.header(OffersSheet.PRICE),
                    Mapping.PRICE_PER,
                    ArrangeMessages.whatPricesAreFor(header),
                    List.of("pack", Measure.KG.symbol(), "100 g", Measure.L.symbol(), Measure.EACH.symbol())));
        }
        if (any && currency) {
            open.add(new Arrangement.Open(
                    table.header(OffersSheet.PRICE),
                    Mapping.CURRENCY,
                    ArrangeMessages.whatCurrency(header),
                    List.of("EUR", "GBP", "USD", "CHF")));
        }
        return open;
    }
}
