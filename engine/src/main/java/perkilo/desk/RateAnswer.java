package perkilo.desk;

import java.util.List;
import perkilo.origin.Finding;
import perkilo.units.Conversion;

/** What a rate was on a day. */
public sealed interface RateAnswer {

    /** Everything that a person should know, of the table too. */
    List<Finding> findings();

    /** The rate, and the published rates that it rests on. */
    record Found(Conversion conversion, List<Finding> findings) implements RateAnswer {

        public Found {
            findings = List.copyOf(findings);
        }
    }

    /** There is none, or the table has errors; at least one finding is an error. */
    record None(List<Finding> findings) implements RateAnswer {

        public None {
            findings = List.copyOf(findings);
        }
    }
}
