package perkilo.swaps.blend;

import java.util.List;

/**
 * Lines of one function in one phase.
 *
 * @param function as it is compared
 * @param phase as typed
 * @param lines indexes into the recipe
 */
record Group(String function, String phase, List<Integer> lines) {

    Group {
        lines = List.copyOf(lines);
    }
}
