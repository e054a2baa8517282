package perkilo.report.portfolio;

/**
 * A run of a book.
 *
 * @param book whose run it is
 * @param run its figures
 */
record RunLine(PortfolioBook book, PortfolioRun run) {}
