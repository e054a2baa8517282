package perkilo.cli;

import java.io.IOException;
import java.time.Duration;
import perkilo.desk.Destination;
import perkilo.desk.OrderAnswer;
import perkilo.desk.OrderRequest;
import perkilo.desk.PlanOrders;
import perkilo.json.OrderJson;
import perkilo.orderplan.OrderOutcome;
import perkilo.report.order.OrdersTable;
import perkilo.xlsx.parts.FileStamp;
import perkilo.xlsx.write.Written;
import picocli.CommandLine.Model.OptionSpec;

/** The command {@code order}: plans the purchases for all demand. */
final class OrderCommand extends Command {

    private final OptionSpec seconds = Options.valueOr(
            "60",
            int.class,
            "SECONDS",
            "Stop the search after this time and use the best plan so far. Default: ${DEFAULT-VALUE}.",
            "--time");
    private final OptionSpec whySeconds = Options.valueOr(
            "30",
            int.class,
            "SECONDS",
            "Spend at most this time on the sheet Why these orders: what else could have been done, and what that"
                    + " would cost. 0 leaves it out. Default: ${DEFAULT-VALUE}.",
            "--why");
    private final BookOptions options;
    private final OutputOptions output;

    OrderCommand() {
        super(
                "order",
                "Plan the purchases for all demand: what to buy, from whom and when. The result tells whether the plan is proven cheapest.");
        options = new BookOptions(this);
        output = new OutputOptions(this);
        takes(seconds, whySeconds);
    }

    @Override
    public Integer call() throws IOException {
        output.checkUsage();
        Console console = new Console(this, options);
        FileStamp book = FileStamp.of(options.book());
        OrderAnswer answer;
        try (Progress progress = console.progress()) {
            answer = new PlanOrders().plan(request(), progress);
        }
        if (answer instanceof OrderAnswer.Planned planned) {
            return said(console, book, planned);
        }
        return console.refuse(answer.account(), answer.findings(), Exit.BAD_INPUT);
    }

    private OrderRequest request() {
        Duration search = Duration.ofSeconds(seconds.<Integer>getValue());
        Duration why = Duration.ofSeconds(whySeconds.<Integer>getValue());
        return new OrderRequest(options.sources(), search, why, today());
    }

    private int said(Console console, FileStamp book, OrderAnswer.Planned answer) throws IOException {
        OrderOutcome.Planned planned = answer.planned();
        Written written = output.destination().write(book, Destination.ORDERED, answer.report(), today());
        if (options.json()) {
            console.json(OrderJson.of(planned, answer.reasons(), answer.findings()));
        }
        if (!planned.unmet().isEmpty()) {
            console.say(planned.unmet().headline());
        } else if (!answer.isComplete()) {
            console.say(CommandMessages.answeredWithErrors());
        }
        console.table(TextTable.of(OrdersTable.of(planned)));
        UnmetWords.say(console, planned.unmet());
        console.say(planned.plan().answer(planned.book().settings().home().getCurrencyCode()));
        console.findings(answer.findings());
        console.written(written);
        return answer.isComplete() ? Exit.DONE : Exit.PARTLY;
    }
}
