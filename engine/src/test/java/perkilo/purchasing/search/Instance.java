package perkilo.purchasing.search;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.Need;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/** A published purchase problem, as a file, and as a problem for the planner. */
final class Instance {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    final JsonNode file;

    private final Map<String, Integer> vendors = new HashMap<>();
    private final Map<String, Integer> items = new HashMap<>();

    private Instance(JsonNode file) {
        this.file = file;
        number(file.get("suppliers"), vendors);
        number(file.get("ingredients"), items);
    }

    private static void number(JsonNode list, Map<String, Integer> numbers) {
        list.forEach(one -> numbers.put(one.get("id").asText(), numbers.size()));
    }

    /** Reads one of the instances among the test resources. */
    static Instance read(String name) {
        try (InputStream in = open(name)) {
            return new Instance(JSON.readTree(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static InputStream open(String name) throws IOException {
        @Nullable InputStream plain = Instance.class.getResourceAsStream("instances/" + name + ".json");
        if (plain != null) {
            return plain;
        }
        @Nullable InputStream packed = Instance.class.getResourceAsStream("instances/" + name + ".json.gz");
        if (packed == null) {
            throw new IllegalArgumentException("no instance " + name);
        }
        return new GZIPInputStream(packed);
    }

    /** Parses an instance from text. */
    static Instance parse(String text) {
        try {
            return new Instance(JSON.readTree(text));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    PurchaseProblem problem() {
        List<Need> needs = new ArrayList<>();
        file.get("ingredients").forEach(one -> needs.add(need(one)));
        List<Vendor> sellers = new ArrayList<>();
        file.get("suppliers").forEach(one -> sellers.add(vendor(one)));
        List<Quote> quotes = new ArrayList<>();
        file.get("offers").forEach(one -> quotes.add(quote(one)));
        return new PurchaseProblem(periods(), needs, sellers, quotes, null, null);
    }

    int periods() {
        return file.get("periods").asInt();
    }

    private static Need need(JsonNode one) {
        List<BigDecimal> perPeriod = new ArrayList<>();
        one.get("needKg").forEach(need -> perPeriod.add(need.decimalValue()));
        Need.Lot lot = new Need.Lot(
                one.get("stockKg").decimalValue(), one.get("stockUsablePeriods").asInt());
        return new Need(
                one.get("id").asText(),
                perPeriod,
                List.of(lot),
                one.get("shelfLifePeriods").asInt(),
                one.get("holdingCostPerKgPeriod").decimalValue(),
                BigDecimal.ZERO,
                BigDecimal.ZERO);
    }

    private Vendor vendor(JsonNode one) {
        boolean refuses = one.get("minOrderMode").asText().equals("hard");
        // duty is on the goods alone, not on a surcharge: prices hold it, and the minimum is raised by as much
        BigDecimal minimum = one.get("minOrderValue").decimalValue().multiply(withDuty(one));
        return new Vendor(
                one.get("id").asText(),
                file.get("fxToBase").get(one.get("currency").asText()).decimalValue(),
                BigDecimal.ZERO,
                one.get("fixedFreight").decimalValue(),
                one.get("freightPerKg").decimalValue(),
                BigDecimal.ZERO,
                minimum,
                refuses ? null : one.get("smallOrderSurcharge").decimalValue(),
                DutyBasis.FOB);
    }

    private static BigDecimal withDuty(JsonNode supplier) {
        return BigDecimal.ONE.add(supplier.get("dutyPct").decimalValue().movePointLeft(2));
    }

    private Quote quote(JsonNode one) {
        int vendor = requireNonNull(vendors.get(one.get("supplier").asText()));
        BigDecimal pack = one.get("packKg").decimalValue();
        BigDecimal withDuty = withDuty(file.get("suppliers").get(vendor));
        List<Tier> tiers = new ArrayList<>();
        one.get("tiers")
                .forEach(tier -> tiers.add(new Tier(
                        tier.get("minKg").decimalValue(),
                        tier.get("pricePerKg").decimalValue().multiply(pack).multiply(withDuty))));
        return new Quote(
                requireNonNull(items.get(one.get("ingredient").asText())),
                vendor,
                pack,
                pack,
                one.get("orderMultiplePacks").asInt(),
                one.get("moqKg").decimalValue(),
                tiers,
                BigDecimal.ZERO,
                BigDecimal.ONE,
                null,
                0,
                periods() - 1);
    }
}
