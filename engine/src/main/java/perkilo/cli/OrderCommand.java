package perkilo.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.desk.Destination;
import perkilo.desk.OrderAnswer;
import perkilo.desk.OrderFiles;
import perkilo.desk.OrderRequest;
import perkilo.desk.PlanOrders;
import perkilo.desk.WhyRequest;
import perkilo.json.OrderJson;
import perkilo.orderplan.OrderOutcome;
import perkilo.origin.Counted;
import perkilo.report.order.OrdersTable;
import perkilo.xlsx.parts.FileStamp;
import perkilo.xlsx.write.UnwritableFileException;
import perkilo.xlsx.write.Written;
import picocli.CommandLine.Model.OptionSpec;

/**
 * The command {@code order}: plans the purchases for all demand.
 *
 * <p>The plan is written before its reasons are looked for, and written again with them. Whoever stops the command in
 * between has a complete plan. Only {@code --in-place} waits for the reasons, so that the workbook is replaced once.
 */
final class OrderCommand extends Command {

    private final OptionSpec seconds = Options.valueOr(
            "60",
            int.class,
            "SECONDS",
            "Stop the search after this time and use the best plan so far. Default: ${DEFAULT-VALUE}.",
            "--time");
    private final OptionSpec reasons = Options.valueOr(
            "1",
            int.class,
            "N",
            "Do N times the usual work for the sheet Why these orders: what else could have been done, and what that would"
                    + " cost. The work is counted in steps of the search, so the answers are the same on every machine."
                    + " 0 leaves it out. Default: ${DEFAULT-VALUE}.",
            "--reasons");
    private final OptionSpec whySeconds = Options.value(
            int.class, "SECONDS", "Let the clock end the work on Why these orders instead. 0 leaves it out.", "--why");
    private final OptionSpec files = Options.value(
            Path.class,
            "DIR",
            "Write each order as a workbook that can be sent to its supplier, and orders.ics for a calendar, into this"
                    + " folder. A file that is replaced by something else is kept beside it.",
            "--files");
    private final BookOptions options;
    private final OutputOptions output;

    OrderCommand() {
        super(
                "order",
                "Plan the purchases for all demand: what to buy, from whom and when. The result tells whether the plan is proven cheapest.");
        options = new BookOptions(this);
        output = new OutputOptions(this);
        takes(seconds, reasons, whySeconds, files);
    }

    @Override
    public Integer call() throws IOException {
        output.checkUsage();
        Console console = new Console(this, options);
        FileStamp book = FileStamp.of(options.book());
        Duration search = Duration.ofSeconds(seconds.<Integer>getValue());
        PlanOrders service = new PlanOrders();
        OrderAnswer answer;
        try (Progress progress = console.progress()) {
            answer = service.plan(new OrderRequest(options.sources(), search, today()), progress);
            if (output.inPlace() && answer instanceof OrderAnswer.Planned planned) {
                answer = service.explain(planned, why(), progress);
            }
        }
        if (answer instanceof OrderAnswer.Planned planned) {
            return said(console, book, planned);
        }
        return console.refuse(answer.account(), answer.findings(), Exit.BAD_INPUT);
    }

    private WhyRequest why() {
        Integer time = Options.said(whySeconds, Integer.class);
        return time == null
                ? WhyRequest.times(reasons.<Integer>getValue())
                : WhyRequest.within(Duration.ofSeconds(time));
    }

    private int said(Console console, FileStamp book, OrderAnswer.Planned found) throws IOException {
        OrderOutcome.Planned planned = found.planned();
        Path folder = Options.said(files, Path.class);
        OrderFiles orders = folder == null ? null : new OrderFiles(folder);
        OrderAnswer.Planned answer = orders == null ? found : found.and(orders.notes(planned));
        Written written = output.destination().write(book, Destination.ORDERED, answer.report(), today());
        List<OrderFiles.WrittenFile> sent = orders == null ? List.of() : orders.write(planned, today(), Instant.now());
        if (!planned.unmet().isEmpty()) {
            console.say(planned.unmet().headline());
        } else if (!answer.isComplete()) {
            console.say(CommandMessages.answeredWithErrors());
        }
        console.table(TextTable.of(OrdersTable.of(planned)));
        UnmetWords.say(console, planned.unmet());
        String home = planned.book().settings().home().getCurrencyCode();
        console.say(planned.plan().answer(home));
        console.say(planned.plan().proof(home));
        console.findings(answer.findings());
        console.written(written);
        say(console, folder, sent);
        OrderAnswer.Planned explained = output.inPlace() ? answer : explained(console, book, answer);
        if (options.json()) {
            console.json(OrderJson.of(planned, explained.reasons(), explained.findings()));
        }
        return answer.isComplete() ? Exit.DONE : Exit.PARTLY;
    }

    /** Looks for the reasons, and writes the result again with them. */
    private OrderAnswer.Planned explained(Console console, FileStamp book, OrderAnswer.Planned answer)
            throws IOException {
        OrderAnswer.Planned explained;
        try (Progress progress = console.progress()) {
            explained = new PlanOrders().explain(answer, why(), progress);
        }
        if (explained.reasons().isEmpty()) {
            return explained;
        }
        try {
            Written again = output.destination().write(book, Destination.ORDERED, explained.report(), today());
            console.say("Why these orders added to " + again.file());
            console.kept("It", again.backup());
        } catch (UnwritableFileException e) {
            console.complain(CommandMessages.reasonsNotAdded(String.valueOf(e.getMessage())));
        }
        return explained;
    }

    private static void say(Console console, @Nullable Path folder, List<OrderFiles.WrittenFile> sent) {
        if (folder == null) {
            return;
        }
        console.say(
                "Orders to send, in " + folder + ": " + Counted.of(sent.size() - 1, "workbook") + " and a calendar");
        for (OrderFiles.WrittenFile file : sent) {
            console.say("  " + file.file().getFileName());
            console.kept(String.valueOf(file.file().getFileName()), file.backup());
        }
    }
}
