package perkilo.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What came of a command on one workbook in a folder of its own.
 *
 * @param exit the exit code
 * @param out the answer
 * @param messages the messages, line by line
 * @param files the names of all files in the folder afterwards
 * @param untouched whether the workbook is what it was
 * @param megabytes of objects that the command has made on its way, as a measure of its work
 */
record Ran(int exit, String out, List<String> messages, List<String> files, boolean untouched, long megabytes) {

    static final String BOOK = "book.xlsx";

    /** Runs a command on a workbook. */
    static Ran of(Path folder, byte[] book, String command, String... options) throws IOException {
        Path file = Files.write(folder.resolve(BOOK), book);
        List<String> arguments = new ArrayList<>(List.of(command));
        arguments.add(file.toString());
        arguments.addAll(List.of(options));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        long before = bytesMade();
        int exit = Perkilo.run(new PrintWriter(out), new PrintWriter(err), arguments.toArray(String[]::new));
        long megabytes = (bytesMade() - before) >> 20;
        try (Stream<Path> all = Files.list(folder)) {
            return new Ran(
                    exit,
                    out.toString().replace(folder.toString(), ""),
                    err.toString().replace(folder + "/", "").lines().toList(),
                    all.map(path -> String.valueOf(path.getFileName())).sorted().toList(),
                    java.util.Arrays.equals(Files.readAllBytes(file), book),
                    megabytes);
        }
    }

    /** What all objects took that this thread has made so far; unlike time, it is the same on a busy machine. */
    static long bytesMade() {
        return ((com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean())
                .getThreadAllocatedBytes(Thread.currentThread().getId());
    }
}
