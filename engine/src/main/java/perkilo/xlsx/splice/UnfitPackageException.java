package perkilo.xlsx.splice;

import java.io.IOException;

/** A workbook that no sheet can be set into; the message is full sentences without the file's name. */
public final class UnfitPackageException extends IOException {

    private static final long serialVersionUID = 1L;

    UnfitPackageException(String message) {
        super(message);
    }
}
