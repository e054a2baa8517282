package perkilo.desk;

import java.util.List;
import perkilo.origin.Finding;
import perkilo.rates.RatesTable;
import perkilo.units.DatedRate;

/** What taking exchange rates in came to. */
public sealed interface RatesAnswer {

    /** Everything that a person should know. */
    List<Finding> findings();

    /**
     * Every file is in the table.
     *
     * @param files what each file brought, in order
     * @param rates all rates of the table, newest day first
     * @param changed whether the table was written; otherwise it had everything already
     * @param findings everything that a person should know
     */
    record Taken(List<OfFile> files, List<DatedRate> rates, boolean changed, List<Finding> findings)
            implements RatesAnswer {

        public Taken {
            files = List.copyOf(files);
            rates = List.copyOf(rates);
            findings = List.copyOf(findings);
        }
    }

    /** A file or the table has errors, so nothing was written; at least one finding is one. */
    record BadInput(List<Finding> findings) implements RatesAnswer {

        public BadInput {
            findings = List.copyOf(findings);
        }
    }

    /** The work was stopped before anything was written. */
    record Stopped(List<Finding> findings) implements RatesAnswer {

        public Stopped {
            findings = List.copyOf(findings);
        }
    }

    /**
     * What a file brought.
     *
     * @param file as the person named it, or its address
     */
    record OfFile(String file, RatesTable.Taken taken) {}
}
