package perkilo.purchasing.search;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import perkilo.purchasing.PurchasePlan;

/** What a plan costs by the words of the instances' README alone: straight from the file, in decimals. */
final class InstanceCost {
    private final JsonNode file;
    private final PurchasePlan plan;
    private final int periods;

    InstanceCost(Instance instance, PurchasePlan plan) {
        file = instance.file;
        this.plan = plan;
        periods = instance.periods();
    }

    BigDecimal total() {
        BigDecimal total = BigDecimal.ZERO;
        for (JsonNode supplier : file.get("suppliers")) {
            for (int t = 0; t < periods; t++) {
                total = total.add(order(supplier, t));
            }
        }
        for (JsonNode material : file.get("ingredients")) {
            total = total.add(holding(material));
        }
        return total;
    }

    private BigDecimal order(JsonNode supplier, int period) {
        BigDecimal goods = BigDecimal.ZERO;
        BigDecimal kg = BigDecimal.ZERO;
        for (PurchasePlan.Line line : plan.lines()) {
            JsonNode offer = file.get("offers").get(line.quote());
            if (line.period() == period && offer.get("supplier").equals(supplier.get("id"))) {
                BigDecimal quantity = quantity(line);
                goods = goods.add(quantity.multiply(price(offer, quantity)));
                kg = kg.add(quantity);
            }
        }
        if (kg.signum() == 0) {
            return BigDecimal.ZERO;
        }
        BigDecimal cost = goods.multiply(
                        BigDecimal.ONE.add(decimal(supplier, "dutyPct").movePointLeft(2)))
                .add(kg.multiply(decimal(supplier, "freightPerKg")))
                .add(decimal(supplier, "fixedFreight"));
        if (goods.compareTo(decimal(supplier, "minOrderValue")) < 0) {
            if (supplier.get("minOrderMode").asText().equals("hard")) {
                throw new IllegalStateException("too small an order: " + supplier.get("id"));
            }
            cost = cost.add(decimal(supplier, "smallOrderSurcharge"));
        }
        return cost.multiply(
                decimal(file.get("fxToBase"), supplier.get("currency").asText()));
    }

    private BigDecimal quantity(PurchasePlan.Line line) {
        JsonNode offer = file.get("offers").get(line.quote());
        BigDecimal quantity = decimal(offer, "packKg").multiply(BigDecimal.valueOf(line.packs()));
        boolean whole = line.packs() % offer.get("orderMultiplePacks").asInt() == 0;
        if (!whole || quantity.compareTo(decimal(offer, "moqKg")) < 0) {
            throw new IllegalStateException("not a line of " + offer.get("id"));
        }
        return quantity;
    }

    private static BigDecimal price(JsonNode offer, BigDecimal quantity) {
        BigDecimal price = BigDecimal.ZERO;
        for (JsonNode tier : offer.get("tiers")) {
            if (decimal(tier, "minKg").compareTo(quantity) <= 0) {
                price = decimal(tier, "pricePerKg");
            }
        }
        return price;
    }

    private BigDecimal holding(JsonNode material) {
        List<Lot> lots = new ArrayList<>();
        lots.add(new Lot(material.get("stockUsablePeriods").asInt() - 1, decimal(material, "stockKg")));
        BigDecimal inStock = decimal(material, "stockKg");
        BigDecimal kept = BigDecimal.ZERO;
        for (int t = 0; t < periods; t++) {
            BigDecimal bought = bought(material, t);
            lots.add(new Lot(t + material.get("shelfLifePeriods").asInt() - 1, bought));
            lots.sort(Comparator.comparingInt(lot -> lot.lastPeriod));
            BigDecimal need = material.get("needKg").get(t).decimalValue();
            inStock = inStock.add(bought).subtract(need);
            for (Lot lot : lots) {
                need = lot.lastPeriod < t ? need : need.subtract(lot.use(need));
            }
            if (need.signum() > 0) {
                throw new IllegalStateException("short of " + material.get("id"));
            }
            kept = kept.add(inStock);
        }
        return kept.multiply(decimal(material, "holdingCostPerKgPeriod"));
    }

    private BigDecimal bought(JsonNode material, int period) {
        return plan.lines().stream()
                .filter(line -> line.period() == period)
                .filter(line ->
                        file.get("offers").get(line.quote()).get("ingredient").equals(material.get("id")))
                .map(this::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal decimal(JsonNode node, String name) {
        return node.get(name).decimalValue();
    }

    private static final class Lot {
        private final int lastPeriod;
        private BigDecimal kg;

        Lot(int lastPeriod, BigDecimal kg) {
            this.lastPeriod = lastPeriod;
            this.kg = kg;
        }

        BigDecimal use(BigDecimal wanted) {
            BigDecimal used = kg.min(wanted);
            kg = kg.subtract(used);
            return used;
        }
    }
}
