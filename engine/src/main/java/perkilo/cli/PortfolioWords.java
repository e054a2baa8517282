package perkilo.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.desk.BookView;
import perkilo.desk.CostAnswer;
import perkilo.desk.CostPortfolio;
import perkilo.desk.CostedBook;
import perkilo.desk.PortfolioAnswer;
import perkilo.desk.PortfolioRequest;
import perkilo.json.CostJson;
import perkilo.json.Json;
import perkilo.origin.Account;
import perkilo.origin.Counted;
import perkilo.origin.Finding;
import perkilo.report.portfolio.PortfolioBook;

/** The costs of many books, for the terminal and as JSON. */
final class PortfolioWords implements BookView<PortfolioWords.Shown> {

    private final Command command;
    private final Console console;

    PortfolioWords(Command command, Console console) {
        this.command = command;
        this.console = console;
    }

    /**
     * The part of a costed book that is kept for printing.
     *
     * @param lines its runs in the table
     * @param json the answer that {@code --json} prints for the book alone; null if the output is not JSON
     */
    record Shown(List<List<String>> lines, @Nullable ObjectNode json) {}

    @Override
    public Shown of(Path book, CostAnswer.Costed costed) {
        List<List<String>> lines = new ArrayList<>();
        for (List<String> line : CostTable.lines(costed.costed())) {
            List<String> indented = new ArrayList<>(line);
            indented.set(0, "  " + line.get(0));
            lines.add(indented);
        }
        return new Shown(
                lines, console.isJson() ? CostJson.of(costed.costed(), costed.decisions(), costed.findings()) : null);
    }

    /** Costs all books, prints the results and returns the exit code. */
    int cost(PortfolioRequest request) throws IOException {
        PortfolioAnswer<Shown> answer;
        try (Progress progress = console.progress()) {
            answer = new CostPortfolio().cost(request, this, progress);
        }
        if (answer instanceof PortfolioAnswer.Done<Shown> done) {
            print(done);
            return exit(done);
        }
        if (answer instanceof PortfolioAnswer.BadInput<Shown> bad) {
            return console.refuse(Account.NONE, bad.findings(), Exit.BAD_INPUT);
        }
        if (answer instanceof PortfolioAnswer.NoFolder<Shown> no) {
            throw command.wrong(CommandMessages.outIsNoFolder(no.out()));
        }
        if (answer instanceof PortfolioAnswer.SamePlace<Shown> same) {
            throw command.wrong(CommandMessages.sameResult(same.one(), same.other(), same.target()));
        }
        throw new AssertionError(answer);
    }

    /** The exit code: a fault of the program in one book counts more than errors in others. */
    static int exit(PortfolioAnswer.Done<?> done) {
        int exit = Exit.DONE;
        boolean costed = false;
        for (CostedBook<?> book : done.books()) {
            if (book.isFaulty()) {
                return Exit.FAULT;
            }
            costed |= book.isCosted();
            if (!book.isCosted() || !book.isComplete()) {
                exit = Exit.PARTLY;
            }
        }
        return costed || exit == Exit.DONE ? exit : Exit.BAD_INPUT;
    }

    private void print(PortfolioAnswer.Done<Shown> done) {
        console.findings(done.shared());
        TextTable table = CostTable.ofSeveral();
        for (CostedBook<Shown> book : done.books()) {
            table.row(List.of(heading(book), "", "", "", "", "", ""));
            if (book.view() != null) {
                book.view().lines().forEach(table::row);
            }
        }
        if (console.isJson()) {
            console.answers(Json.array(done.books(), PortfolioWords::json));
        }
        console.table(table);
        for (CostedBook<Shown> book : done.books()) {
            console.findingsOf(book.shown().name(), book.shown().findings());
            console.kept("The result of " + book.shown().name(), book.backup());
        }
        console.written(done.summary());
    }

    private static ObjectNode json(CostedBook<Shown> book) {
        ObjectNode json = Json.object().put("book", book.file().toString());
        Shown shown = book.view();
        json.setAll(
                shown == null || shown.json() == null
                        ? Json.onlyMessages(Account.NONE, book.findings())
                        : shown.json());
        return json;
    }

    private static String heading(CostedBook<Shown> book) {
        PortfolioBook.Costs costs = book.shown().costs();
        String name = book.shown().name();
        if (costs != null) {
            return name + " (" + costs.home() + ")" + costs.leftOutWords();
        }
        long errors = book.findings().stream().filter(Finding::isError).count();
        return name + ": not costed, " + Counted.of(errors, "error");
    }
}
