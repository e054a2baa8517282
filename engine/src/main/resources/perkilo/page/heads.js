/** What a unit costs, by head. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { letter, stacked } from './chart.js';
import { asText, figure, rounded } from './figures.js';
import { costOf, perUnit, runKey, size, unitPlaces } from './runs.js';

/** The heads that any of the runs has. */
export function headsOf(runs) {
  const all = [...new Set(runs.flatMap((run) => Object.keys(run.heads)))];
  return all.filter((head) => runs.some((run) => Number(run.heads[head] ?? 0) !== 0));
}

/** The bars of the runs as a drawing of some width. */
export function headBars(product, answer, width) {
  const heads = headsOf(product.complete);
  const bars = product.complete.map((run) => ({
    label: `${size(run)}${product.isBulk ? '' : ' units'}`,
    total: `${rounded(costOf(run, answer), unitPlaces(answer))} ${answer.homeCurrency}`,
    parts: heads.map((head) => perUnit(run.heads[head] ?? '0', run)),
  }));
  return stacked(`${product.name}: cost ${product.isBulk ? 'per kilogram' : 'of a unit'} by head, a bar for each run`, bars, width);
}

/** The section. */
export function headsPart(product, answer) {
  return product.complete.length === 0
    ? nothing
    : html`<section aria-labelledby="heads-heading" class="half">
        <h2 id="heads-heading">What ${product.isBulk ? 'a kilogram' : 'a unit'} costs, by head</h2>
        <drawn-chart .draw=${(width) => headBars(product, answer, width)}></drawn-chart>
        ${headTable(product, answer)}
      </section>`;
}

/** A row for each head, a column for each run. */
export function headTable(product, answer) {
  const heads = headsOf(product.complete);
  const places = Math.max(unitPlaces(answer), 2);
  return html`<div class="scroll" role="group" aria-label=${`Heads of ${product.name}`} tabindex="0"><table class="heads">
    <thead>
      <tr><th scope="col">${answer.homeCurrency} ${product.isBulk ? 'per kg' : 'per unit'}</th>${product.complete.map((run) => html`<th scope="col" class="number">${size(run)}</th>`)}</tr>
    </thead>
    <tbody>
      ${heads.map(
        (head, at) => html`<tr data-head=${head}>
          <th scope="row"><span class="swatch part-${at % 10} on-${at % 10}" aria-hidden="true">${letter(at)}</span>${head}</th>
          ${product.complete.map((run) => html`<td class="number" data-run=${runKey(run)}>${figure(asText(perUnit(run.heads[head] ?? '0', run)), places)}</td>`)}
        </tr>`,
      )}
      <tr class="total">
        <th scope="row">${product.isBulk ? 'Bulk per kg' : 'Unit cost'}</th>
        ${product.complete.map((run) => html`<td class="number" data-run=${runKey(run)}>${figure(costOf(run, answer), places)}</td>`)}
      </tr>
    </tbody>
  </table></div>`;
}
