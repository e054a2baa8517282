package perkilo.origin;

import java.util.List;

/**
 * A value that was read, together with all findings.
 *
 * @param value the value that could be read; what depends on an error is not part of it
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

    /** Whether a finding is an error, so that something is not part of the value. */
    public boolean hasErrors() {
        return findings.stream().anyMatch(Finding::isError);
    }
}
