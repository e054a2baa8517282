package perkilo.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import perkilo.Scratch;

/** A workbook as LibreOffice saves it. */
public final class SavedByOffice {

    private SavedByOffice() {}

    /** Opens a workbook in LibreOffice, saves it, and returns the saved copy. */
    public static Path of(Path workbook) throws IOException, InterruptedException {
        Path folder = Scratch.folder();
        Process office = new ProcessBuilder(
                        "soffice",
                        "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                        "--headless",
                        "--convert-to",
                        "xlsx:Calc MS Excel 2007 XML",
                        "--outdir",
                        folder.toString(),
                        workbook.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile())
                .start();
        assertThat(office.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(office.exitValue()).isZero();
        return folder.resolve(workbook.getFileName());
    }
}
