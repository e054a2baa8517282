package perkilo.swaps;

import java.util.List;
import java.util.Map;
import perkilo.costing.Market;
import perkilo.costing.RunCost;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.blend.BlendStudy;

/** The outcome of a search for cheaper materials. */
public sealed interface SwapOutcome {

    /** Warnings, notes and errors of the search. */
    List<Finding> findings();

    /**
     * The search went through.
     *
     * @param book what was searched
     * @param market who sells what on the costing date
     * @param base what each run costs now, by formula and by the run's key
     * @param swaps those that save at some run size, by rank
     * @param rejected materials of the right role that are not offered, by formula and line
     * @param missing facts without which materials cannot be ranked, one entry for each material
     * @param kept lines that are not compared, and why
     * @param studies joint swaps of all materials of one kind, or why there are none
     * @param findings warnings and notes
     */
    record Found(
            Book book,
            Market market,
            Map<String, Map<String, RunCost>> base,
            List<Swap> swaps,
            List<Rejected> rejected,
            List<MissingFact> missing,
            List<KeptLine> kept,
            List<BlendStudy> studies,
            List<Finding> findings)
            implements SwapOutcome {

        public Found {
            swaps = List.copyOf(swaps);
            rejected = List.copyOf(rejected);
            missing = List.copyOf(missing);
            kept = List.copyOf(kept);
            studies = List.copyOf(studies);
            findings = List.copyOf(findings);
        }

        /** The sentence for a search without swaps. */
        public String withoutSwaps() {
            return rejected.isEmpty() ? SwapMessages.nothingCompared() : SwapMessages.nothingCheaper();
        }

        /** All joint swaps that save at some run size; the place in this list, from one, is a blend's number. */
        public List<Blend> blends() {
            return studies.stream().flatMap(study -> study.blends().stream()).toList();
        }
    }

    /**
     * Something that the formulas need as they are cannot be bought.
     *
     * @param findings what, and why; at least one is an error
     */
    record NoPurchase(List<Finding> findings) implements SwapOutcome {

        public NoPurchase {
            findings = List.copyOf(findings);
        }
    }
}
