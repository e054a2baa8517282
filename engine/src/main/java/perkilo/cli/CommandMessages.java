package perkilo.cli;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import perkilo.origin.Counted;

/** What a person reads when a command line is wrong, or when a command could not do what was asked. */
final class CommandMessages {

    private static final String OR = " or ";

    private CommandMessages() {}

    // the command

    static String noCommand() {
        return "No command was given. Choose one from the list below.";
    }

    static String unknownCommand(String typed, List<String> all) {
        return "There is no command \"" + typed + "\". The commands are " + String.join(", ", all) + ".";
    }

    static String misspeltCommand(String typed, List<String> near) {
        return "There is no command \"" + typed + "\". Did you mean " + String.join(OR, near) + "?";
    }

    static String fileForCommand(String file) {
        return "\"" + file + "\" is a file, not a command. Say what to do with it, as in \"perkilo prices " + file
                + "\".";
    }

    static String noWorkbook(String command) {
        return "Name a workbook after the command, as in \"" + command + " book.xlsx\".";
    }

    static String tooMany(String typed, String command, List<String> labels) {
        return "\"" + typed + "\" is one argument too many. The command \"" + command + "\" takes only "
                + String.join(" and ", labels) + ".";
    }

    static String reasonsNotAdded(String why) {
        return why + " The plan itself is written, without the sheet Why these orders.";
    }

    // the page

    static String pageIsOpen() {
        return "The page is open in your browser. Ctrl-C ends it.";
    }

    static String openTheAddress() {
        return "Open this address in a browser on this computer. Keep it to yourself: it holds the key. Ctrl-C ends the page.";
    }

    static String nothingToOpen(Path place) {
        return place + " does not exist. Name a workbook, or the folder to work in.";
    }

    static String cannotOpen(Path file) {
        return file + " is not a workbook. Name an .xlsx or .xlsm file, or the folder to work in.";
    }

    static String faultOfPage(String what) {
        return "Internal fault while the page was asked something: " + what + ". Please report it.";
    }

    // options of every kind

    static String unknownOption(String option, String command) {
        return "There is no option " + option + " for " + command + ". Type \"" + command
                + " --help\" for a list of its options.";
    }

    static String misspeltOption(String option, String command, List<String> near) {
        return "There is no option " + option + " for " + command + ". Did you mean " + String.join(OR, near) + "?";
    }

    /**
     * That an option comes before the command.
     *
     * @param meant the option of a command that is meant; empty if none is near
     */
    static String optionBeforeCommand(String option, String meant) {
        return "There is no option " + option + " before a command. "
                + (meant.isEmpty()
                        ? "Type \"perkilo --help\" for a list of the commands."
                        : "Type it after the command, as in \"perkilo cost book.xlsx " + meant + "\".");
    }

    static String noValue(String option, String label) {
        return option + " needs a value, as in \"" + option + " " + label + "\".";
    }

    static String onlyOnce(String option) {
        return option + " can be given only once.";
    }

    static String noSuchDay(String option, String typed) {
        return option + " was given \"" + typed + "\", which is not a day of the calendar.";
    }

    static String notADay(String option, String typed) {
        return option + " takes a day typed as year-month-day, such as " + option + " 2026-11-20, but was given \""
                + typed + "\".";
    }

    /**
     * That an option takes a whole number.
     *
     * @param unit what is counted, such as {@code seconds}; empty for nothing in particular
     */
    static String notAWholeNumber(String option, String unit, String example, String typed) {
        return option + " takes a whole number" + (unit.isEmpty() ? "" : " of " + unit) + ", such as " + option + " "
                + example + ", but was given \"" + typed + "\".";
    }

    // where results go

    static String onlyWithReview() {
        return "--out and --in-place need --review: check alone writes nothing.";
    }

    static String inPlaceAndElsewhere() {
        return "--in-place writes into BOOK itself. Leave out --out and --sheet-only.";
    }

    static String outIsNoFolder(Path out) {
        return "--out must name a folder when several workbooks or a folder are costed, but was given \"" + out + "\".";
    }

