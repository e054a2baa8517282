package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a check says of a workbook as a whole. */
final class CheckCommandTest {

    private static final int LEAD_TIME = 9;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void one_of_a_kind_is_told_as_one() throws IOException {
        Path book = template("minimal");
        assertThat(CommandLineRun.of("check", book).out())
                .contains("1 formula, 6 materials, ", " of 2 suppliers, 1 product, 1 run\n", "0 errors, 0 warnings");

        CommandLineRun wrong = CommandLineRun.of("check", with(book, "Runs", 1, 1, "many"));
        assertThat(wrong.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(wrong.out()).contains(", 0 runs", "1 error, 0 warnings");
    }

    @Test
    void what_keeps_orders_from_being_planned_is_told_with_everything_else() throws IOException {
        Path late = with(template("orders"), "Demand", 1, 2, "2026-10-05");
        String told = "is needed by 2026-10-05, before the costing date of";
        for (String command : List.of("check", "order")) {
            CommandLineRun run = quickly(command, late);
            assertThat(run.exit()).as(command).isEqualTo(command.equals("check") ? Exit.BAD_INPUT : Exit.PARTLY);
            assertThat(run.err()).as(command).containsOnlyOnce(told);
        }
        Path lateAndWrong = with(late, "Runs", 1, 1, "many");
        for (String command : List.of("check", "order")) {
            assertThat(quickly(command, lateAndWrong).err()).as(command).contains(told, "Units is \"many\"");
        }
        assertThat(CommandLineRun.of("cost", "-q", late, "-o", folder.resolve("costed.xlsx"))
                        .exit())
                .as("a cost needs no demand")
                .isEqualTo(Exit.DONE);
    }

    /** Runs a command without looking for the reasons of a plan. */
    private static CommandLineRun quickly(String command, Path book) {
        return command.equals("order")
                ? CommandLineRun.of(command, book, "--why", "0")
                : CommandLineRun.of(command, book);
    }

    @Test
    void what_orders_are_planned_for_is_told_with_its_sheets() throws IOException {
        Path orders = template("orders");
        assertThat(CommandLineRun.of("check", orders).out())
                .contains("26 rows of demand (Demand), 26 rows of stock (Stock)\n");

        CommandLineRun onOrder = CommandLineRun.of("check", with(orders, "Stock", 2, 4, "2099-01-31"));
        assertThat(onOrder.out()).contains(", 25 rows of stock (Stock), 1 row of goods on order (Stock)\n");
    }

    @Test
    void a_supplier_whose_lead_time_nobody_knows_is_pointed_out_where_orders_are_planned() throws IOException {
        Path orders = template("orders");
        String told =
                "warning Suppliers!A2: Quillfen Small Lots has no lead time, so orders are planned as if delivered on"
                        + " the day they are placed. Fill Lead time days, with 0 if that is right.";

        Path blank = with(orders, "Suppliers", 1, LEAD_TIME, "");
        assertThat(CommandLineRun.of("check", blank).err()).containsOnlyOnce(told);
        assertThat(CommandLineRun.of("order", "-q", "--why", "0", blank, "-o", folder.resolve("ordered.xlsx"))
                        .err())
                .containsOnlyOnce(told);
        assertThat(CommandLineRun.of("cost", "-q", blank, "-o", folder.resolve("costed.xlsx"))
                        .err())
                .as("a cost knows no time")
                .doesNotContain("lead time");
        assertThat(CommandLineRun.of("check", with(orders, "Suppliers", 1, LEAD_TIME, "0"))
                        .err())
                .as("at once, as somebody says")
                .doesNotContain("lead time");
    }

    private Path template(String name) {
        Path book = folder.resolve(name + ".xlsx");
        assertThat(CommandLineRun.of("new", name, book).exit()).isZero();
        return book;
    }

    /** The book with another text in a cell; row and column from zero. */
    private Path with(Path book, String sheet, int row, int column, String text) throws IOException {
        Path changed = folder.resolve(sheet + ".xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(book));
                OutputStream out = Files.newOutputStream(changed)) {
            workbook.getSheet(sheet).getRow(row).createCell(column).setCellValue(text);
            workbook.write(out);
        }
        return changed;
    }
}
