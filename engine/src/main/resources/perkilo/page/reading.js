/** Reading: what was read of a workbook, what was not and why, and the questions about it. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { counted, listed, rounded } from './figures.js';
import { longTable } from './longtable.js';
import { findingsTable, tally } from './messages.js';
import { pictures } from './pictures.js';
import { corrections, questionList } from './questions.js';
import { address } from './route.js';

const FATES = { read: 'Read', 'not needed': 'Not needed', 'not understood': 'Not understood' };

/** The view. */
export function readingView(state, actions) {
  const { book, reading } = state;
  if (!reading) {
    return html`<h1>Reading ${book}</h1>`;
  }
  const questions = reading.questions ?? [];
  const findings = notAsked(reading);
  const asked = questions.filter((one) => (one.answer ?? null) === null);
  return html`
    <h1>What was read of ${book}</h1>
    <p class="lead">${summary(reading)}</p>
    <p class="actions">
      <a class="button" href=${address('cost', book)}>Go on to the cost</a>
      <button type="button" class="quiet" @click=${actions.readAgain}>Read it again</button>
    </p>
    ${questions.length
      ? html`<section aria-labelledby="questions-heading" class="questions">
          <h2 id="questions-heading">${asked.length ? `${counted(asked.length, 'question')} about your sheets` : 'Your answers'}</h2>
          <p>Each is asked once. The answers are kept on the sheet Reading of your workbook.</p>
          ${questionList(questions, state.given, actions)}
        </section>`
      : nothing}
    ${findings.length
      ? html`<section aria-labelledby="findings-heading">
          <h2 id="findings-heading">What needs a look</h2>
          <p>${listed(tally(findings))}. Each names its cell and what to do.</p>
          ${findingsTable(findings, 'What needs a look')}
        </section>`
      : nothing}
    <section aria-labelledby="sheets-heading">
      <h2 id="sheets-heading">Sheet by sheet</h2>
      ${bySheet(reading).map(sheetPart)} ${reading.more?.length ? corrections(reading.more, state.given, actions) : nothing}
    </section>`;
}

/** What was found, without what is asked as a question above it. */
function notAsked(reading) {
  const questions = reading.questions ?? [];
  const isSame = (one, asked) => one.text.startsWith(asked.text) || (one.level === 'error' && one.where === asked.where);
  return (reading.findings ?? []).filter((one) => !questions.some((asked) => isSame(one, asked)));
}

function summary(reading) {
  const account = reading.account ?? [];
  const count = (fate) => account.filter((one) => one.fate === fate).length;
  const parts = [`${counted(count('read'), 'table')} read`];
  if (count('not needed')) {
    parts.push(`${count('not needed')} not needed`);
  }
  if (count('not understood')) {
    parts.push(`${count('not understood')} not understood`);
  }
  const lost = notAsked(reading).filter((one) => one.level === 'error').length;
  const open = (reading.questions ?? []).filter((one) => (one.answer ?? null) === null).length;
  const next = open
    ? `${counted(open, 'question')} first: what is read depends on the ${open === 1 ? 'answer' : 'answers'}.`
    : lost
      ? `${counted(lost, 'error')} must be corrected in the workbook; all else is costed without what depends on ${lost === 1 ? 'it' : 'them'}.`
      : 'Nothing has to be corrected.';
  return `${listed(parts)}. ${next}`;
}

/** The account and the pictures by sheet, in the order of the account. */
function bySheet(reading) {
  const groups = new Map();
  for (const entry of reading.account ?? []) {
    const key = `${entry.file ?? ''}\u0000${entry.sheet ?? ''}`;
    if (!groups.has(key)) {
      groups.set(key, { file: entry.file, sheet: entry.sheet, tables: [], cells: [] });
    }
    groups.get(key).tables.push(entry);
  }
  for (const sheet of reading.sheets ?? []) {
    const group = [...groups.values()].find((one) => one.sheet === sheet.sheet);
    if (group) {
      group.cells = sheet.cells ?? [];
    } else {
      groups.set(sheet.sheet, { sheet: sheet.sheet, tables: [], cells: sheet.cells ?? [] });
    }
  }
  const weight = (group) => (group.tables.some((one) => one.fate === 'not understood') ? 0 : group.tables.some((one) => one.fate === 'read') ? 1 : 2);
  return [...groups.values()].sort((a, b) => weight(a) - weight(b));
}

function sheetPart(group) {
  const unclear = group.tables.some((table) => table.fate === 'not understood');
  const isRead = group.tables.some((table) => table.fate === 'read');
  return html`<details class="sheet" data-sheet=${group.sheet ?? ''} ?open=${unclear || isAsked(group.cells)}>
    <summary>
      <span class="tab">${group.sheet ?? group.file}</span>
      <span class=${unclear ? 'fate unclear' : 'fate'}>${unclear ? 'Not understood' : isRead ? readAs(group.tables) : 'Not needed'}</span>
    </summary>
    ${pictures(group.sheet, group.cells)} ${group.tables.map(tablePart)}
  </details>`;
}

function isAsked(cells) {
  return cells.flatMap((one) => one.rows ?? [one]).some((row) => row.cells.some((cell) => cell.state === 'question'));
}

function readAs(tables) {
  return listed(tables.filter((one) => one.fate === 'read').map((one) => `${one.as ?? 'table'}, ${counted(Number(one.rows), 'row')}`));
}

function tablePart(table) {
  const parts = table.parts ?? [];
  return html`
    <p><strong>${table.table ?? table.sheet ?? table.file}</strong>: ${(FATES[table.fate] ?? table.fate).toLowerCase()}${table.as ? ` as ${table.as}` : ''}${table.rows > 0 ? `, ${counted(Number(table.rows), 'row')}` : ''}. ${table.why ?? ''}</p>
    ${parts.length
      ? longTable({
          label: `Columns and lines of ${table.table ?? table.sheet}`,
          columns: 6,
          head: html`<th scope="col">Where</th><th scope="col">What</th><th scope="col">In your file</th><th scope="col">Became</th><th scope="col" class="number">Rows</th><th scope="col" class="wide">Why, or what to do</th>`,
          rows: parts,
          row: (one) => html`<td class="where">${one.where}</td><td>${one.what}</td><td>${one.text}</td>
            <td class=${one.fate === 'not understood' ? 'unclear' : nothing}>${one.as ? `read as ${one.as}` : one.fate}</td>
            <td class="number">${one.rows > 0 ? rounded(String(one.rows), 0) : ''}</td><td class="wide">${one.why ?? ''}</td>`,
        })
      : nothing}`;
}
