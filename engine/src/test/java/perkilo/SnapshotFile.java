package perkilo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text file in which a {@link ResultDump} is kept: a line for each place.
 *
 * <p>What the places of a sheet begin with is a line of its own above them. Number formats are long and few, so a cell
 * has only the format's number, as {@code [3]}; the format is in a line {@code [3]} before its first use.
 */
final class SnapshotFile {

    /** A cell's number and its format. */
    private static final Pattern FORMAT = Pattern.compile("^(-?[0-9.]+ )\\[(.*?)\\](?= =| link|$)");

    private SnapshotFile() {}

    static void write(Path file, Map<String, String> places) throws IOException {
        StringBuilder lines = new StringBuilder();
        Map<String, String> formats = new LinkedHashMap<>();
        String above = "";
        for (var entry : places.entrySet()) {
            String place = entry.getKey();
            String content = entry.getValue();
            String sheet = place.substring(0, place.lastIndexOf('!') + 1);
            if (!sheet.equals(above)) {
                lines.append('\n').append(sheet).append('\n');
                above = sheet;
            }
            Matcher cell = FORMAT.matcher(content);
            if (cell.find()) {
                String format = cell.group(2);
                String number = formats.get(format);
                if (number == null) {
                    number = "[" + (formats.size() + 1) + "]";
                    formats.put(format, number);
                    lines.append(number).append('\t').append(format).append('\n');
                }
                content = cell.group(1) + number + content.substring(cell.end());
            }
            lines.append(place, sheet.length(), place.length())
                    .append('\t')
                    .append(content)
                    .append('\n');
        }
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, lines);
    }

    static Map<String, String> read(Path file) throws IOException {
        Map<String, String> places = new LinkedHashMap<>();
        Map<String, String> formats = new LinkedHashMap<>();
        String above = "";
        for (String line : Files.readAllLines(file)) {
            int tab = line.indexOf('\t');
            if (line.startsWith("[")) {
                formats.put(line.substring(1, line.indexOf(']')), line.substring(tab + 1));
            } else if (tab >= 0) {
                places.put(above + line.substring(0, tab), withFormat(line.substring(tab + 1), formats));
            } else if (!line.isEmpty()) {
                above = line;
            }
        }
        return places;
    }

    private static String withFormat(String content, Map<String, String> formats) {
        Matcher cell = FORMAT.matcher(content);
        return cell.find()
                ? cell.group(1) + "[" + formats.get(cell.group(2)) + "]" + content.substring(cell.end())
                : content;
    }
}
