package perkilo.page.http;

/** What a person reads when a request to the page is refused. */
final class RequestMessages {

    private RequestMessages() {}

    static String otherHost() {
        return "This address does not belong to the page. Use the address that Perkilo printed.";
    }

    static String otherPage() {
        return "Another web page asked for this, so it was refused.";
    }

    static String notEntered() {
        return "This page is not connected to Perkilo, or no longer. Start Perkilo again and use the page that it opens.";
    }

    static String wrongKey() {
        return "The key in the address is not the one of this page. Start Perkilo again and use the page that it opens.";
    }

    static String nothingHere() {
        return "There is nothing at this address.";
    }

    static String wrongMethod(String method) {
        return "This address cannot be asked with " + method + ".";
    }

    static String notJson() {
        return "The request is not JSON of the form that is expected.";
    }

    static String missing(String member) {
        return "The request lacks \"" + member + "\", or it is of another kind than expected.";
    }

    static String tooLarge(long megabytes) {
        return "This is larger than " + megabytes + " MB, the most that the page takes.";
    }

    static String wrongKind(String expected) {
        return "The request must be of the kind " + expected + ".";
    }

    static String fault() {
        return "Something failed inside Perkilo. Your files are unchanged. Try again; if it fails again, please report it.";
    }

    static String noMemory() {
        return "The memory is not enough for this. Start Perkilo with PERKILO_JAVA_OPTIONS=-Xmx2g.";
    }
}
