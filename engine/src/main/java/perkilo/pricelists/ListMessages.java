package perkilo.pricelists;

import java.nio.file.Path;
import java.util.List;
import perkilo.origin.Counted;

/** What a person reads about a price list as a whole, and about the answers of its supplier. */
final class ListMessages {

    private ListMessages() {}

    // the list cannot be taken in

    static String noTable(String headings) {
        return headings.isBlank()
                ? "No price table was recognised here. Say on the sheet \"Not read\" what each column holds, at least the"
                        + " item and the price. If this is no price list, say so."
                : "No price table was recognised here. Its headings may be: " + headings
                        + ". Say on the sheet \"Not read\" what each column holds, at least the item and the price. If"
                        + " another row holds the headings, answer with its number. If this is no price list, say so.";
    }

    static String whichHeaderRow() {
        return "Which row holds the headings?";
    }

    static String noTable() {
        return "This sheet holds no price table, so it is not read.";
    }

    static String noList() {
        return "This file is no price list, as you answered. It is not read.";
    }

    static String readAsTyped() {
        return "Read as you typed.";
    }

    static String readAsTypedBefore() {
        return "Read as you typed last time.";
    }

    static String linesNotUsed(int lines, List<String> some) {
        return Counted.of(lines, "line") + " beside the prices " + (lines == 1 ? "speaks" : "speak")
                + " of money and " + (lines == 1 ? "is" : "are") + " not used: "
                + listed(some, "; ", lines - some.size())
                + ".";
    }

    static String noSupplier() {
        return "The list does not say which supplier it is from. Who is it from?";
    }

    static String noSupplier(String firstLine) {
        return "The list does not say which supplier it is from; its first line is \"" + firstLine
                + "\". Who is it from?";
    }

    static String severalSuppliers(List<String> suppliers, int more) {
        return "The list is from " + Counted.of(suppliers.size() + more, "supplier") + ": "
                + listed(suppliers, ", ", more)
                + ". Take it in for each of them, or for one?";
    }

    static String alikeSupplier(String name, String known) {
        return "The list is from \"" + name + "\". Is that the supplier \"" + known + "\" that you know?";
    }

    static String sender(String name) {
        return "The list seems to be from \"" + name + "\", so it is taken in for them. If it is from somebody else,"
                + " correct it on the sheet \"Lists\" of the review.";
    }

    static String sameSupplier(String name, String known) {
        return "The list is from \"" + name + "\". That is taken to be your supplier \"" + known + "\".";
    }

    static String noDate() {
        return "The list has no date. From which day do its prices apply? Type a date, such as 2026-11-15.";
    }

    static String noPrices() {
        return "The list holds no prices. Check that its price column is filled.";
    }

    // rows that contradict each other, and prices that look odd

    static String contradict(String what, List<String> prices) {
        return "There are " + Counted.of(prices.size(), "price") + " for " + what + ": "
                + String.join("; ", prices.subList(0, Math.min(3, prices.size())))
                + ". Which one holds?";
    }

    static String manyContradict(int lines, String some) {
        return Counted.of(lines, "line") + " of this file and of the list that was taken in for the same day contradict"
                + " each other, such as " + some + ". Which file holds?";
    }

    static String changedFile(int differ, int added, int gone) {
        return "This file was taken in before and has changed since: " + Counted.of(differ, "price") + " differ, "
                + Counted.of(added, "line") + " new, " + Counted.of(gone, "line")
                + " gone. Does it replace what was taken in?";
    }

    static String jump(String what, String before, String now, String percent) {
        return "The price of " + what + " went from " + before + " to " + now + " (" + percent + " %). Is it right?";
    }

    static String jumps(int jumps, int prices, String some) {
        return jumps + " of " + Counted.of(prices, "price") + " changed by more than half, such as " + some
                + ". Are they right?";
    }

    static String leftOut(String what, String price) {
        return "Left out as you answered: " + what + ", " + price + ".";
    }

    static String leftOutRow(String why) {
        return why + " Left out, as you answered.";
    }

    // names

    static String otherGrade(String item, String known) {
        return "\"" + item + "\" seems to be \"" + known
                + "\" in another grade, such as another strength. Is it the same?";
    }

    static String linked(String listed, String name, String by) {
        return "\"" + listed + "\" is read as \"" + name + "\" (" + (by.isEmpty() ? "your answer" : by) + ").";
    }

    static String looksTheSame(String item, String known) {
        return "\"" + item + "\" only looks like \"" + known
                + "\": some letters are from another alphabet or invisible. Is it the same item?";
    }

    static String similarName(String item, String known) {
        return "\"" + item + "\" resembles your item \"" + known + "\". Is it the same?";
    }

    static String unknownAnswer(String item, String answer) {
        return "You answered that \"" + item + "\" is \"" + answer
                + "\", which is not among your items. Is the name right?";
    }

    static String unknownNames(int names, List<String> some) {
        String list = listed(some, ", ", names - some.size());
        return names == 1
                ? "1 name is not among your items: " + list + ". It is kept as the supplier writes it."
                : Counted.of(names, "name") + " are not among your items: " + list
                        + ". They are kept as the supplier writes them.";
    }

    private static String listed(List<String> some, String between, int more) {
        return String.join(between, some) + (more > 0 ? " and " + more + " more" : "");
    }

    // the mapping cannot be read

    static String mappingNotJson(Path file, int line, String why) {
        return file + " cannot be read as JSON near line " + line + ": " + why
                + ". Correct it there, or delete the file and run the command again.";
    }

    static String notAnswers(Path file) {
        return file + " holds no answers about price lists. Delete or rename it, and run the command again.";
    }

    static String carriedOver(Path mapping, Path answers) {
        return "The answers in " + mapping + " were carried over to " + answers
                + ". The old file is no longer used, so you can delete it.";
    }

    // answers

    static String notUnderstood(String answer) {
        return "The answer \"" + answer + "\" does not settle it.";
    }

    static String answeredBefore(String field) {
        return "Answered for an earlier list: " + field + ".";
    }

    static String alreadyIn() {
        return "This list was taken in before and has not changed.";
    }

    static String notMoved(Path file) {
        return "The rows of this file were taken out of " + file + ", because it belongs to another list now.";
    }

    static String notAMapping(Path file) {
        return file + " is not a mapping. Delete it and run the command again for a new one.";
    }
}
