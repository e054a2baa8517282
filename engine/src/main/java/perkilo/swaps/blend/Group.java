package perkilo.swaps.blend;

import java.util.List;

/**
 * Lines of one kind, in one phase or across phases.
 *
 * @param kind of materials
 * @param phase as typed; several are separated by commas
 * @param lines indexes into the recipe
 */
record Group(Kind kind, String phase, List<Integer> lines) {

    Group {
        lines = List.copyOf(lines);
    }
}
