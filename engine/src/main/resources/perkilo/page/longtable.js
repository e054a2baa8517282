/**
 * A table of any length. Only the rows in sight are in the document, so that 5,000 rows scroll as well as 50. Short
 * tables are shown whole. Properties: `label`, `head` (a template of the heading cells), `columns` (their number),
 * `rows`, and `row` (a template of the cells of one row).
 */
import { html, nothing, render } from '/lib/lit-html/lit-html.js';

const ALL_SHOWN = 120;
const BEYOND = 12;

class LongTable extends HTMLElement {
  #spec = null;
  #height = 36;
  #from = 0;
  #queued = false;

  /** All properties at once. */
  set spec(spec) {
    this.#spec = spec;
    this.#show();
  }

  #show = () => {
    this.#queued = false;
    const { label, head, rows, row, columns } = this.#spec;
    const isLong = rows.length > ALL_SHOWN;
    const seen = isLong ? Math.ceil((this.firstElementChild?.clientHeight || 480) / this.#height) + 2 * BEYOND : rows.length;
    const top = this.firstElementChild?.scrollTop ?? 0;
    this.#from = isLong ? Math.max(0, Math.min(Math.floor(top / this.#height) - BEYOND, rows.length - seen)) : 0;
    const shown = rows.slice(this.#from, this.#from + seen);
    render(
      html`<div class=${isLong ? 'scroll long' : 'scroll'} role="group" aria-label=${label} tabindex="0" @scroll=${this.#scrolled}>
        <table aria-rowcount=${isLong ? rows.length + 1 : nothing}>
          <thead><tr>${head}</tr></thead>
          <tbody>
            ${this.#gap(this.#from, columns)}
            ${shown.map((one, at) => html`<tr class="row" aria-rowindex=${isLong ? this.#from + at + 2 : nothing}>${row(one, this.#from + at)}</tr>`)}
            ${this.#gap(rows.length - this.#from - shown.length, columns)}
          </tbody>
        </table>
      </div>`,
      this,
    );
    const measured = isLong && this.querySelector('tr.row')?.offsetHeight;
    if (measured && Math.abs(measured - this.#height) > 1) {
      this.#height = measured;
      this.#show();
    }
  };

  #gap(rows, columns) {
    return rows > 0
      ? html`<tr aria-hidden="true"><td class="gap" colspan=${columns} .style=${`height:${rows * this.#height}px`}></td></tr>`
      : nothing;
  }

  #scrolled = () => {
    if (!this.#queued && this.#spec.rows.length > ALL_SHOWN) {
      this.#queued = true;
      requestAnimationFrame(this.#show);
    }
  };
}
customElements.define('long-table', LongTable);

/** The table as a template. */
export function longTable(spec) {
  return html`<long-table .spec=${spec}></long-table>`;
}
