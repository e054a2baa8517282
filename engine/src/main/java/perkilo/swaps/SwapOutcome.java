package perkilo.swaps;

import java.util.List;
import java.util.Map;
import perkilo.costing.Market;
import perkilo.costing.RunCost;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.blend.BlendStudy;

/** What a search for cheaper materials came to. */
public sealed interface SwapOutcome {

    /** What was found on the way. */
    List<Finding> findings();

    /**
     * The search went through.
     *
     * @param book what was searched
     * @param market who sells what on the costing date
     * @param base what each run costs now, by formula and by the run's key
     * @param swaps those that save at some run size, by rank
     * @param rejected materials of the right function that are not offered, by formula and line
     * @param studies joint swaps of all materials of one function, or why there are none
     * @param findings warnings and notes
     */
    record Found(
            Book book,
            Market market,
            Map<String, Map<String, RunCost>> base,
            List<Swap> swaps,
            List<Rejected> rejected,
            List<BlendStudy> studies,
            List<Finding> findings)
            implements SwapOutcome {

        static final String NOTHING_COMPARED =
                "Nothing was compared: no other material that can be bought is known to do the work of a line. Give materials"
                        + " their Functions on the Materials sheet.";

        public Found {
            swaps = List.copyOf(swaps);
            rejected = List.copyOf(rejected);
            studies = List.copyOf(studies);
            findings = List.copyOf(findings);
        }

        /** What there is to say where there is no swap. */
        public String withoutSwaps() {
            return rejected.isEmpty() ? NOTHING_COMPARED : "No material that fits is cheaper at any run size.";
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
