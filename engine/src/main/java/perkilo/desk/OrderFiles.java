package perkilo.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import perkilo.orderplan.OrderOutcome;
import perkilo.origin.Finding;
import perkilo.report.send.CalendarText;
import perkilo.report.send.OrderCalendar;
import perkilo.report.send.PurchaseOrders;
import perkilo.report.send.Unsaid;
import perkilo.xlsx.write.Folders;
import perkilo.xlsx.write.SavedFile;
import perkilo.xlsx.write.WorkbookWriter;

/** Service that writes each order of a plan as a workbook of its own, and the days of all orders as a calendar. */
public final class OrderFiles {

    private static final String BACKUP = ".backup-";

    private final Path folder;

    /** Files in a folder, which is made if it is not there. */
    public OrderFiles(Path folder) {
        this.folder = folder;
    }

    /**
     * A file that is there now.
     *
     * @param file the file
     * @param backup the file that it has replaced; null if there was none, or if it was the same
     */
    public record WrittenFile(Path file, @Nullable Path backup) {}

    /**
     * What a person should know before the orders are sent: what they cannot say, and which orders in the folder are
     * not of this plan.
     */
    public List<Finding> notes(OrderOutcome.Planned planned) throws IOException {
        List<Finding> notes = new ArrayList<>(Unsaid.of(planned));
        Set<String> planning = PurchaseOrders.files(planned).stream()
                .map(PurchaseOrders.OrderFile::fileName)
                .collect(Collectors.toSet());
        List<String> others = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.map(file -> String.valueOf(file.getFileName()))
                        .filter(name ->
                                PurchaseOrders.isOrderFile(name) && !name.contains(BACKUP) && !planning.contains(name))
                        .sorted()
                        .forEach(others::add);
            }
        }
        if (!others.isEmpty()) {
            notes.add(Unsaid.notOfThisPlan(folder.toString(), others));
        }
        return notes;
    }

    /**
     * Writes the files. What is replaced by something else is kept as a backup.
     *
     * @param today the day for the names of backups
     * @param now when the calendar is made
     * @return the orders by day, then the calendar
     * @throws IOException whose message is a sentence for a person
     */
    public List<WrittenFile> write(OrderOutcome.Planned planned, LocalDate today, Instant now) throws IOException {
        Folders.make(folder);
        List<WrittenFile> written = new ArrayList<>();
        WorkbookWriter writer = new WorkbookWriter();
        for (PurchaseOrders.OrderFile order : PurchaseOrders.files(planned)) {
            Path file = folder.resolve(order.fileName());
            written.add(new WrittenFile(file, SavedFile.writeKeeping(file, writer.alone(order.report()), today)));
        }
        Path calendar = folder.resolve(OrderCalendar.FILE);
        byte[] events = OrderCalendar.of(planned.plan(), now).bytes();
        if (Files.isReadable(calendar) && CalendarText.isUntouched(Files.readAllBytes(calendar))) {
            SavedFile.write(calendar, events);
            written.add(new WrittenFile(calendar, null));
        } else {
            written.add(new WrittenFile(calendar, SavedFile.writeKeeping(calendar, events, today)));
        }
        return written;
    }
}
