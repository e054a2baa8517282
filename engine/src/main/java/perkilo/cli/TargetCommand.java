package perkilo.cli;

import java.io.IOException;
import perkilo.desk.Destination;
import perkilo.desk.FindTarget;
import perkilo.desk.TargetAnswer;
import perkilo.desk.TargetRequest;
import perkilo.json.TargetJson;
import perkilo.report.decision.TargetTable;
import perkilo.xlsx.parts.FileStamp;
import perkilo.xlsx.write.Written;

/** The command {@code target}: from the shop price down to the allowed cost, and what would close the gap. */
final class TargetCommand extends Command {

    private final BookOptions options;
    private final OutputOptions output;
    private final RunOptions runs;

    TargetCommand() {
        super(
                "target",
                "From the target retail price down to what a unit may cost at your target margin, and what would bring it there:"
                        + " run sizes, swaps and blends, other offers. Swaps are candidates for lab tests, not approved changes.");
        options = new BookOptions(this);
        output = new OutputOptions(this);
        runs = new RunOptions(this);
    }

    @Override
    public Integer call() throws IOException {
        output.checkUsage();
        runs.checkUsage();
        Console console = new Console(this, options);
        FileStamp book = FileStamp.of(options.book());
        TargetAnswer answer;
        try (Progress progress = console.progress()) {
            answer = new FindTarget().find(new TargetRequest(options.sources(), runs.sizes(), today()), progress);
        }
        if (!(answer instanceof TargetAnswer.Found found)) {
            return console.refuse(answer.account(), answer.findings(), Exit.BAD_INPUT);
        }
        Written written = output.destination().write(book, Destination.TARGET, found.report(), today());
        if (options.json()) {
            console.json(TargetJson.of(found.costed(), found.targets(), found.findings()));
        }
        if (!found.costed().isComplete()) {
            console.say(found.costed().headline());
        } else if (!found.isComplete()) {
            console.say(CommandMessages.answeredWithErrors());
        }
        String home = found.costed().book().settings().home().getCurrencyCode();
        console.table(TextTable.of(new TargetTable(home).onSheet().with(found.targets())));
        console.findings(found.findings());
        console.written(written);
        return found.isComplete() ? Exit.DONE : Exit.PARTLY;
    }
}
