package perkilo.swaps.check;

import java.util.List;
import perkilo.origin.Finding;

/** One thing that a formulator looks at in a formula as it is. */
public interface FormulaCheck {

    /** What is wrong, or worth knowing; nothing if all is well or too little is known. */
    List<Finding> of(Checked formula);
}
