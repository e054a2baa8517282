package perkilo.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.origin.Origin;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.xlsx.write.WorkbookWriter;

/** Answers come back from the sheet, however the rows were sorted, deleted or saved. */
final class FilledInTest {

    private static final List<String> ANSWERS = List.of(QuestionsSheet.ANSWER);
    private static final List<String> MANY =
            IntStream.range(0, 60).mapToObj(n -> "material, number " + n).toList();
    private static final Asked COMMA = Asked.of(
            Key.of("a.xlsx", "decimals"),
            Origin.ofCell("a.xlsx", "Preise", 4, 2),
            "1.250",
            "Does \"1.250\" mean 1.25 or 1250?",
            List.of("point", "comma"));
    private static final Asked DAY =
            Asked.of(Key.of("a.xlsx", "day"), new Origin("a.xlsx", "", ""), "", "From which day?", List.of());
    private static final Asked NAME = Asked.of(
                    Key.of("b.csv", "name", "Shea"), Origin.ofLine("b.csv", "", 7), "Shea", "Which item is it?", MANY)
            .answered(MANY.get(7), Asked.AS_LAST_TIME);

    @TempDir
    private Path folder = Path.of("");

    private Path written() throws IOException {
        ChoiceLists lists = new ChoiceLists();
        List<ResultSheet> sheets = new ArrayList<>();
        sheets.add(QuestionsSheet.of("Questions", "Fill in the yellow cells.", List.of(COMMA, DAY, NAME), lists));
        lists.sheet().ifPresent(sheets::add);
        Path file = folder.resolve("prices-review.xlsx");
        new WorkbookWriter().writeAlone(new Report(sheets), file);
        return file;
    }

    private interface Edit {
        void on(XSSFSheet sheet);
    }

    private static void edit(Path file, Edit edit) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            edit.on(book.getSheet(QuestionsSheet.NAME));
            try (OutputStream out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
    }

    private static XSSFRow row(XSSFSheet sheet, Asked asked) {
        DataFormatter words = new DataFormatter();
        for (int number = 0; number <= sheet.getLastRowNum(); number++) {
            XSSFRow row = sheet.getRow(number);
            if (row != null && words.formatCellValue(row.getCell(6)).startsWith(asked.key())) {
                return row;
            }
        }
        throw new AssertionError("no row of " + asked);
    }

    @Test
    void an_untouched_sheet_says_what_was_filled_in_and_that_nothing_changed() throws IOException {
        FilledIn read = FilledIn.read(written(), ANSWERS);

        assertThat(read.rows()).hasSize(3).noneMatch(FilledIn.FilledRow::changed);
        assertThat(read.answer(COMMA.key(), QuestionsSheet.ANSWER)).isEmpty();
        assertThat(read.answer(NAME.key(), QuestionsSheet.ANSWER)).contains(MANY.get(7));
        assertThat(read.row(COMMA.key()).orElseThrow().words())
                .containsEntry("Where", "Preise!C5")
                .containsEntry("What is there", "1.250");
    }

    @Test
    void answers_survive_other_types_another_order_and_deleted_rows() throws IOException {
        Path file = written();
        edit(file, sheet -> {
            row(sheet, COMMA).getCell(4).setCellValue(" Comma ");
            row(sheet, DAY).getCell(4).setCellValue(LocalDate.of(2026, 11, 3));
            row(sheet, DAY).getCell(4).getCellStyle().setDataFormat((short) 14);
            sheet.removeRow(row(sheet, NAME));
            sheet.shiftRows(row(sheet, COMMA).getRowNum(), row(sheet, COMMA).getRowNum(), 40);
        });

        FilledIn read = FilledIn.read(file, ANSWERS);

        assertThat(read.answer(COMMA.key(), QuestionsSheet.ANSWER)).contains("Comma");
        assertThat(read.answer(DAY.key(), QuestionsSheet.ANSWER)).contains("2026-11-03");
        assertThat(read.row(NAME.key())).isEmpty();
        assertThat(read.rows()).hasSize(2).allMatch(FilledIn.FilledRow::changed);
    }

    @Test
    void an_answer_that_is_taken_out_counts_as_changed() throws IOException {
        Path file = written();
        edit(file, sheet -> row(sheet, NAME).getCell(4).setBlank());

        FilledIn read = FilledIn.read(file, ANSWERS);

        assertThat(read.answer(NAME.key(), QuestionsSheet.ANSWER)).isEmpty();
        assertThat(read.row(NAME.key()).orElseThrow().changed()).isTrue();
    }

    @Test
    void without_a_file_nothing_is_filled_in() throws IOException {
        assertThat(FilledIn.read(folder.resolve("none.xlsx"), ANSWERS).isEmpty())
                .isTrue();
    }

    @Test
    void the_office_suite_of_the_person_finds_the_lists_to_choose_from() throws IOException {
        checkLists(written());
    }

    @Test
    @Tag("office")
    void what_libreoffice_saves_keeps_the_lists_and_the_answers() throws Exception {
        Path file = written();
        edit(file, sheet -> row(sheet, COMMA).getCell(4).setCellValue("comma"));

        Path saved = SavedByOffice.of(file);

        checkLists(saved);
        FilledIn read = FilledIn.read(saved, ANSWERS);
        assertThat(read.answer(COMMA.key(), QuestionsSheet.ANSWER)).contains("comma");
        assertThat(read.answer(NAME.key(), QuestionsSheet.ANSWER)).contains(MANY.get(7));
        assertThat(read.rows().stream().filter(FilledIn.FilledRow::changed).map(FilledIn.FilledRow::key))
                .containsExactly(COMMA.key());
    }

    private static void checkLists(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            XSSFSheet sheet = book.getSheet(QuestionsSheet.NAME);
            Map<Integer, String[]> offered = new HashMap<>();
            for (XSSFDataValidation list : sheet.getDataValidations()) {
                var constraint = list.getValidationConstraint();
                for (var range : list.getRegions().getCellRangeAddresses()) {
                    assertThat(range.getFirstColumn()).isEqualTo(4);
                    String[] words = constraint.getExplicitListValues();
                    offered.put(range.getFirstRow(), words != null ? words : new String[] {constraint.getFormula1()});
                }
            }
            assertThat(offered).hasSize(2);
            assertThat(offered.get(row(sheet, COMMA).getRowNum())).containsExactly("point", "comma");
            assertThat(offered.get(row(sheet, NAME).getRowNum()))
                    .singleElement()
                    .satisfies(formula ->
                            assertThat(formula.replaceAll("['$]", "")).isEqualTo("Choices!A1:A60"));
            assertThat(book.isSheetHidden(book.getSheetIndex(ChoiceLists.SHEET)))
                    .isTrue();
            assertThat(book.getSheet(ChoiceLists.SHEET).getRow(59).getCell(0).getStringCellValue())
                    .isEqualTo(MANY.get(59));
            assertThat(row(sheet, COMMA).getCell(4).getCellStyle().getLocked()).isFalse();
            assertThat(row(sheet, COMMA).getCell(3).getCellStyle().getLocked()).isTrue();
        }
    }
}
