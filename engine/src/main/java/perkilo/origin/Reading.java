package perkilo.origin;

import java.util.List;

/**
 * What was read, together with everything that was found on the way.
 *
 * @param value what could be read; incomplete where a finding is an error
 * @param findings in the order of the file
 */
public record Reading<T>(T value, List<Finding> findings) {

    public Reading {
        findings = List.copyOf(findings);
    }

    /** Whether anything was found that keeps the value from being used. */
    public boolean hasErrors() {
        return findings.stream().anyMatch(Finding::isError);
    }
}
