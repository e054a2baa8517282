package perkilo.page;

/** What a person reads when the page could not do what was asked. */
final class PageMessages {

    private PageMessages() {}

    static String changedMeanwhile(String book) {
        return book + " was changed since the page read it. Read it again, then repeat what you did.";
    }

    static String otherFolder() {
        return "Another page has opened another folder. Load this page again.";
    }

    static String noTemplate(String name) {
        return "There is no template \"" + name + "\".";
    }

    static String noQuestion(String id) {
        return "There is no question \"" + id + "\" about this workbook.";
    }

    static String badSize(String typed) {
        return "\"" + typed + "\" is not a number of units. Type whole numbers above zero.";
    }

    static String onlyCost(String typed) {
        return "\"" + typed + "\" cannot be saved from the page.";
    }

    static String tooManyChanges(int most) {
        return "These are more than " + most + " changes. Take some away.";
    }

    static String tooManyFiles(int most) {
        return "The page takes " + most + " files in one session. Close Perkilo and start it again to add more.";
    }
}
