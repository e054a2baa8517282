package perkilo.origin;

import java.util.List;

/**
 * A value that was read, together with all findings.
 *
 * @param value the value that could be read; incomplete if a finding is an error
 * @param findings in the order of the file
 */
public record Reading<T>(T value, List<Finding> findings) {

    public Reading {
        findings = List.copyOf(findings);
    }

    /** Whether a finding is an error, so that the value cannot be used. */
    public boolean hasErrors() {
        return findings.stream().anyMatch(Finding::isError);
    }
}
