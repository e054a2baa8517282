package perkilo.report.portfolio;

/**
 * A run of a book.
 *
 * @param book of the run
 * @param run its figures
 */
record RunLine(PortfolioBook book, PortfolioRun run) {}
