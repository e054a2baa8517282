package perkilo.xlsx.write;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The outcome of writing a workbook.
 *
 * @param file the workbook with the result sheets
 * @param sheets the names of the tabs, by the names that the sheets were built with; they differ if a sheet of the
 *     person has the name
 * @param backup the backup of the file that was replaced; null if none was needed
 */
public record Written(
        Path file, Map<String, String> sheets, @Nullable Path backup) {

    public Written {
        sheets = Map.copyOf(new LinkedHashMap<>(sheets));
    }
}
