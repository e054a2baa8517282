package perkilo.page.folder;

import java.util.List;

/** What a person reads about files and their names. */
final class FolderMessages {

    private FolderMessages() {}

    static String badName(String name) {
        return "\"" + name + "\" cannot be the name of a file. Use letters, digits, spaces and dashes.";
    }

    static String otherEnding(List<String> known) {
        return "Perkilo reads files that end with " + String.join(", ", known) + ". Save it as one of these.";
    }

    static String noSuchFile(String name) {
        return "There is no file \"" + name + "\" in the folder.";
    }

    static String sameFile(String name) {
        return name + " is in the folder already.";
    }

    static String otherFile(String name, String used) {
        return "Another file called " + name + " is in the folder, so this one is kept as " + used + ".";
    }

    static String noSuchFolder() {
        return "This folder is not among those that were opened before.";
    }

    static String noFreeName(String name) {
        return "There are too many files called " + name + " in the folder. Move some away.";
    }
}
