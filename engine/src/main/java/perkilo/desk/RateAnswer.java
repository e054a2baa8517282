package perkilo.desk;

import java.util.List;
import perkilo.origin.Finding;
import perkilo.origin.SameCause;
import perkilo.units.Conversion;

/** The outcome of looking up a rate. */
public sealed interface RateAnswer {

    /** Everything that a person should know, also about the table. */
    List<Finding> findings();

    /** The rate, with the published rates that it is computed from. */
    record Found(Conversion conversion, List<Finding> findings) implements RateAnswer {

        public Found {
            findings = SameCause.once(findings);
        }
    }

    /** There is none, or the table has errors; at least one finding is an error. */
    record None(List<Finding> findings) implements RateAnswer {

        public None {
            findings = SameCause.once(findings);
        }
    }
}
