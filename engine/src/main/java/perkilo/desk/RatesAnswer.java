package perkilo.desk;

import java.nio.file.Path;
import java.util.List;
import perkilo.origin.Finding;
import perkilo.origin.SameCause;
import perkilo.rates.RatesTable;
import perkilo.units.DatedRate;

/** The outcome of taking exchange rates in. */
public sealed interface RatesAnswer {

    /** Everything that a person should know. */
    List<Finding> findings();

    /**
     * Every file is in the table.
     *
     * @param files what was read from each file, in order
     * @param rates all rates of the table, newest day first
     * @param changed whether the table was written; if not, it already had every rate
     * @param findings everything that a person should know
     */
    record Taken(List<OfFile> files, List<DatedRate> rates, boolean changed, List<Finding> findings)
            implements RatesAnswer {

        public Taken {
            files = List.copyOf(files);
            rates = List.copyOf(rates);
            findings = SameCause.once(findings);
        }
    }

    /** A file or the table has errors, so nothing was written; at least one finding is an error. */
    record BadInput(List<Finding> findings) implements RatesAnswer {

        public BadInput {
            findings = SameCause.once(findings);
        }
    }

    /**
     * Nothing was written because questions are open.
     *
     * @param open how many
     * @param review the workbook in which they are answered
     * @param findings everything that a person should know; the last one says where to answer
     */
    record Waits(int open, Path review, List<Finding> findings) implements RatesAnswer {

        public Waits {
            findings = SameCause.once(findings);
        }
    }

    /** The work was stopped before anything was written. */
    record Stopped(List<Finding> findings) implements RatesAnswer {

        public Stopped {
            findings = SameCause.once(findings);
        }
    }

    /**
     * What was read from a file.
     *
     * @param file as the person named it, or its address
     */
    record OfFile(String file, RatesTable.Taken taken) {}
}
