package perkilo.cli;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import perkilo.json.OrderJson;
import perkilo.model.Book;
import perkilo.orderplan.OrderBook;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.Reasons;
import perkilo.orderplan.SupplierOrder;
import perkilo.orderplan.WhyThis;
import perkilo.origin.Decimals;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.report.order.OrderReport;
import perkilo.units.Currencies;
import perkilo.xlsx.write.Written;
import picocli.CommandLine.Model.OptionSpec;

/** Plans the purchases for all demand. */
final class OrderCommand extends Command {

    private final OptionSpec seconds = Options.valueOr(
            "60",
            int.class,
            "SECONDS",
            "Stop the search after this time and take the best plan so far; usually ${DEFAULT-VALUE}.",
            "--time");
    private final OptionSpec whySeconds = Options.valueOr(
            "30",
            int.class,
            "SECONDS",
            "Look this long into what else could have been done, and what that would cost; usually ${DEFAULT-VALUE},"
                    + " 0 for not at all.",
            "--why");
    private final BookOptions options;
    private final OutputOptions output;

    OrderCommand() {
        super(
                "order",
                "Plan the purchases for all demand: what to buy, from whom, when; proven cheapest where it says so.");
        options = new BookOptions(this);
        output = new OutputOptions(this);
        takes(seconds, whySeconds);
    }

    @Override
    public Integer call() throws IOException {
        output.checkUsage();
        Console console = new Console(this, options);
        Reading<Book> reading = options.readWithDemand();
        if (reading.hasErrors()) {
            return console.refuse(reading.findings(), Exit.BAD_INPUT);
        }
        SearchLimits limits = SearchLimits.within(Duration.ofSeconds(seconds.<Integer>getValue()));
        OrderOutcome outcome = new OrderBook(new CheapestPlan(), limits).plan(reading.value());
        List<Finding> findings = new ArrayList<>(reading.findings());
        findings.addAll(outcome.findings());
        if (outcome instanceof OrderOutcome.Planned planned) {
            return answer(console, planned, findings);
        }
        boolean badInput = outcome instanceof OrderOutcome.NoPlan none && none.badInput();
        return console.refuse(findings, badInput ? Exit.BAD_INPUT : Exit.NO_PLAN);
    }

    private int answer(Console console, OrderOutcome.Planned planned, List<Finding> findings) throws IOException {
        Reasons reasons = reasons(planned);
        ResultFile file = new ResultFile(options.book(), output, ResultFile.ORDERED);
        Written written = file.write(OrderReport.of(planned, reasons, findings));
        if (options.json()) {
            console.json(OrderJson.of(planned, reasons, findings));
        }
        console.table(table(planned));
        console.say(planned.plan().answer(planned.book().settings().home().getCurrencyCode()));
        console.findings(findings);
        console.written(written);
        return Exit.DONE;
    }

    private Reasons reasons(OrderOutcome.Planned planned) {
        int longest = whySeconds.<Integer>getValue();
        if (longest <= 0) {
            return Reasons.NONE;
        }
        WhyThis.Limits limits = WhyThis.Limits.within(Duration.ofSeconds(longest));
        return new WhyThis(new CheapestPlan(), limits).of(planned);
    }

    private static TextTable table(OrderOutcome.Planned planned) {
        String home = planned.book().settings().home().getCurrencyCode();
        TextTable table = new TextTable("Supplier", "Order by", "Needed by", "Lines", "Goods", "Landed, " + home);
        for (SupplierOrder order : planned.plan().orders()) {
            int minor = Currencies.minorDigits(order.supplier().currency());
            table.row(List.of(
                    order.supplier().name(),
                    order.orderBy().toString(),
                    order.neededBy().toString(),
                    Integer.toString(order.cost().lines().size()),
                    Decimals.amount(order.cost().goods(), minor) + " "
                            + order.supplier().currency(),
                    Decimals.amount(
                            order.landed(),
                            Currencies.minorDigits(planned.book().settings().home()))));
        }
        return table;
    }
}