    static String sameResult(Path one, Path other, Path result) {
        return "The results of " + one + " and " + other + " would both be written to " + result
                + ". Rename one of the two, or cost them one at a time.";
    }

    static String otherSheet(String wanted, String used) {
        return "You have a sheet called \"" + wanted + "\", so the result is on \"" + used + "\".";
    }

    static String answeredWithErrors() {
        return "Costed, but cells with errors were left out. See the errors below.";
    }

    static String searchedInPart() {
        return "Not complete: what has an error or no price was left out. See the errors below.";
    }

    static String nothingWritten(long errors) {
        return Counted.of(errors, "error") + "; nothing was written.";
    }

    /** That an option is for one workbook. */
    static String onlyForOneBook(String option) {
        return option + " works with one workbook. Leave it out for several workbooks or a folder.";
    }

    // compare

    static String nothingToCompareWith() {
        return "Name a second workbook to compare with, as in \"perkilo compare before.xlsx after.xlsx\", or two days with"
                + " --dates 2026-05-01,2026-11-01; or type what runs really took on a sheet Actuals.";
    }

    static String sizesOfActuals() {
        return "The runs of Actuals have the sizes that they were planned for. Leave out --units and --batch-kg.";
    }

    static String bookOrDates() {
        return "Compare with a second workbook or with --dates, not with both.";
    }

    static String notTwoDays(List<String> typed) {
        return "--dates takes two days, such as --dates 2026-05-01,2026-11-01, but was given " + listed(typed) + ".";
    }

    static String dateAndDates() {
        return "--date sets one costing date and --dates sets two. Leave one of them out.";
    }

    // run sizes

    static String badUnits(List<String> typed) {
        return "--units takes whole numbers above zero and below a billion, but was given " + listed(typed)
                + ". Type them without points, with commas only between them, as in \"--units 500,1000\".";
    }

    static String badBatches(List<String> typed) {
        return "--batch-kg takes weights above zero and below a billion, but was given " + listed(typed)
                + ". Type decimals with a point, and commas only between weights, as in \"--batch-kg 2.5,10\".";
    }

    /**
     * That a batch size can be read in two ways.
     *
     * @param large if its point marks thousands
     * @param small if its point marks decimals
     * @param typeLarge how to type the large one so that it is clear
     * @param typeSmall how to type the small one so that it is clear
     */
    static String ambiguousBatch(String typed, String large, String small, String typeLarge, String typeSmall) {
        return "--batch-kg was given \"" + typed + "\", which can mean " + large + OR + small + ". Type \"" + typeLarge
                + "\" or \"" + typeSmall + "\".";
    }

    // swap

    static String benchTooSmall(BigDecimal grams) {
        return "--bench takes the grams of a trial batch, 1 or more, but was given " + grams.toPlainString() + ".";
    }

    static String negativeChanges(int typed) {
        return "--changes takes 0 or more, but was given " + typed + ".";
    }

    /** The most names in one sentence. */
    private static final int NAMED = 6;

    static String factsMissing(List<String> materials) {
        return "A fact is missing, so these are not ranked: " + named(materials)
                + ". The sheet Swaps and --json say which fact, and where to type it.";
    }

    static String notCompared(List<String> materials) {
        return "These lines are not compared: " + named(materials) + ". The sheet Swaps and --json say why.";
    }

    private static String named(List<String> names) {
        List<String> all = names.stream().distinct().toList();
        int more = all.size() - NAMED;
        return more <= 0 ? String.join(", ", all) : String.join(", ", all.subList(0, NAMED)) + " and " + more + " more";
    }

    static String closenessOutside(String typed) {
        return "--closeness takes a number from 0 to 100, but was given " + typed + ".";
    }

    static String noChoice() {
        return "--apply needs the number of a swap, such as 3, or of a blend, such as \"blend 2\".";
    }

    static String badChoice(String typed) {
        return "--apply takes the number of a swap, such as 3, or of a blend, such as \"blend 2\", but was given \""
                + typed + "\".";
    }

