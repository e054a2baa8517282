package perkilo.reading;

import static perkilo.schema.RatesSheet.DATE_OF;
import static perkilo.schema.RatesSheet.FROM;
import static perkilo.schema.RatesSheet.RATE;
import static perkilo.schema.RatesSheet.TO;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.reading.table.CellMessages;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;
import perkilo.schema.InputColumn;
import perkilo.schema.RatesSheet;
import perkilo.units.DatedRate;

/** Reads tables of exchange rates. */
final class RateRows {

    private final Findings findings;
    private final Map<List<Object>, DatedRate> rates = new LinkedHashMap<>();

    RateRows(Findings findings) {
        this.findings = findings;
    }

    /** The rates of all tables, each pair and day once. */
    List<DatedRate> read(Tables tables) {
        for (TableRow row : tables.rows(RatesSheet.SCHEMA, findings)) {
            DatedRate rate = rate(row);
            if (rate != null) {
                add(rate);
            }
        }
        return new ArrayList<>(rates.values());
    }

    private void add(DatedRate rate) {
        DatedRate first = rates.putIfAbsent(List.of(rate.from(), rate.to(), rate.date()), rate);
        if (first != null && first.rate().value().compareTo(rate.rate().value()) != 0) {
            findings.error(
                    rate.rate().origin(),
                    RateTableMessages.secondRate(
                            rate.from().getCurrencyCode(),
                            rate.to().getCurrencyCode(),
                            rate.date(),
                            first.rate().origin().where()));
        }
    }

    private @Nullable DatedRate rate(TableRow row) {
        row.require(RATE, DATE_OF);
        CurrencyUnit from = currency(row, FROM);
        CurrencyUnit to = currency(row, TO);
        Figure rate = row.figure(RATE);
        LocalDate date = row.date(DATE_OF);
        if (from != null && from.equals(to)) {
            findings.error(row.origin(TO), RateTableMessages.sameCurrency(from.getCurrencyCode()));
            return null;
        }
        return from == null || to == null || rate == null || date == null
                ? null
                : new DatedRate(from, to, rate, date, row.text(RatesSheet.SOURCE));
    }

    private @Nullable CurrencyUnit currency(TableRow row, InputColumn column) {
        CurrencySign sign = row.currency(column);
        if (sign != null && !sign.isClear()) {
            findings.error(
                    row.origin(column),
                    CellMessages.sharedSign(
                            column.header(), sign.text(), sign.meanings().get(0).getCurrencyCode()));
            return null;
        }
        return sign == null ? null : sign.meanings().get(0);
    }
}
