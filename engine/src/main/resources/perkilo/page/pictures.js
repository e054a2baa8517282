/** Small pictures of cells: as in a spreadsheet, with what became of each cell. */
import { html, nothing } from '/lib/lit-html/lit-html.js';

const STATES = {
  read: 'read',
  heading: 'header that was recognised',
  notRead: 'not read',
  question: 'asked about',
};

/** The pictures of a sheet; both a list of pictures and the rows of one are understood. */
export function pictures(sheet, cells) {
  const all = (cells ?? []).some((one) => one.rows) ? cells : cells?.length ? [{ rows: cells }] : [];
  return all.map((one) => picture(sheet, one));
}

function picture(sheet, { about, rows }) {
  const letters = columns(rows);
  const states = [...new Set(rows.flatMap((row) => row.cells.map((cell) => cell.state)))].filter((state) => STATES[state]);
  const name = about ?? `Cells of ${sheet} from row ${rows[0]?.row}`;
  return html`<figure class="picture">
    <div class="scroll" role="group" aria-label=${name} tabindex="0">
      <table>
        <thead>
          <tr><td></td>${letters.map((letter) => html`<th scope="col">${letter}</th>`)}</tr>
        </thead>
        <tbody>${rows.map((row) => html`<tr><th scope="row">${row.row}</th>${letters.map((letter) => cell(row, letter))}</tr>`)}</tbody>
      </table>
    </div>
    <figcaption>
      ${about ? html`${about} ` : nothing}${states.map((state) => html`<span class="key"><span class=${`swatch is-${state}`} aria-hidden="true">${state === 'heading' ? 'Aa' : ''}</span>${STATES[state]}</span> `)}
    </figcaption>
  </figure>`;
}

function cell(row, letter) {
  const one = row.cells.find((candidate) => columnOf(candidate.ref) === letter);
  const state = one?.state ?? 'blank';
  return html`<td class=${`is-${state}`}>${one?.text ?? ''}${STATES[state] && state !== 'read' && one?.text ? html`<span class="sr"> (${STATES[state]})</span>` : nothing}</td>`;
}

function columnOf(ref) {
  return ref.replace(/\d+$/, '');
}

function columns(rows) {
  const letters = new Set(rows.flatMap((row) => row.cells.map((one) => columnOf(one.ref))));
  return [...letters].sort((a, b) => a.length - b.length || (a < b ? -1 : 1));
}
