package perkilo.xlsx.splice;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.sheet.Report;
import perkilo.xlsx.author.Links;
import perkilo.xlsx.author.ResultPackage;
import perkilo.xlsx.author.SampleBook;
import perkilo.xlsx.author.SampleReport;

/** What was written is read again before it replaces anything. */
final class DraftCheckTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void a_file_as_it_was_meant_passes_and_any_other_does_not() throws IOException {
        try (BookSplice splice = splice()) {
            Path draft = folder.resolve("draft.xlsx");
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            splice.writeTo(bytes);
            Files.write(draft, bytes.toByteArray());
            assertThatCode(() -> splice.check(draft)).doesNotThrowAnyException();

            Path cut = Files.write(folder.resolve("cut.xlsx"), half(bytes.toByteArray()));
            assertThatThrownBy(() -> splice.check(cut)).isInstanceOf(UnfitPackageException.class);

            for (String part : List.of("xl/worksheets/sheet1.xml", "xl/worksheets/sheet3.xml", "xl/styles.xml")) {
                Path changed = Files.write(folder.resolve("changed.xlsx"), with(bytes.toByteArray(), part));
                assertThatThrownBy(() -> splice.check(changed))
                        .as(part)
                        .hasMessage(
                                "What was written could not be read again: the part /" + part
                                        + " differs. Nothing was replaced. Run the command again; if it happens again, check the disk.");
            }
        }
    }

    private BookSplice splice() throws IOException {
        Report report = SampleReport.build();
        BookSplice splice = BookSplice.open(SampleBook.in(folder));
        Map<String, String> names = splice.finalNames(
                report.sheets().stream().map(sheet -> sheet.name()).toList());
        Links links = new Links("book.xlsx", splice.sheetsOfThePerson(), names);
        splice.setIn(
                new ResultPackage(report, links).parts(), names, report.given(), report.records(), "Cost summary/0");
        return splice;
    }

    private static byte[] half(byte[] bytes) {
        return Arrays.copyOf(bytes, bytes.length / 2);
    }

    /** The same package with a blank more at the end of one part. */
    private static byte[] with(byte[] zip, String part) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                out.write(in.readAllBytes());
                if (entry.getName().equals(part)) {
                    out.write(' ');
                }
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}