    static String nothingToApply(String kind) {
        return "--apply has nothing to write, because no cheaper " + kind + " was found.";
    }

    static String severalBlends(int count) {
        return "There are " + count + " blends. Choose one with --apply, from \"blend 1\" to \"blend " + count + "\".";
    }

    static String noSuchChoice(String kind, int count, int typed) {
        return "--apply takes a " + kind + " from 1 to " + count + ", but was given " + typed + ".";
    }

    // prices

    static String noLists() {
        return "Name the price lists to take in, or the folder that they are in. Or use --changes.";
    }

    static String onlyForChanges() {
        return "--out, --in-place, --sheet-only, --date, --rates, --units and --batch-kg only work with --changes."
                + " Leave them out to take lists in.";
    }

    static String onlyForTakingIn() {
        return "--supplier, --quoted, --valid-until, --book and --review are for taking lists in. Leave them out with --changes.";
    }

    static String changesOfSeveralBooks() {
        return "--changes takes at most one workbook.";
    }

    static String inPlaceWithoutBook() {
        return "--in-place needs a workbook to write into. Name it, or leave out --in-place.";
    }

    static String notTakenIn(Path list) {
        return "The list " + list + " is not taken in yet.";
    }

    static String waits(Path list, int answers) {
        return "The list " + list + " is not taken in yet; it waits for " + Counted.of(answers, "answer") + ".";
    }

    static String moreQuestions(int more) {
        return "And " + Counted.of(more, "more question") + ".";
    }

    static String answerIn(Path review) {
        return "Open " + review + ", answer in the yellow cells, save and close it, and run perkilo prices again.";
    }

    static String lookThrough(Path review) {
        return "What was read is in " + review + ".";
    }

    static String listGone(Path list) {
        return "The list " + list + " waits for answers but is no longer there. Name the file if it has moved.";
    }

    static String badReview(Path review) {
        return "--review takes the name of a workbook such as prices-review.xlsx, but was given " + review
                + ". It must end in -review.xlsx.";
    }

    // rates

    static String fromWithoutTo() {
        return "--from and --to go together. Type both or neither.";
    }

    static String dateWithoutRate() {
        return "--date asks for the rate of a day, so it needs --from and --to as well.";
    }

    static String noRates() {
        return "Name a file to take in, get one with --fetch, or ask for a rate with --from and --to.";
    }

    static String badSpan(String typed) {
        return "--fetch takes day, 90-days or all, but was given \"" + typed + "\".";
    }

    static String badCurrency(String option, String typed) {
        return option + " takes an ISO 4217 code such as USD, but was given \"" + typed + "\".";
    }

    static String noTable(Path table) {
        return "There is no table " + table + " yet. Take a file in first, as in \"perkilo rates FILE\".";
    }

    // new

    static String noTemplateNamed() {
        return "Name a template and the workbook to write, as in \"perkilo new minimal book.xlsx\". Type \"perkilo new"
                + " --list\" for a list of templates.";
    }

    static String wrongEnding(String file) {
        return "The name of a new workbook must end in .xlsx, but \"" + file + "\" was given.";
    }

    static String noTemplate(String typed, List<String> near) {
        return "There is no template \"" + typed + "\". "
                + (near.isEmpty()
                        ? "Type \"perkilo new --list\" for a list of templates."
                        : "Did you mean " + String.join(OR, near) + "?");
    }

    // failures

    static String noMemory() {
        return "There is not enough memory for these files. Give Java more, as in \"java -Xmx2g -jar perkilo.jar …\".";
    }

    static String fault(String what) {
        return "This is a fault in Perkilo, not in your file: " + what
                + ". Run it again with --debug and report what it prints.";
    }

    /** The same where a stack trace follows. */
    static String faultWithTrace(String what) {
        return "This is a fault in Perkilo, not in your file: " + what + ". Please report it with what follows.";
    }

    private static String listed(List<String> typed) {
        return "\"" + String.join(",", typed) + "\"";
    }
}
