package perkilo.swaps.blend;

import java.util.List;

/** The level of the whole blend stays. */
final class KeptTotal implements Keeps {

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        double total = rows.now(one -> 1);
        rows.between(total, one -> 1, total);
    }

    @Override
    public String words() {
        return "the total level stays";
    }
}
