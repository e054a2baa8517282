package perkilo.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.money.CurrencyUnit;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.origin.Figure;
import perkilo.reading.table.NumberText;
import perkilo.reading.table.TableRow;
import perkilo.schema.InputColumn;
import perkilo.schema.MaterialsSheet;

/** Reads the facts of a material. */
final class MaterialRow {

    private static final Pattern NAME_AND_SHARE = Pattern.compile("^(.*?)[\\s:(]+([\\d.,]+\\s*%?)\\)?$");

    private MaterialRow() {}

    /**
     * The material of a row.
     *
     * @param home the currency of house prices
     */
    static Material read(TableRow row, CurrencyUnit home) {
        return new Material(
                row.text(MaterialsSheet.MATERIAL),
                row.text(MaterialsSheet.INCI),
                row.list(MaterialsSheet.FUNCTIONS),
                row.figure(MaterialsSheet.DENSITY),
                Amounts.in(row, MaterialsSheet.HOUSE_PRICE, home),
                row.figure(MaterialsSheet.HANDLING_LOSS, Figure.ZERO),
                row.figure(MaterialsSheet.SHELF_LIFE),
                row.figure(MaterialsSheet.SAFETY_STOCK),
                traits(row),
                row.origin(MaterialsSheet.MATERIAL));
    }

    private static Traits traits(TableRow row) {
        Traits.Builder facts = Traits.builder();
        for (Fact fact : Fact.values()) {
            InputColumn column = MaterialsSheet.column(fact);
            switch (fact.kind()) {
                case NUMBER, PERCENT -> facts.figure(fact, row.figure(column));
                case WORD -> facts.word(fact, FactWords.chosen(row, column, fact.choices()));
                case WORDS -> facts.words(fact, FactWords.allChosen(row, column, fact.choices()));
                case SHARES -> facts.shares(fact, shares(row, column));
            }
        }
        Traits traits = facts.build();
        compare(row, traits, Fact.USE_MIN, Fact.USE_MAX);
        compare(row, traits, Fact.PH_MIN, Fact.PH_MAX);
        return traits;
    }

    private static void compare(TableRow row, Traits traits, Fact lowest, Fact highest) {
        Figure low = traits.figure(lowest);
        Figure high = traits.figure(highest);
        InputColumn lowColumn = MaterialsSheet.column(lowest);
        InputColumn highColumn = MaterialsSheet.column(highest);
        if (low != null && high != null && low.value().compareTo(high.value()) > 0) {
            row.findings()
                    .error(
                            row.origin(highColumn),
                            MaterialMessages.limitsCrossed(
                                    highColumn.header(),
                                    lowColumn.header(),
                                    row.origin(lowColumn).where()));
        }
    }

    private static List<Traits.Allergen> shares(TableRow row, InputColumn column) {
        List<Traits.Allergen> allergens = new ArrayList<>();
        for (String word : row.list(column)) {
            Matcher matcher = NAME_AND_SHARE.matcher(word);
            if (!matcher.matches()) {
                allergens.add(new Traits.Allergen(word, null));
                continue;
            }
            String share = matcher.group(2).replace("%", "").strip();
            if (NumberText.parse(share) instanceof NumberText.Parsed parsed) {
                Figure figure = new Figure(parsed.value().movePointLeft(2), row.origin(column), null);
                allergens.add(new Traits.Allergen(matcher.group(1).strip(), figure));
            } else {
                row.findings().error(row.origin(column), MaterialMessages.notAShare(word, column.example()));
            }
        }
        return allergens;
    }
}
