package perkilo.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.desk.PriceChangesAnswer;
import perkilo.json.PricesJson;
import perkilo.origin.Decimals;
import perkilo.costing.CostEffect;
import perkilo.offers.history.PriceChanges;
import perkilo.offers.history.QuotedPrice;
import perkilo.xlsx.write.Written;

/** What rose or fell since the last lists, for the terminal and as JSON. */
final class PriceChangesWords {

    private static final int SHOWN = 20;
    private static final int PRICE_DECIMALS = 4;

    private final Console console;

    PriceChangesWords(Console console) {
        this.console = console;
    }

    /** Prints the changes, and where they were written to. */
    void say(PriceChangesAnswer.Changed answer, Written written) {
        PriceChanges changes = answer.changes();
        CostEffect effect = answer.effect();
        if (console.isJson()) {
            console.json(PricesJson.of(changes, effect, answer.findings()));
        }
        console.say(changes.answer());
        console.table(prices(changes));
        if (changes.changed().size() > SHOWN) {
            console.say(
                    "… and %d more in the workbook".formatted(changes.changed().size() - SHOWN));
        }
        if (effect != null) {
            console.table(effects(effect));
        }
        console.findings(answer.findings());
        console.written(written);
    }

    private static TextTable prices(PriceChanges changes) {
        TextTable table = new TextTable("Item", "Supplier", "Pack", "From", "Before", "Now", "Change");
        changes.changed().stream().limit(SHOWN).forEach(change -> {
            boolean first = change.from().signum() == 0;
            table.row(List.of(
                    change.offer().item(),
                    change.offer().supplier(),
                    change.offer().pack(),
                    first ? "" : Decimals.readable(change.from(), 3),
                    price(change.before()),
                    price(change.now()),
                    change.fraction()
                            .map(PriceChangesWords::percent)
                            .orElse(change.kind().word())));
        });
        return table;
    }

    private static String price(@Nullable QuotedPrice price) {
        return price == null
                ? "–"
                : Decimals.readable(price.perUnit(), PRICE_DECIMALS) + " "
                        + price.offer().currency().getCurrencyCode() + "/"
                        + price.unit().symbol();
    }

    private static TextTable effects(CostEffect effect) {
        TextTable table = new TextTable("Run", "Cost before", "Cost now", "Change", "Change %");
        for (CostEffect.OfRun run : effect.runs()) {
            BigDecimal now = cost(run.now());
            RunCost earlier = run.before();
            BigDecimal before = earlier == null ? null : cost(earlier);
            table.row(List.of(
                    run.now().needs().title(),
                    before == null ? "–" : Decimals.amount(before, PRICE_DECIMALS),
                    Decimals.amount(now, PRICE_DECIMALS),
                    before == null ? "–" : signed(now.subtract(before)),
                    before == null ? "–" : percent(now.subtract(before).divide(before, MathContext.DECIMAL64))));
        }
        return table;
    }

    /** Per unit, or per kilogram of bulk. */
    private static BigDecimal cost(RunCost run) {
        return run.unitCost().orElseGet(run::bulkPerKg);
    }

    private static String percent(BigDecimal fraction) {
        return (fraction.signum() > 0 ? "+" : "") + Decimals.amount(fraction.movePointRight(2), 2) + " %";
    }

    private static String signed(BigDecimal change) {
        return (change.signum() > 0 ? "+" : "") + Decimals.amount(change, PRICE_DECIMALS);
    }
}
