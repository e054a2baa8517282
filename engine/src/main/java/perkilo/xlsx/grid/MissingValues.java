package perkilo.xlsx.grid;

import java.io.ByteArrayInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;

/**
 * The values of formulas that were saved without a value, or with one that no program computed, as by programs that
 * write workbooks but do not compute them.
 *
 * <p>This needs the whole workbook in memory, so it happens only when such a formula is met, only for workbooks of
 * moderate size, and only for a few seconds of computing in all. A long chain of formulas is evaluated recursively,
 * which needs a deep stack.
 */
final class MissingValues implements Closeable {

    private static final long MOST_BYTES = 12L << 20;
    private static final long STACK = 256L << 20;
    private static final long MOST_NANOS = TimeUnit.SECONDS.toNanos(5);
    private static final long LOOK_EVERY_MILLIS = 200;

    private final Path file;
    private final boolean small;
    private final ExecutorService worker;
    private @Nullable XSSFWorkbook book;
    private @Nullable XSSFFormulaEvaluator evaluator;
    private @Nullable Thread thread;
    private boolean givenUp;

    /**
     * The workbook is opened only when the first value is needed.
     *
     * @param bytes the unpacked size of all sheets
     */
    MissingValues(Path file, long bytes) {
        this.file = file;
        this.small = bytes <= MOST_BYTES;
        this.worker = Executors.newSingleThreadExecutor(task -> {
            thread = new Thread(null, task, "formulas", STACK);
            thread.setDaemon(true);
            return thread;
        });
    }

    /**
     * The value of a formula.
     *
     * @param row from zero
     * @param column from zero
     * @param style of its cell
     */
    Cell at(String sheet, int row, int column, int style, CellMaker maker) {
        Cell value = computed(sheet, row, column, style, maker);
        return value == null ? Cell.error(CellFaults.noSavedValue()) : value;
    }

    /** The value of a formula whose saved value is not trusted. */
    Cell again(String sheet, int row, int column, int style, CellMaker maker) {
        Cell value = computed(sheet, row, column, style, maker);
        return value == null ? Cell.error(CellFaults.notComputed()) : value;
    }

    private @Nullable Cell computed(String sheet, int row, int column, int style, CellMaker maker) {
        if (!small || givenUp) {
            return null;
        }
        Future<@Nullable CellValue> value = worker.submit(() -> evaluated(sheet, row, column));
        try {
            return cell(awaited(value), style, maker);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof LinkageError fault) {
                throw fault; // the library is incomplete; the formula is not at fault
            }
            return null;
        } catch (TimeoutException e) {
            givenUp = true;
            value.cancel(true);
            return null;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return null;
        }
    }

    /** Waits until the computing time for formulas is used up; on a busy machine that takes longer. */
    private @Nullable CellValue awaited(Future<@Nullable CellValue> value)
            throws ExecutionException, TimeoutException, InterruptedException {
        while (true) {
            try {
                return value.get(LOOK_EVERY_MILLIS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                if (nanosSpent() > MOST_NANOS) {
                    throw e;
                }
            }
        }
    }

    private long nanosSpent() {
        Thread known = thread;
        return known == null ? 0 : ManagementFactory.getThreadMXBean().getThreadCpuTime(known.getId());
    }

    private @Nullable CellValue evaluated(String sheet, int row, int column) throws IOException {
        if (book == null) {
            book = opened();
            evaluator = new XSSFFormulaEvaluator(book);
        }
        XSSFSheet found = book.getSheet(sheet);
        XSSFRow cells = found == null ? null : found.getRow(row);
        XSSFCell cell = cells == null ? null : cells.getCell(column);
        return cell == null || evaluator == null ? null : evaluator.evaluate(cell);
    }

    private XSSFWorkbook opened() throws IOException {
        try (InputStream content = new ByteArrayInputStream(Files.readAllBytes(file))) {
            return new XSSFWorkbook(OPCPackage.open(content));
        } catch (org.apache.poi.openxml4j.exceptions.InvalidFormatException e) {
            throw new IOException(e);
        }
    }

    private static Cell cell(@Nullable CellValue value, int style, CellMaker maker) {
        if (value == null) {
            return Cell.BLANK;
        }
        return switch (value.getCellType()) {
            case NUMERIC -> maker.number(value.getNumberValue(), style);
            case STRING -> Cell.text(value.getStringValue());
            case BOOLEAN -> Cell.text(value.getBooleanValue() ? "TRUE" : "FALSE");
            case ERROR -> Cell.error(errorValue(value.getErrorValue()));
            default -> Cell.BLANK;
        };
    }

    private static String errorValue(int code) {
        if (code == ErrorEval.CIRCULAR_REF_ERROR.getErrorCode()) {
            return CellFaults.circle();
        }
        return FormulaError.isValidCode(code)
                ? CellFaults.errorValue(FormulaError.forInt(code).getString())
                : CellFaults.errorValue();
    }

    @Override
    public void close() throws IOException {
        worker.shutdownNow();
    }
}
