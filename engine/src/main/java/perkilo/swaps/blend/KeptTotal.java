package perkilo.swaps.blend;

import java.util.List;

/** The rule that the level of the whole blend stays the same. */
final class KeptTotal implements Keeps {

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        double total = rows.now(one -> 1);
        rows.between(total, one -> 1, total);
    }

    @Override
    public String words() {
        return KeptMessages.total();
    }
}
