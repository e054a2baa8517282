package perkilo.cli;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.report.send.Calendar;

/** Orders as they are sent, read by a spreadsheet library and compared with the plan in JSON. */
final class OrdersToSendTest {

    private static final String ALL = "Orders to send";
    private static final String ONE = "Purchase order";
    private static final BigDecimal CENT = new BigDecimal("0.0001");

    /** Words that only the buyer may see. */
    private static final List<String> INTERNAL = List.of(
            "landed",
            "leftover",
            "needed by",
            "holding",
            "supplier orders",
            "settings",
            "conversion",
            "margin",
            "cheaper",
            "proven",
            "book.xlsx");

    @TempDir
    private Path folder = Path.of("");

    private JsonNode plan = new ObjectMapper().createObjectNode();
    private String messages = "";

    private Path out() {
        return folder.resolve("out");
    }

    private Path result() {
        return folder.resolve("result.xlsx");
    }

    private void order(OwnTrade trade) throws IOException {
        Path book = trade.save(folder.resolve("book.xlsx"));
        CommandLineRun run =
                CommandLineRun.of("order", book, "--json", "--reasons", "0", "--files", out(), "-o", result());
        assertThat(run.exit()).as(run.err()).isZero();
        plan = new ObjectMapper().readTree(run.out());
        messages = run.err();
    }

