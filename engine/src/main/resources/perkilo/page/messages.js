/** What was found in the files, with its place. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { counted } from './figures.js';
import { longTable } from './longtable.js';

const LEVELS = { error: 'Error', warning: 'Warning', note: 'Note' };
const ORDER = ['error', 'warning', 'note'];

/** "1 error, 2 warnings and 3 notes" as a list of parts; empty if there is nothing. */
export function tally(findings) {
  return ORDER.map((level) => [level, findings.filter((one) => one.level === level).length])
    .filter(([, count]) => count > 0)
    .map(([level, count]) => counted(count, level));
}

/** The findings as a table, errors first. */
export function findingsTable(findings, label) {
  const sorted = ORDER.flatMap((level) => findings.filter((one) => one.level === level));
  return sorted.length === 0
    ? nothing
    : html`<div class="findings">${longTable({
        label,
        columns: 3,
        head: html`<th scope="col">Level</th><th scope="col">Where</th><th scope="col" class="wide">What, and what to do</th>`,
        rows: sorted,
        row: (one) => html`<td class=${`level ${one.level}`}>${LEVELS[one.level] ?? one.level}</td><td class="where">${one.where}</td><td class="wide">${one.text}</td>`,
      })}</div>`;
}
