package perkilo.cli;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import perkilo.json.OrderJson;
import perkilo.model.Book;
import perkilo.ordering.CheapestPlan;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.report.Decimals;
import perkilo.report.order.OrderReport;
import perkilo.supply.OrderBook;
import perkilo.supply.OrderOutcome;
import perkilo.supply.Reasons;
import perkilo.supply.SupplierOrder;
import perkilo.supply.WhyThis;
import perkilo.units.Currencies;
import perkilo.workbook.write.Written;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Plans the purchases for all demand. */
@Command(
        name = "order",
        mixinStandardHelpOptions = true,
        description =
                "Plan the purchases for all demand: what to buy, from whom, when; proven cheapest where it says so.")
final class OrderCommand implements Callable<Integer> {

    @Mixin
    private BookOptions options = new BookOptions();

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Option(
            names = "--time",
            paramLabel = "SECONDS",
            defaultValue = "60",
            description = "Stop the search after this time and take the best plan so far; usually ${DEFAULT-VALUE}.")
    private int seconds;

    @Option(
            names = "--why",
            paramLabel = "SECONDS",
            defaultValue = "30",
            description = "Look this long into what else could have been done, and what that would cost; usually"
                    + " ${DEFAULT-VALUE}, 0 for not at all.")
    private int whySeconds;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        output.checkUsage(spec);
        Console console = new Console(spec, options);
        Reading<Book> reading = options.read();
        if (reading.hasErrors()) {
            return console.refuse(reading.findings(), Exit.BAD_INPUT);
        }
        SearchLimits limits = SearchLimits.within(Duration.ofSeconds(seconds));
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
        if (whySeconds <= 0) {
            return Reasons.NONE;
        }
        WhyThis.Limits limits = WhyThis.Limits.within(Duration.ofSeconds(whySeconds));
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
