package perkilo.xlsx.author;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.poi.ss.formula.ConditionalFormattingEvaluator;
import org.apache.poi.ss.formula.EvaluationConditionalFormatRule;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.origin.Figure;
import perkilo.report.part.Lines;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Report;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Table;

/** Dates of quotes are marked at the right days of the calendar, by another program's reading of the conditions. */
final class QuoteDatesTest {

    private static final Links LINKS = new Links("book.xlsx", List.of("Offers"), Map.of());
    private static final LocalDate ON = LocalDate.of(2026, 11, 20);
    private static final int LIMIT = 180;
    private static final int SOON = 30;
    private static final int FIRST = 5;

    private enum Mark {
        NONE,
        SOON,
        ENDED
    }

    /** Dates around every edge, over the end of a month, a year and a February; and none. */
    private static final List<@Nullable LocalDate> DATES = dates();

    private static List<@Nullable LocalDate> dates() {
        List<@Nullable LocalDate> dates = new ArrayList<>();
        for (int edge : new int[] {-400, -LIMIT, SOON - LIMIT, 0, SOON, 99}) {
            for (int by = -1; by <= 1; by++) {
                dates.add(ON.plusDays(edge + by));
            }
        }
        dates.add(null);
        return dates;
    }

    /** A quote of a day, or until a day. */
    private record Quoted(@Nullable LocalDate date) {}

    private static Report report() {
        SheetBuilder sheet = new SheetBuilder("Quotes");
        QuoteDates quotes = QuoteDates.write(new Lines(sheet, 0), ON, Figure.of(String.valueOf(LIMIT)));
        List<Quoted> rows = DATES.stream().map(Quoted::new).toList();
        Table.of(
                        quotes.quotedOn("quotedOn", "Quoted on", Quoted::date),
                        quotes.validUntil("validUntil", "Valid until", Quoted::date))
                .at(sheet, FIRST - 1, 6, rows)
                .write();
        return new Report(List.of(sheet.build()));
    }

    private static Mark age(@Nullable LocalDate quoted, LocalDate on) {
        if (quoted == null) {
            return Mark.NONE;
        }
        LocalDate lastDay = quoted.plusDays(LIMIT);
        if (lastDay.isBefore(on)) {
            return Mark.ENDED;
        }
        return lastDay.minusDays(SOON).isAfter(on) ? Mark.NONE : Mark.SOON;
    }

    private static Mark end(@Nullable LocalDate lastDay, LocalDate on) {
        if (lastDay == null) {
            return Mark.NONE;
        }
        if (lastDay.isBefore(on)) {
            return Mark.ENDED;
        }
        return ChronoUnit.DAYS.between(on, lastDay) > SOON ? Mark.NONE : Mark.SOON;
    }

    private static Mark shown(ConditionalFormattingEvaluator conditions, Cell cell) {
        List<EvaluationConditionalFormatRule> rules = conditions.getConditionalFormattingForCell(cell);
        assertThat(rules).hasSizeLessThan(2);
        if (rules.isEmpty()) {
            return Mark.NONE;
        }
        return rules.get(0).getRule().getPatternFormatting() == null ? Mark.SOON : Mark.ENDED;
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, -31, 45})
    void the_marks_follow_the_day(int later) throws IOException {
        try (XSSFWorkbook workbook = Written.read(report(), LINKS)) {
            XSSFSheet sheet = workbook.getSheetAt(0);
            LocalDate on = ON.plusDays(later);
            cell(sheet, 0, 1)
                    .setCellFormula("DATE(%d,%d,%d)".formatted(on.getYear(), on.getMonthValue(), on.getDayOfMonth()));
            XSSFFormulaEvaluator evaluator = new XSSFFormulaEvaluator(workbook);
            evaluator.evaluateAll();
            ConditionalFormattingEvaluator conditions = new ConditionalFormattingEvaluator(workbook, evaluator);
            for (int i = 0; i < DATES.size(); i++) {
                LocalDate date = DATES.get(i);
                assertThat(shown(conditions, cell(sheet, FIRST + i, 6)))
                        .as("quoted on %s", date)
                        .isEqualTo(age(date, on));
                assertThat(shown(conditions, cell(sheet, FIRST + i, 7)))
                        .as("valid until %s", date)
                        .isEqualTo(end(date, on));
            }
        }
    }

    @Test
    void dates_are_days_and_unknown_ones_say_so() throws IOException {
        try (XSSFWorkbook workbook = Written.read(report(), LINKS)) {
            XSSFSheet sheet = workbook.getSheetAt(0);
            new XSSFFormulaEvaluator(workbook).evaluateAll();
            for (int i = 0; i < DATES.size(); i++) {
                Cell cell = cell(sheet, FIRST + i, 7);
                LocalDate date = DATES.get(i);
                if (date == null) {
                    assertThat(cell.getStringCellValue()).isEqualTo("not dated");
                } else {
                    assertThat(cell.getLocalDateTimeCellValue().toLocalDate()).isEqualTo(date);
                }
            }
        }
    }

    private static Cell cell(XSSFSheet sheet, int row, int column) {
        return Objects.requireNonNull(sheet.getRow(row).getCell(column));
    }
}
