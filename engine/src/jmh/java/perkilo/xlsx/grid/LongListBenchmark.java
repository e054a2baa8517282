package perkilo.xlsx.grid;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import perkilo.pricelists.ListFolder;
import perkilo.pricelists.TakeIn;

/**
 * How long it takes to read a supplier's long list, against the floor of unzipping and parsing alone, and against the
 * plain user model. {@link #main} prints the ratios of one run.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LongListBenchmark {

    private static final String[] HEADS = {
        "Supplier",
        "Item",
        "Pack size",
        "Pack unit",
        "From quantity",
        "Price",
        "Price per",
        "Currency",
        "Minimum order",
        "Order multiple",
        "Duty %",
        "Quoted on",
        "Valid until",
        "Note"
    };

    /** Rows: a usual list, a long one, a group's whole catalogue. */
    @Param({"1000", "10000", "100000"})
    int rows;

    private Path file = Path.of("");
    private Path kept = Path.of("");

    /** Writes the list. */
    @Setup(Level.Trial)
    public void write() throws IOException {
        file = Files.createTempFile("list", ".xlsx");
        kept = Files.createTempDirectory("kept");
        writeList(file, rows);
    }

    /** Removes it. */
    @TearDown(Level.Trial)
    public void remove() throws IOException {
        Files.deleteIfExists(file);
    }

    /** Writes an invented list of so many offers. */
    static void writeList(Path file, int rows) throws IOException {
        Random random = new Random(7);
        try (SXSSFWorkbook book = new SXSSFWorkbook(null, 200, false, true);
                OutputStream out = Files.newOutputStream(file)) {
            SXSSFSheet sheet = book.createSheet("Offers");
            fill(sheet.createRow(0), (Object[]) HEADS);
            for (int row = 1; row <= rows; row++) {
                fill(
                        sheet.createRow(row),
                        "Fen & Moor (invented)",
                        "Invented material " + row,
                        (double) (1 + random.nextInt(200)),
                        "kg",
                        null,
                        (1 + random.nextInt(1_000_000)) / 100.0,
                        "kg",
                        "EUR",
                        null,
                        null,
                        null,
                        "2026-11-02",
                        "2027-03-31",
                        "invented price " + row);
            }
            book.write(out);
        }
    }

    private static void fill(SXSSFRow row, @Nullable Object... values) {
        for (int column = 0; column < values.length; column++) {
            if (values[column] instanceof Double number) {
                row.createCell(column).setCellValue(number);
            } else if (values[column] instanceof String text) {
                row.createCell(column).setCellValue(text);
            }
        }
    }

    /** The floor: every part is unzipped and parsed, and nothing is done with it. */
    @Benchmark
    public int unzipAndParse() throws IOException, XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        int events = 0;
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                if (!entry.getName().startsWith("xl/")) {
                    continue;
                }
                try (InputStream in = zip.getInputStream(entry)) {
                    XMLStreamReader xml = factory.createXMLStreamReader(in, "UTF-8");
                    while (xml.hasNext()) {
                        xml.next();
                        events++;
                    }
                }
            }
        }
        return events;
    }

    /** The list as cells. */
    @Benchmark
    public Grids readCells() throws IOException {
        return Grids.ofPriceFile(file);
    }

    /** The whole of {@code perkilo prices}: cells, layout, names, and the kept list. */
    @Benchmark
    public Object takeIn() throws IOException {
        return new TakeIn(new ListFolder(kept), List.of(), Set.of())
                .take(file, new TakeIn.Said("Fen & Moor (invented)", LocalDate.of(2026, 11, 2), null));
    }

    /** The plain user model. */
    @Benchmark
    public int userModel() throws IOException {
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            return book.getSheetAt(0).getLastRowNum();
        }
    }

    /** One way to read a list. */
    private interface Way {
        Object run() throws IOException, XMLStreamException;
    }

    /**
     * Times each way in turn, three times after a first that does not count, and prints the middle one and its ratio to
     * the floor.
     *
     * @param arguments rows, then {@code all} for the user model too
     */
    public static void main(String[] arguments) throws IOException, XMLStreamException {
        LongListBenchmark list = new LongListBenchmark();
        list.rows = arguments.length == 0 ? 100_000 : Integer.parseInt(arguments[0]);
        list.write();
        double floor = milliseconds(list::unzipAndParse);
        System.out.printf("%,d rows, %,d bytes%n", list.rows, Files.size(list.file));
        System.out.printf("unzip and parse  %8.0f ms%n", floor);
        print("cells", milliseconds(list::readCells), floor);
        print("taken in", milliseconds(list::takeIn), floor);
        if (arguments.length > 1) {
            print("user model", milliseconds(list::userModel), floor);
        }
        list.remove();
    }

    private static void print(String what, double milliseconds, double floor) {
        System.out.printf("%-15s  %8.0f ms  %5.2f × the floor%n", what, milliseconds, milliseconds / floor);
    }

    private static double milliseconds(Way way) throws IOException, XMLStreamException {
        double[] times = new double[4];
        for (int at = 0; at < times.length; at++) {
            long start = System.nanoTime();
            Object result = way.run();
            times[at] = result == null ? 0 : (System.nanoTime() - start) / 1e6;
        }
        double[] counted = java.util.Arrays.copyOfRange(times, 1, times.length);
        java.util.Arrays.sort(counted);
        return counted[1];
    }
}
