package perkilo.xlsx.author;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import perkilo.sheet.Report;

/** A written report, read by another program's library. */
final class Written {

    private Written() {}

    static XSSFWorkbook read(Report report, Links links) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new ResultPackage(report, links).writeTo(bytes);
        return new XSSFWorkbook(new ByteArrayInputStream(bytes.toByteArray()));
    }
}
