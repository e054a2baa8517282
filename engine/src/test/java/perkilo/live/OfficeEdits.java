package perkilo.live;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import perkilo.Office;

/** Edits that an office suite makes in a workbook, each in the workbook as it was, in one process. */
final class OfficeEdits {

    private static final String BEFORE = "before";

    private final Path folder;
    private final Office office;

    OfficeEdits(Path folder) {
        this.folder = folder;
        this.office = new Office(folder);
    }

    /**
     * What sheets hold after each edit, in the order of the edits; what they hold before any comes first.
     *
     * @param sheets the names of the result sheets
     */
    List<Dump> of(Path workbook, List<String> sheets, List<Edit> edits) throws IOException, InterruptedException {
        String dump = "\t" + String.join("\t", sheets);
        Dump before = Objects.requireNonNull(
                run(List.of("open\t" + workbook, "dump\t" + BEFORE + dump)).get(BEFORE), BEFORE);
        List<String> script = new ArrayList<>(List.of("open\t" + workbook));
        for (int i = 0; i < edits.size(); i++) {
            script.addAll(edits.get(i).script(before));
            script.add("dump\t" + i + dump);
            script.add("back");
        }
        Map<String, Dump> after = run(script);
        List<Dump> all = new ArrayList<>(List.of(before));
        for (int i = 0; i < edits.size(); i++) {
            all.add(Objects.requireNonNull(
                    after.get(String.valueOf(i)), edits.get(i).toString()));
        }
        return all;
    }

    private Map<String, Dump> run(List<String> script) throws IOException, InterruptedException {
        Path lines = folder.resolve("script.txt");
        Path result = folder.resolve("dump.txt");
        Files.deleteIfExists(result);
        Files.write(lines, script, UTF_8);
        office.run(module(), lines, result);
        return Dump.read(result);
    }

    private static String module() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(OfficeEdits.class.getResourceAsStream("/perkilo/live/Edits.bas"))) {
            return new String(in.readAllBytes(), UTF_8);
        }
    }
}