    private List<Path> files(String ending) throws IOException {
        try (Stream<Path> files = Files.list(out())) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    private List<PaperOrder> papers() throws IOException {
        List<PaperOrder> papers = new ArrayList<>();
        for (Path file : files(".xlsx")) {
            if (file.getFileName().toString().contains(".backup-")) {
                continue;
            }
            List<PaperOrder> one = PaperOrder.read(file, ONE);
            assertThat(one).hasSize(1);
            assertThat(file.getFileName().toString()).startsWith(one.get(0).number() + " ");
            papers.addAll(one);
        }
        return papers;
    }

    /** Each order of the JSON by its day and supplier, for comparison. */
    private Map<String, JsonNode> planned() {
        Map<String, JsonNode> orders = new TreeMap<>();
        plan.get("orders")
                .forEach(order -> orders.put(
                        order.get("orderBy").asText() + " "
                                + order.get("supplier").asText(),
                        order));
        assertThat(orders).hasSize(plan.get("orders").size());
        return orders;
    }

    @Test
    void each_order_of_the_plan_is_a_workbook_with_its_lines() throws IOException {
        order(new OwnTrade());
        compare(papers());
    }

    @Test
    void the_plans_workbook_has_the_same_orders_each_on_a_page() throws IOException {
        order(new OwnTrade());
        List<PaperOrder> papers = PaperOrder.read(result(), ALL);
        compare(papers);
        assertThat(papers).extracting(PaperOrder::orderDate).isSorted();
        assertThat(papers.stream().map(PaperOrder::words))
                .containsExactlyElementsOf(
                        papers().stream().map(PaperOrder::words).toList());
        try (XSSFWorkbook book = open(result())) {
            XSSFSheet sheet = book.getSheet(ALL);
            assertThat(sheet.getRowBreaks()).hasSize(papers.size() - 1);
            assertThat(sheet.getFooter().getLeft() + sheet.getFooter().getRight())
                    .isEmpty();
        }
    }

    private void compare(List<PaperOrder> papers) {
        Map<String, JsonNode> planned = planned();
        assertThat(papers).hasSameSizeAs(planned.values());
        Set<String> numbers = new HashSet<>();
        boolean charged = false;
        for (PaperOrder paper : papers) {
            assertThat(numbers.add(paper.number())).as(paper.number()).isTrue();
            JsonNode order = planned.entrySet().stream()
                    .filter(entry -> entry.getKey().startsWith(paper.orderDate().toString())
                            && paper.words()
                                    .contains(entry.getValue().get("supplier").asText()))
                    .map(Map.Entry::getValue)
                    .findFirst()
                    .orElseThrow();
            assertThat(paper.deliverBy())
                    .isEqualTo(
                            paper.orderDate().plusDays(order.get("leadTimeDays").asLong()));
            assertThat(paper.goods()).isEqualByComparingTo(order.get("goods").asText());
            BigDecimal small = new BigDecimal(
                    order.get("chargesByKind").get("smallOrderCharge").asText());
            if (small.signum() > 0) {
                charged = true;
                assertThat(paper.charge()).isEqualByComparingTo(small);
                assertThat(paper.total()).isEqualByComparingTo(paper.goods().add(small));
            } else {
                assertThat(paper.charge()).isNull();
                assertThat(paper.total()).isNull();
            }
            assertThat(paper.lines()).hasSameSizeAs(order.get("lines"));
            for (int at = 0; at < paper.lines().size(); at++) {
                PaperOrder.Line line = paper.lines().get(at);
                JsonNode of = order.get("lines").get(at);
                BigDecimal size = new BigDecimal(of.get("packSize").asText());
                BigDecimal price = new BigDecimal(of.get("price").asText());
                boolean perPack = of.get("pricePer").asText().equals("pack");
                assertThat(line.item()).contains(of.get("item").asText());
                assertThat(line.pack()).startsWith(size.stripTrailingZeros().toPlainString() + " ");
                assertThat(line.packs()).isEqualByComparingTo(of.get("packs").asText());
                assertThat(line.price()).isEqualByComparingTo(perPack ? price : price.multiply(size));
                assertThat(line.total()).isEqualByComparingTo(of.get("goods").asText());
            }
        }
        assertThat(charged).as("an order below its supplier's minimum").isTrue();
    }

    @Test
    void an_order_names_the_item_as_its_supplier_does() throws IOException {
        order(new OwnTrade());
        List<PaperOrder.Line> lines =
                papers().stream().flatMap(paper -> paper.lines().stream()).toList();
        assertThat(lines)
                .anyMatch(line -> line.article().equals("TO-1001")
                        && line.item().equals("Shea refined BIO\n(our name: Shea butter)"))
                .anyMatch(line -> line.article().equals("JG50-A")
                        && line.item().equals("Jar 50 mL")
                        && line.pack().equals("192 pieces"))
                .anyMatch(line -> line.article().isEmpty() && line.item().equals("Vitamin E"));
    }

    @Test
    void an_order_has_addresses_and_terms() throws IOException {
        order(new OwnTrade());
        PaperOrder paper = papers().stream()
                .filter(one -> one.words().contains("Tarnholt Oleo GmbH"))
                .findFirst()
                .orElseThrow();
        assertThat(paper.words())
                .containsSubsequence(
                        "Tarnholt Oleo GmbH",
                        "Hafenweg 4",
                        "20457 Hamburg",
                        "Attention: Ida Brandt",
                        "orders@tarnholt.example")
                .containsSubsequence("Lumen & Fjord Skincare", "Havnegade 12", "8000 Aarhus C", "Denmark")
                .containsSubsequence("Deliver to", "Nordlager", "Gate 7", "8260 Viby J")
                .containsSubsequence("Delivery terms", "FCA Hamburg")
                .containsSubsequence("Payment terms", "30 days net")
                .containsSubsequence("Customer number", "10482")
                .contains("VAT number: DK00000000");
        assertThat(papers().stream().flatMap(one -> one.words().stream()))
                .containsSubsequence("30 % with the order, the rest 14 days after", "delivery")
                .contains("50 % with the order, the rest on delivery");
    }

    @Test
    void an_order_says_nothing_internal() throws IOException {
        order(new OwnTrade());
        for (Path file : files(".xlsx")) {
            String all = everyPart(file).replace("pageMargins", "").toLowerCase(Locale.ROOT);
            assertThat(all)
                    .doesNotContain(INTERNAL)
                    .doesNotContain(folder.toString().toLowerCase(Locale.ROOT));
            long named = OwnTrade.SUPPLIERS.stream()
                    .filter(supplier ->
                            all.contains(supplier.toLowerCase(Locale.ROOT).replace("&", "&amp;")))
                    .count();
            assertThat(named).as("only its own supplier is on %s", file).isEqualTo(1);
            boolean abroad = all.contains("marrowdale") || all.contains("pemberwick");
            assertThat(all.contains("\"eur\"") || all.contains("&quot;eur&quot;"))
                    .isEqualTo(!abroad);
        }
        for (PaperOrder paper : PaperOrder.read(result(), ALL)) {
            assertThat(String.join("\n", paper.words()).toLowerCase(Locale.ROOT))
                    .doesNotContain(INTERNAL);
        }
    }

    private static String everyPart(Path file) throws IOException {
        StringBuilder all = new StringBuilder();
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                all.append(entry.getName()).append('\n');
                all.append(new String(zip.readAllBytes(), StandardCharsets.UTF_8))
                        .append('\n');
            }
        }
        return all.toString();
    }

    @Test
    void an_order_is_live_and_prints_on_a_page() throws IOException {
        order(new OwnTrade());
        Path file = files(".xlsx").get(0);
        int head = PaperOrder.read(file, ONE).get(0).headRow();
        try (XSSFWorkbook book = open(file)) {
            XSSFSheet sheet = book.getSheet(ONE);
            Row first = sheet.getRow(head + 1);
            assertThat(first.getCell(4).getCellType()).isEqualTo(CellType.NUMERIC);
            assertThat(first.getCell(6).getCellType()).isEqualTo(CellType.NUMERIC);
            assertThat(first.getCell(7).getCellFormula()).startsWith("ROUND(");
            assertThat(sums(sheet)).anyMatch(formula -> formula.startsWith("SUM("));
            assertThat(sheet.getRepeatingRows().getFirstRow()).isEqualTo(head);
            assertThat(sheet.getFitToPage()).isTrue();
            assertThat(sheet.getPrintSetup().getFitWidth()).isEqualTo((short) 1);
            assertThat(sheet.getPrintSetup().getFitHeight()).isZero();
            assertThat(sheet.getPrintSetup().getPaperSize()).isEqualTo(PrintSetup.A4_PAPERSIZE);

            double before = evaluated(book, sheet);
            first.getCell(4).setCellValue(first.getCell(4).getNumericCellValue() + 2);
            assertThat(evaluated(book, sheet) - before)
                    .isCloseTo(2 * first.getCell(6).getNumericCellValue(), Offset.offset(0.011));
        }
    }

    /** So that the office suite can reuse no value. */
    private static void forgetValues(XSSFSheet sheet) {
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell instanceof XSSFCell formula
                        && formula.getCellType() == CellType.FORMULA
                        && formula.getCTCell().isSetV()) {
                    formula.getCTCell().unsetV();
                }
            }
        }
    }

    private static List<String> sums(XSSFSheet sheet) {
        List<String> formulas = new ArrayList<>();
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.FORMULA) {
                    formulas.add(cell.getCellFormula());
                }
            }
        }
        return formulas;
    }

    /** The goods of the order, computed by the library. */
    private static double evaluated(XSSFWorkbook book, XSSFSheet sheet) {
        for (Row row : sheet) {
            Cell name = row.getCell(6);
            if (name != null
                    && name.getCellType() == CellType.STRING
                    && name.getStringCellValue().equals("Goods")) {
                return book.getCreationHelper()
                        .createFormulaEvaluator()
                        .evaluate(row.getCell(7))
                        .getNumberValue();
            }
        }
        throw new AssertionError("no goods");
    }

    @Test
    @Tag("office")
    void edited_packs_recalculate_in_an_office_suite() throws Exception {
        order(new OwnTrade());
        Path file = files(".xlsx").get(0);
        PaperOrder before = PaperOrder.read(file, ONE).get(0);
        Path edited = folder.resolve("edited.xlsx");
        try (XSSFWorkbook book = open(file);
                OutputStream out = Files.newOutputStream(edited)) {
            Cell packs = book.getSheet(ONE).getRow(before.headRow() + 1).getCell(4);
            packs.setCellValue(packs.getNumericCellValue() + 3);
            forgetValues(book.getSheet(ONE));
            book.write(out);
        }
        Path recalculated = Files.createDirectories(folder.resolve("recalculated"));
        Process suite = new ProcessBuilder(
                        "soffice",
                        "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                        "--headless",
                        "--convert-to",
                        "xlsx",
                        "--outdir",
                        recalculated.toString(),
                        edited.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("suite.log").toFile())
                .start();
        assertThat(suite.waitFor(10, TimeUnit.MINUTES)).isTrue();
        PaperOrder after =
                PaperOrder.read(recalculated.resolve("edited.xlsx"), ONE).get(0);
        PaperOrder.Line line = after.lines().get(0);
        assertThat(line.packs())
                .isEqualByComparingTo(before.lines().get(0).packs().add(BigDecimal.valueOf(3)));
        assertThat(line.total().doubleValue())
                .isCloseTo(line.packs().multiply(line.price()).doubleValue(), Offset.offset(0.0051));
        assertThat(after.goods().doubleValue())
                .isCloseTo(
                        after.lines().stream()
                                .mapToDouble(one -> one.total().doubleValue())
                                .sum(),
                        Offset.offset(1e-6));
    }

    @Test
    void file_names_are_safe_on_every_system() throws IOException {
        order(new OwnTrade());
        Set<String> lower = new HashSet<>();
        for (Path file : files("")) {
            String name = file.getFileName().toString();
            assertThat(name).doesNotContainPattern("[<>:\"/\\\\|?*\\p{Cntrl}]").doesNotEndWith(" ");
            assertThat(name).doesNotContain(" .").hasSizeLessThan(100);
            assertThat(lower.add(name.toLowerCase(Locale.ROOT))).isTrue();
        }
        assertThat(lower).anyMatch(name -> name.matches("\\d{8}-quillf-1 quillfen small lots\\.xlsx"));
        assertThat(lower).anyMatch(name -> name.matches("\\d{8}-ostves-1 =østvest emballage\\.xlsx"));
    }

    @Test
    void the_same_plan_leaves_the_files_as_they_are_and_an_edited_one_is_kept() throws IOException {
        order(new OwnTrade());
        Path first = files(".xlsx").get(0);
        byte[] before = Files.readAllBytes(first);
        List<Path> all = files("");
        order(new OwnTrade());
        assertThat(files("")).isEqualTo(all);
        assertThat(Files.readAllBytes(first)).isEqualTo(before);

        Files.writeString(first, "typed by hand");
        Files.writeString(out().resolve("orders.ics"), "typed by hand");
        order(new OwnTrade());
        assertThat(Files.readAllBytes(first)).isEqualTo(before);
        List<Path> backups = files("").stream()
                .filter(file -> file.getFileName().toString().contains(".backup-"))
                .toList();
        assertThat(backups).hasSize(2).allMatch(file -> file.toFile().length() == "typed by hand".length());
        assertThat(messages).contains("replaced a file, which is kept as");
    }

    @Test
    void orders_of_another_plan_are_named() throws IOException {
        order(new OwnTrade());
        assertThat(messages).doesNotContain("not in this plan");
        Files.writeString(out().resolve("20260101-OLDONE-1 Old one.xlsx"), "");
        order(new OwnTrade());
        assertThat(messages)
                .contains(
                        "The folder " + out() + " has orders that are not in this plan: 20260101-OLDONE-1 Old one.xlsx."
                                + " Do not send them by mistake; move those that you have sent to another folder.");
    }

    @Test
    void what_is_missing_on_the_orders_is_said_once() throws IOException {
        order(new OwnTrade());
        assertThat(messages)
                .containsOnlyOnce(
                        "Who we buy from!A3: The purchase orders to Quillfen: Small/Lots* have no address. Fill"
                                + " the column Address in the table of suppliers for them.")
                .doesNotContain("leave room");
        order(new OwnTrade()
                .set("Who we buy from", "Address", "")
                .setting("Company name", "")
                .setting("Company address", "")
                .setting("Buyer contact", ""));
        assertThat(messages)
                .containsOnlyOnce(
                        "The purchase orders leave room for what the settings do not say: Company, Company address,"
                                + " Company contact. Add a row for each to the table of settings.")
                .containsOnlyOnce("have no address");
        compare(papers());
    }

    @Test
    void the_calendar_has_a_day_for_each_order_and_each_delivery() throws IOException {
        order(new OwnTrade());
        Path file = out().resolve("orders.ics");
        List<Map<String, String>> events =
                Calendar.read(Files.readAllBytes(file)).events();
        List<String> expected = new ArrayList<>();
        planned().forEach((key, order) -> {
            LocalDate day = LocalDate.parse(order.get("orderBy").asText());
            String supplier = order.get("supplier").asText();
            expected.add("Order from " + supplier + " " + day);
            expected.add("Delivery from " + supplier + " "
                    + day.plusDays(order.get("leadTimeDays").asLong()));
        });
        List<String> found = events.stream()
                .map(event -> requireNonNull(event.get("SUMMARY")).replaceFirst(" \\([^()]*\\)$", "") + " "
                        + LocalDate.parse(
                                requireNonNull(event.get("DTSTART;VALUE=DATE")), DateTimeFormatter.BASIC_ISO_DATE))
                .toList();
        assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
        List<String> ids =
                events.stream().map(event -> requireNonNull(event.get("UID"))).toList();
        assertThat(ids).doesNotHaveDuplicates();

        order(new OwnTrade());
        assertThat(Calendar.read(Files.readAllBytes(file)).events())
                .extracting(event -> event.get("UID"))
                .containsExactlyElementsOf(ids);
    }

    @Test
    void payments_add_up_and_follow_the_terms() throws IOException {
        order(new OwnTrade());
        BigDecimal landed = BigDecimal.ZERO;
        Map<String, BigDecimal> byOrder = new TreeMap<>();
        Map<String, BigDecimal> byPayment = new TreeMap<>();
        for (JsonNode order : plan.get("orders")) {
            BigDecimal all = new BigDecimal(order.get("landedHome").asText());
            landed = landed.add(all);
            LocalDate day = LocalDate.parse(order.get("orderBy").asText());
            LocalDate arrival = day.plusDays(order.get("leadTimeDays").asLong());
            byOrder.merge(month(day), all, BigDecimal::add);
            String supplier = order.get("supplier").asText();
            BigDecimal duty = new BigDecimal(
                            order.get("chargesByKind").get("duty").asText())
                    .divide(new BigDecimal("1.0912"), MathContext.DECIMAL64);
            BigDecimal rest = all.subtract(duty);
            switch (OwnTrade.SUPPLIERS.indexOf(supplier)) {
                case 0 -> byPayment.merge(month(arrival.plusDays(30)), all, BigDecimal::add);
                case 2 -> {
                    byPayment.merge(month(day), rest.multiply(new BigDecimal("0.5")), BigDecimal::add);
                    byPayment.merge(month(arrival), rest.multiply(new BigDecimal("0.5")), BigDecimal::add);
                    byPayment.merge(month(arrival), duty, BigDecimal::add);
                }
                case 3 -> {
                    byPayment.merge(month(day), all.multiply(new BigDecimal("0.3")), BigDecimal::add);
                    byPayment.merge(month(arrival.plusDays(14)), all.multiply(new BigDecimal("0.7")), BigDecimal::add);
                }
                default -> byPayment.merge(month(day), all, BigDecimal::add);
            }
        }
        try (XSSFWorkbook book = open(result())) {
            XSSFSheet sheet = book.getSheet("Order plan");
            int row = 0;
            while (sheet.getRow(row) == null
                    || sheet.getRow(row).getCell(1) == null
                    || !sheet.getRow(row).getCell(1).toString().startsWith("By day of order")) {
                row++;
            }
            Map<String, BigDecimal> ordered = new TreeMap<>();
            Map<String, BigDecimal> paid = new TreeMap<>();
            for (row++; sheet.getRow(row).getCell(0).getCellType() == CellType.FORMULA; row++) {
                LocalDate day =
                        sheet.getRow(row).getCell(0).getLocalDateTimeCellValue().toLocalDate();
                ordered.put(month(day), figure(sheet, row, 1));
                paid.put(month(day), figure(sheet, row, 2));
            }
            assertThat(figure(sheet, row, 1)).isCloseTo(landed, Offset.offset(CENT));
            assertThat(figure(sheet, row, 2)).isCloseTo(landed, Offset.offset(CENT));
            same(ordered, byOrder);
            same(paid, byPayment);
            assertThat(paid).isNotEqualTo(ordered);
        }
    }

    private static void same(Map<String, BigDecimal> found, Map<String, BigDecimal> expected) {
        found.forEach((month, amount) -> assertThat(amount)
                .as(month)
                .isCloseTo(expected.getOrDefault(month, BigDecimal.ZERO), Offset.offset(CENT)));
        assertThat(found.keySet()).containsAll(expected.keySet());
    }

    private static BigDecimal figure(XSSFSheet sheet, int row, int column) {
        return BigDecimal.valueOf(sheet.getRow(row).getCell(column).getNumericCellValue());
    }

    private static String month(LocalDate day) {
        return day.toString().substring(0, 7);
    }

    @Test
    void the_files_are_told_and_a_file_in_the_way_is_refused() throws IOException {
        Path book = new OwnTrade().save(folder.resolve("book.xlsx"));
        CommandLineRun run = CommandLineRun.of("order", book, "--reasons", "1", "--files", out(), "-o", result());
        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .containsSubsequence("Written to " + result(), "Orders to send, in " + out(), "orders.ics");
        for (Path file : files("")) {
            assertThat(run.out()).contains("  " + file.getFileName());
        }
        assertThat(run.out()).endsWith("Why these orders added to " + result() + System.lineSeparator());
        try (XSSFWorkbook result = open(result())) {
            assertThat(result.getSheet("Why these orders")).isNotNull();
        }

        CommandLineRun inTheWay = CommandLineRun.of("order", book, "--reasons", "0", "--files", book, "-o", result());
        assertThat(inTheWay.exit()).isEqualTo(Exit.FILE);
        assertThat(inTheWay.err()).contains(book + " is a file, not a folder. Name another folder.");
    }

    private static XSSFWorkbook open(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        }
    }
}
