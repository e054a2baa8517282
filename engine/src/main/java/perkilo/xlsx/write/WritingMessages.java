package perkilo.xlsx.write;

import java.nio.file.Path;

/** What a person reads about a file that cannot be written. */
final class WritingMessages {

    private static final String OTHER_PLACE = "Choose another place.";

    private WritingMessages() {}

    // the names do not fit

    static String missing(Path book) {
        return book + " does not exist. Check the name and the folder.";
    }

    static String ofItself(Path book) {
        return book + " would be replaced by its own result."
                + " Give the result another name, or write it in place, which keeps a backup.";
    }

    static String longName(Path target) {
        return target + " cannot be written because its name is too long. Give the result a shorter name with -o.";
    }

    static String noBackup(Path book) {
        return book + " was not changed: there are too many backups of this day beside it. Move some of them away.";
    }

    static String changedMeanwhile(Path book) {
        return book + " was saved by another program while the command ran. Nothing was written."
                + " Run the command again.";
    }

    static String notReadable(Path target) {
        return "What was written for " + target + " could not be read again. Nothing was replaced."
                + " Run the command again; if it happens again, check the disk.";
    }

    static String wrongEnding(Path target, String ending) {
        return target + " must end in " + ending + ", like the workbook. Spreadsheet programs refuse any other ending.";
    }

    // the place does not take the file

    static String notAFolder(Path folder) {
        return folder + " is a file, not a folder. Name another folder.";
    }

    static String noFolder(Path target) {
        return target
                + " cannot be written because its folder does not exist. Make the folder or choose another place.";
    }

    static String writeProtected(Path target) {
        return target + " cannot be written because the file or its folder is write-protected. " + OTHER_PLACE;
    }

    static String openElsewhere(Path target) {
        return target + " is open in another program. Close it there and run again.";
    }

    static String diskFull(Path target) {
        return target + " cannot be written because the disk is full. Make room or choose another place.";
    }

    static String otherFault(Path target, String fault) {
        return target + " cannot be written (" + fault + "). " + OTHER_PLACE;
    }
}
