package perkilo.xlsx.splice;

import java.io.IOException;

/** A workbook that no sheet can be set into; the message is what follows "The workbook" in a sentence. */
public final class UnfitPackageException extends IOException {

    private static final long serialVersionUID = 1L;

    /**
     * Says why.
     *
     * @param why such as {@code "is protected against new sheets"}
     */
    public UnfitPackageException(String why) {
        super(why);
    }

    static UnfitPackageException damaged(String what) {
        return new UnfitPackageException("is damaged (" + what + "); open it in an office suite and save it anew");
    }
}
