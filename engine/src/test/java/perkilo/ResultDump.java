package perkilo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.ConditionalFormatting;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * A result without its words and its looks, as places and what they hold.
 *
 * <p>Of a cell there remain its number to twelve digits, its formula, its number format and whether it has a link. Text
 * is only {@code text}, from a formula too, and texts inside formulas are {@code "…"}. A workbook's places are written
 * as {@code Sheet!B6}, those of a JSON answer as {@code runs[0].items[3]}.
 */
final class ResultDump {

    private static final MathContext TWELVE_DIGITS = new MathContext(12);
    private static final Pattern TEXT_IN_FORMULA = Pattern.compile("\"(?:[^\"]|\"\")*\"");
    private static final Pattern CHART_KIND_OR_RANGE = Pattern.compile("<c:(\\w+Chart)>|<c:f>([^<]*)</c:f>");

    /** The JSON fields that hold sentences. */
    private static final Set<String> WORDS = Set.of("text", "answer", "why", "reason", "refusal", "cautions", "kept");

    /** A JSON field whose names are sentences. */
    private static final String NAMED_IN_WORDS = "leftOut";

    private static final int LONGEST_LINE = 800;

    private final Map<String, String> places = new LinkedHashMap<>();

    private ResultDump() {}

    /** The sheets of {@code result} that {@code book} lacks, and the names of all sheets in their order. */
    static Map<String, String> ofWorkbook(Path result, Path book) throws IOException {
        var dump = new ResultDump();
        Set<String> own = namesOf(book);
        try (InputStream in = Files.newInputStream(result);
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
                dump.put("sheet " + (i + 1), workbook.getSheetName(i));
            }
            for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
                XSSFSheet sheet = workbook.getSheetAt(i);
                if (!own.contains(sheet.getSheetName())) {
                    dump.sheet(sheet);
                }
            }
        }
        return dump.places;
    }

    /** A JSON answer; a part that fits on a line is one place. */
    static Map<String, String> ofJson(String json) throws IOException {
        var dump = new ResultDump();
        dump.json("", withoutWords(new ObjectMapper().readTree(json)));
        return dump.places;
    }

    private static Set<String> namesOf(Path book) throws IOException {
        try (ZipFile zip = new ZipFile(book.toFile());
                InputStream in = zip.getInputStream(zip.getEntry("xl/workbook.xml"))) {
            NodeList sheets = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(in)
                    .getElementsByTagName("sheet");
            return IntStream.range(0, sheets.getLength())
                    .mapToObj(i -> ((Element) sheets.item(i)).getAttribute("name"))
                    .collect(Collectors.toSet());
        } catch (ParserConfigurationException | SAXException failed) {
            throw new AssertionError(failed);
        }
    }

    private void sheet(XSSFSheet sheet) throws IOException {
        String name = sheet.getSheetName();
        var pane = sheet.getPaneInformation();
        if (pane != null) {
            String kind = pane.isFreezePane() ? "frozen" : "split";
            put(
                    name + "!panes",
                    kind + " " + pane.getVerticalSplitPosition() + " " + pane.getHorizontalSplitPosition());
        }
        var formats = sheet.getSheetConditionalFormatting();
        for (int i = 0; i < formats.getNumConditionalFormattings(); i++) {
            ConditionalFormatting format = formats.getConditionalFormattingAt(i);
            String ranges = Stream.of(format.getFormattingRanges())
                    .map(CellRangeAddress::formatAsString)
                    .collect(Collectors.joining(" "));
            put(name + "!conditional format " + (i + 1), ranges + " rules " + format.getNumberOfRules());
        }
        XSSFDrawing drawing = sheet.getDrawingPatriarch();
        List<XSSFChart> charts = drawing == null ? List.of() : drawing.getCharts();
        for (int i = 0; i < charts.size(); i++) {
            put(name + "!chart " + (i + 1), chart(charts.get(i)));
        }
        Set<String> links =
                sheet.getHyperlinkList().stream().map(XSSFHyperlink::getCellRef).collect(Collectors.toSet());
        for (Row row : sheet) {
            for (Cell cell : row) {
                String place = cell.getAddress().formatAsString();
                String content = content(cell, links.contains(place));
                if (content != null) {
                    put(name + "!" + place, content);
                }
            }
        }
    }

    private static String chart(XSSFChart chart) throws IOException {
        try (InputStream in = chart.getPackagePart().getInputStream()) {
            Matcher found = CHART_KIND_OR_RANGE.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            List<String> parts = new ArrayList<>();
            while (found.find()) {
                parts.add(found.group(1) == null ? found.group(2) : found.group(1));
            }
            return String.join(" ", parts);
        }
    }

    private static @Nullable String content(Cell cell, boolean linked) {
        boolean computed = cell.getCellType() == CellType.FORMULA;
        CellType kind = computed ? cell.getCachedFormulaResultType() : cell.getCellType();
        String formula = computed ? cell.getCellFormula() : "";
        String link = linked || formula.contains("HYPERLINK(") ? " link" : "";
        return switch (kind) {
            case NUMERIC ->
                number(cell.getNumericCellValue())
                        + " ["
                        + cell.getCellStyle().getDataFormatString()
                        + "]"
                        + link
                        + written(formula, cell);
            case STRING -> "text" + link;
            case BOOLEAN -> cell.getBooleanCellValue() + link + written(formula, cell);
            case ERROR -> "error" + link + written(formula, cell);
            default -> linked ? "blank" + link : null;
        };
    }

    private static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(TWELVE_DIGITS);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** The formula without its texts; what is on the same sheet begins with {@code !} alone. */
    private static String written(String formula, Cell cell) {
        if (formula.isEmpty()) {
            return "";
        }
        String sheet = cell.getSheet().getSheetName();
        return " ="
                + TEXT_IN_FORMULA
                        .matcher(formula)
                        .replaceAll("\"…\"")
                        .replace("'" + sheet.replace("'", "''") + "'!", "!");
    }

    /** Sentences are left out; of a list of sentences their number remains. */
    private static JsonNode withoutWords(JsonNode node) {
        if (node instanceof ArrayNode array) {
            return parts(array);
        }
        if (!(node instanceof ObjectNode object)) {
            return node;
        }
        ObjectNode kept = JsonNodeFactory.instance.objectNode();
        for (var field : object.properties()) {
            JsonNode value = field.getValue();
            if (field.getKey().equals(NAMED_IN_WORDS)) {
                kept.set(field.getKey(), parts(value));
            } else if (!WORDS.contains(field.getKey()) || value.isObject()) {
                kept.set(field.getKey(), withoutWords(value));
            } else if (value.isArray()) {
                kept.put(field.getKey(), value.size());
            }
        }
        return kept;
    }

    private static ArrayNode parts(JsonNode parent) {
        ArrayNode kept = JsonNodeFactory.instance.arrayNode();
        parent.forEach(part -> kept.add(withoutWords(part)));
        return kept;
    }

    private void json(String place, JsonNode node) {
        String line = node.toString();
        if (node.isValueNode() || (line.length() <= LONGEST_LINE && !place.isEmpty())) {
            put(place, line);
        } else if (node instanceof ObjectNode object) {
            object.properties()
                    .forEach(field ->
                            json(place.isEmpty() ? field.getKey() : place + "." + field.getKey(), field.getValue()));
        } else {
            for (int i = 0; i < node.size(); i++) {
                json(place + "[" + i + "]", node.get(i));
            }
        }
    }

    private void put(String place, String content) {
        if (places.put(place, content) != null) {
            throw new AssertionError(place + " is there twice");
        }
    }
}
