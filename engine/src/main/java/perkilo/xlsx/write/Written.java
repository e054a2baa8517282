package perkilo.xlsx.write;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What was written.
 *
 * @param file the workbook with the result sheets
 * @param sheets what the tabs are called, by the names that the sheets were built with; the two differ where a sheet of
 *     the person's has the name
 * @param backup where what stood in its place is kept; null where nothing was worth it
 */
public record Written(
        Path file, Map<String, String> sheets, @Nullable Path backup) {

    public Written {
        sheets = Map.copyOf(new LinkedHashMap<>(sheets));
    }
}
