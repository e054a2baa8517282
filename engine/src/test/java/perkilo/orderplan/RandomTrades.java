package perkilo.orderplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import perkilo.model.Product;
import perkilo.units.Measure;

/** Small trades at random: two or three suppliers, up to four items, up to five months. */
final class RandomTrades {

    private static final String[] DAYS = {"2027-12-31", "2028-01-31", "2027-02-01", "2026-11-25", "2028-02-29"};

    private final Random random;
    private final LocalDate today;
    private final Trade trade;

    private RandomTrades(long seed) {
        this.random = new Random(seed);
        this.today = LocalDate.parse(DAYS[random.nextInt(DAYS.length)]);
        this.trade = new Trade(today.toString());
    }

    static Trade of(long seed) {
        return new RandomTrades(seed).make();
    }

    private Trade make() {
        trade.holding(pick("0", "0.12", "0.36"))
                .credit(pick("0", "0", "0.4"))
                .margin(pick("0", "0.015"))
                .rate("USD", "EUR", "0.9137");
        int suppliers = 2 + random.nextInt(2);
        for (int i = 0; i < suppliers; i++) {
            supplier("S" + i);
        }
        List<String> names = List.of("Oil", "Butter", "Wax");
        for (String name : names) {
            trade.material(name, orNone("1", "3", "24"), pick("0", "0.025"));
            offers(name, suppliers, pick("1", "4.5", "25"), random.nextBoolean() ? Measure.KG : Measure.L);
        }
        offers("Jar", suppliers, pick("12", "100"), Measure.EACH);
        List<Product.Component> jar = List.of(Trade.component("Jar", "1", "0.03", orNone("37.5", "120")));
        trade.product("Balm", jar, "Oil", "0.5", "Butter", "0.4", "Wax", "0.1");
        trade.product("Lotion", List.of(), "Oil", "0.85", "Wax", "0.15");
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            String units = Integer.toString(5 + random.nextInt(120));
            trade.demand(
                    pick("Balm", "Lotion"),
                    units,
                    today.plusDays(62 + random.nextInt(95)).toString());
        }
        for (String name : names) {
            for (int i = random.nextInt(3); i > 0; i--) {
                String kg = Integer.toString(1 + random.nextInt(20));
                LocalDate expires = today.plusDays(random.nextInt(200) - 20);
                trade.stock(name, kg, Measure.KG, random.nextInt(4) == 0 ? null : expires.toString());
            }
        }
        for (String name : names) {
            for (int i = random.nextInt(2); i > 0; i--) {
                LocalDate expected = today.plusDays(random.nextInt(200) - 20);
                LocalDate expires = expected.plusDays(random.nextInt(150) - 20);
                trade.onOrder(
                        name,
                        Integer.toString(1 + random.nextInt(30)),
                        Measure.KG,
                        random.nextBoolean() ? null : expires.toString(),
                        expected.toString());
            }
        }
        return trade;
    }

    private void supplier(String name) {
        trade.supplier(
                name,
                pick("EUR", "USD"),
                random.nextInt(62),
                pick("0", "18.5", "60"),
                orNone("80", "150"),
                pick("12.5", "20"),
                pick("0", "0.45"),
                pick("0", "0.004"),
                pick("0", "0.065"));
    }

    private void offers(String item, int suppliers, String pack, Measure unit) {
        List<Integer> sellers = new ArrayList<>();
        sellers.add(random.nextInt(suppliers));
        if (random.nextBoolean()) {
            sellers.add(random.nextInt(suppliers));
        }
        for (int seller : sellers) {
            String price = 5 + random.nextInt(40) + "." + (10 + random.nextInt(90));
            trade.offer(
                    "S" + seller,
                    item,
                    pack,
                    unit,
                    random.nextInt(3) == 0 ? pack + "0" : null,
                    1 + random.nextInt(2),
                    null,
                    "0",
                    price,
                    "60",
                    Integer.toString(4 + random.nextInt(20)));
            if (random.nextInt(3) == 0) {
                trade.duty(pick("0", "0.037", "0.12"));
            }
        }
    }

    private @Nullable String orNone(String... some) {
        int at = random.nextInt(some.length + 1);
        return at == 0 ? null : some[at - 1];
    }

    private String pick(String... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
