package perkilo.origin;

import java.util.List;

/**
 * A value that was read, together with all findings.
 *
 * @param value the value that could be read; incomplete if a finding is an error
 * @param findings in the order of the file
 * @param account what became of everything in the files
 */
public record Reading<T>(T value, List<Finding> findings, Account account) {

    public Reading {
        findings = List.copyOf(findings);
    }

    /** A value without an account. */
    public Reading(T value, List<Finding> findings) {
        this(value, findings, Account.NONE);
    }

    /** Whether a finding is an error, so that the value cannot be used. */
    public boolean hasErrors() {
        return findings.stream().anyMatch(Finding::isError);
    }
}
