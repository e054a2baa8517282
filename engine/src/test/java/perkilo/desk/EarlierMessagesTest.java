package perkilo.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.report.cost.MessagesSheet;
import perkilo.sheet.Report;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;
import perkilo.xlsx.parts.FileStamp;

/** Messages of several commands are side by side in a workbook, and each command replaces its own. */
final class EarlierMessagesTest {

    private static final Finding SHARED =
            Finding.warning(cell("Offers", "F12"), "The price is old. Ask for a new one.");
    private static final Finding OF_COST = Finding.note(cell("Runs", "B2"), "A half batch is made.");
    private static final Finding OF_ORDER = Finding.error(cell("Demand", "C4"), "The day is past. Type a later one.");

    @TempDir
    private Path folder = Path.of("");

    private Path book = Path.of("");

    @BeforeEach
    void a_book() throws IOException {
        book = Templates.book(folder, Template.MINIMAL);
    }

    private static Origin cell(String sheet, String cell) {
        return new Origin("minimal.xlsx", sheet, cell);
    }

    @Test
    void commands_stay_side_by_side() throws IOException {
        write("cost", SHARED, OF_COST);
        write("order", SHARED, OF_ORDER);

        assertThat(shown())
                .containsExactly(
                        "order, cost|warning|Offers!F12|The price is old. Ask for a new one.",
                        "order|error|Demand!C4|The day is past. Type a later one.",
                        "cost|note|Runs!B2|A half batch is made.");
    }

    @Test
    void a_command_replaces_its_own_messages_alone() throws IOException {
        write("cost", SHARED, OF_COST);
        write("order", SHARED, OF_ORDER);
        write("cost");

        assertThat(shown())
                .containsExactly(
                        "order|warning|Offers!F12|The price is old. Ask for a new one.",
                        "order|error|Demand!C4|The day is past. Type a later one.");
        write("order");
        assertThat(shown()).isEmpty();
    }

    @Test
    void real_commands_say_who_they_are() throws IOException {
        Path orders = Templates.book(folder, Template.ORDERS);
        CostAnswer costs = new CostBook()
                .cost(new CostRequest(Templates.alone(orders), RunSizes.OF_THE_BOOK, Templates.DAY), Watch.NONE);
        Report report = ((CostAnswer.Costed) costs).report();

        assertThat(report.said()).isNotNull().satisfies(said -> {
            assertThat(said.command()).isEqualTo("cost");
            assertThat(said.findings()).isEqualTo(costs.findings());
        });
    }

    private void write(String command, Finding... findings) throws IOException {
        Report.Said said = new Report.Said(command, List.of(findings));
        Report report = new Report(List.of(MessagesSheet.of(said)), said);
        new Destination(null, true, false).write(FileStamp.of(book), "", report, Templates.DAY);
    }

    /** The rows below the headers. */
    private List<String> shown() throws IOException {
        List<String> rows = new ArrayList<>();
        for (Grid sheet : Grids.ofResults(book, "Messages")) {
            for (int row : sheet.rows().numbers()) {
                List<String> texts = sheet.row(row).values().stream()
                        .map(cell -> cell.text())
                        .toList();
                if (texts.size() == 4 && !texts.get(0).equals("Command")) {
                    rows.add(String.join("|", texts));
                }
            }
        }
        return rows;
    }
}
