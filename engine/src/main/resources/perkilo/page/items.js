/** What costs most: the items of a run by what they cost per unit, and what is bought of each. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { bar } from './chart.js';
import { figure, minorDigits, rounded, sum } from './figures.js';
import { longTable } from './longtable.js';
import { itemsByCost, purchaseWords, sizeWords, unitPlaces } from './runs.js';

/** The section; `change` begins a what-if about an item. */
export function itemsPart(product, run, answer, controls, change) {
  if (!run) {
    return nothing;
  }
  const rows = itemsByCost(run, answer);
  const most = Math.max(...rows.map((one) => Number(one.percent ?? 0)), 1);
  const places = Math.max(4, unitPlaces(answer));
  const minor = minorDigits(answer.homeCurrency);
  const known = new Set((controls ?? []).map((one) => one.what));
  return html`<section aria-labelledby="items-heading">
    <h2 id="items-heading">What costs most at ${sizeWords(run)}</h2>
    ${longTable({
      label: `Items of ${product.name} at ${sizeWords(run)}, by cost`,
      columns: 7,
      head: html`<th scope="col">Item or work</th>
        <th scope="col" class="number">${answer.homeCurrency} ${product.isBulk ? 'per kg' : 'per unit'}</th>
        <th scope="col" class="number">Share</th>
        <th scope="col" class="number">Needed</th>
        <th scope="col">Bought</th>
        <th scope="col" class="number">Paid</th>
        <th scope="col" class="number">Left over</th>`,
      rows,
      row: (one) => html`
        <th scope="row">${one.item}${known.has(one.item) ? html` <button type="button" class="small" @click=${() => change(one.item)} aria-label=${`What if the price of ${one.item} changes?`}>what if</button>` : nothing}</th>
        <td class="number key">${figure(one.per, places, 'perUnit')}</td>
        <td class="number share">${bar(Number(one.percent) / most)}${figure(one.percent, 1)} %</td>
        <td class="number">${one.bought ? html`${figure(one.bought.needed, one.bought.unit === 'each' ? 0 : 3)} ${one.bought.unit}` : ''}</td>
        <td class="bought">${one.bought ? bought(one.bought) : ''}</td>
        <td class="number">${one.bought?.purchases?.length ? figure(paid(one.bought), minor) : ''}</td>
        <td class="number">${one.bought ? html`${figure(one.bought.leftover, one.bought.unit === 'each' ? 0 : 3)} ${one.bought.unit}` : ''}</td>`,
    })}
    <p class="caption">Paid: the price of the goods, without freight and duty. ${proof(run, answer)}</p>
  </section>`;
}

function bought(item) {
  return item.purchases?.length ? item.purchases.map((one) => html`<span class="line">${purchaseWords(one)}</span>`) : 'not bought';
}

/** Goods in one currency only; unknown across currencies. */
function paid(item) {
  const currencies = new Set(item.purchases.map((one) => one.currency));
  return currencies.size === 1 ? sum(...item.purchases.map((one) => one.goods)) : null;
}

function proof(run, answer) {
  const { plan } = run;
  const gap = Number(plan.objective) - Number(plan.bound);
  return plan.proven
    ? 'Proven: no other choice of packs and suppliers is cheaper.'
    : `Not proven to be the cheapest; no choice can be cheaper by more than ${rounded(String(gap.toFixed(6)), 2)} ${answer.homeCurrency}.`;
}
