package perkilo.reading;

import static perkilo.schema.RatesSheet.DATE_OF;
import static perkilo.schema.RatesSheet.FROM;
import static perkilo.schema.RatesSheet.RATE;
import static perkilo.schema.RatesSheet.TO;
import static perkilo.schema.RatesSheet.UNITS;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.reading.table.CellMessages;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.DateText;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.NumberText;
import perkilo.reading.table.TableRow;
import perkilo.schema.InputColumn;
import perkilo.schema.RatesSheet;
import perkilo.units.DatedRate;
import perkilo.xlsx.grid.Cell;

/** Reads tables of exchange rates. */
final class RateRows {

    private final Findings findings;
    private final RateAnswers answers;
    private final UniqueRates rates;
    private @Nullable FoundTable table;
    private @Nullable RateCells cells;
    private boolean askedDay;
    private boolean askedNumber;

    /** For tables of a workbook, about which nothing is asked. */
    RateRows(Findings findings) {
        this(findings, RateAnswers.none());
    }

    RateRows(Findings findings, RateAnswers answers) {
        this.findings = findings;
        this.answers = answers;
        this.rates = new UniqueRates(findings);
    }

    /** The rates of all tables, each pair and day once. */
    List<DatedRate> read(Tables tables) {
        for (TableRow row : tables.rows(RatesSheet.SCHEMA, findings)) {
            DatedRate rate = rate(row);
            if (rate != null) {
                rates.add(rate);
            }
        }
        return new RateJumps(findings, answers).settled(rates.list());
    }

    private @Nullable DatedRate rate(TableRow row) {
        row.require(RATE, DATE_OF);
        CurrencyUnit from = currency(row, FROM);
        CurrencyUnit to = currency(row, TO);
        Figure rate = rate(row, cells(row.table()));
        LocalDate date = day(row, cells(row.table()));
        Figure units = row.figure(UNITS);
        if (from != null && from.equals(to)) {
            findings.error(row.origin(TO), RateTableMessages.sameCurrency(from.getCurrencyCode()));
            return null;
        }
        if (from == null || to == null || rate == null || date == null || (units == null && !row.isBlank(UNITS))) {
            return null;
        }
        Figure one = units == null ? rate : rate.times(BigDecimal.ONE.divide(units.value(), MathContext.DECIMAL128));
        return new DatedRate(from, to, one, date, row.text(RatesSheet.SOURCE));
    }

    private RateCells cells(FoundTable of) {
        if (cells == null || !of.equals(table)) {
            table = of;
            cells = new RateCells(
                    of.grid(), of.headerRow(), of.lastRow(), column(of, DATE_OF), List.of(column(of, RATE)), answers);
            askedDay = false;
            askedNumber = false;
        }
        return cells;
    }

    private static int column(FoundTable of, InputColumn column) {
        FoundTable.Place place = of.columns().get(column);
        return place == null ? 0 : place.index();
    }

    /** The rate; a text that can be two numbers is decided by the others in a text file, else asked about once. */
    private @Nullable Figure rate(TableRow row, RateCells cells) {
        Cell cell = row.cell(RATE);
        boolean two = cell.kind() == Cell.Kind.TEXT && NumberText.parse(cell.text()) instanceof NumberText.Ambiguous;
        if (!two || row.table().grid().ofBook()) {
            return row.figure(RATE);
        }
        BigDecimal number = cells.number(cell);
        if (number == null && !askedNumber) {
            askedNumber = true;
            findings.error(row.origin(RATE), RateTableMessages.twoRates(cell.text()));
        }
        return number == null ? null : new Figure(number, row.origin(RATE), null);
    }

    /** The day; a text that can be two days is decided by the others, else asked about once. */
    private @Nullable LocalDate day(TableRow row, RateCells cells) {
        Cell cell = row.cell(DATE_OF);
        boolean two = cell.kind() == Cell.Kind.TEXT && DateText.parse(cell.text()) instanceof DateText.Ambiguous;
        if (!two) {
            return row.date(DATE_OF);
        }
        LocalDate day = cells.day(cell);
        if (day == null && !askedDay) {
            askedDay = true;
            findings.error(row.origin(DATE_OF), RateTableMessages.twoDays(cell.text()));
        }
        return day;
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
