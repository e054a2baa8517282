/** The printed summary: one A4 page for each product. It is in the document, but shown on paper only. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { day, figure, minorDigits } from './figures.js';
import { headBars, headTable } from './heads.js';
import { itemsByCost, sizeWords, unitPlaces } from './runs.js';
import { sentence } from './sentence.js';
import { points, runTable, sizeCurve } from './sizes.js';

const RUNS = 6;
const ITEMS = 5;
const FINDINGS = 4;
const WIDTH = 640;

/** All pages. */
export function printedPages(book, products, answer, curves) {
  return products.map((one) => page(book, shortened(one), answer, curves));
}

/** At most six runs have room on a page. */
function shortened(product) {
  return { ...product, runs: product.runs.slice(0, RUNS), complete: product.complete.slice(0, RUNS), beyond: product.runs.length - RUNS };
}

function page(book, product, answer, curves) {
  const smallest = product.complete[0];
  return html`<article class="sheet-of-paper" data-product=${product.name}>
    <header><span>${book}</span><span>Prices and rates of ${day(answer.costingDate)}, ${answer.homeCurrency}</span></header>
    <h1>${product.name}</h1>
    <p class="sentence">${sentence(product, answer, false)}</p>
    ${runTable(product, answer, null, null)} ${product.beyond > 0 ? html`<p class="caption">${product.beyond} more sizes are in the workbook.</p>` : nothing}
    ${smallest
      ? html`<div class="columns">
            <div>${product.isBulk || points(product, answer, curves).length < 2 ? nothing : sizeCurve(product, answer, curves, null, WIDTH / 2, 190)}</div>
            <div>${headBars(product, answer, WIDTH / 2)}</div>
          </div>
          <div class="columns">${headTable(product, answer)} ${mostCostly(product, smallest, answer)}</div>`
      : nothing}
    ${looks(answer)}
    <footer>A cost is not a release: a qualified person must assess the formula, its preservation and its safety.</footer>
  </article>`;
}

function mostCostly(product, run, answer) {
  const items = itemsByCost(run, answer).slice(0, ITEMS);
  return html`<table>
    <thead><tr><th scope="col">Costs most at ${sizeWords(run)}</th><th scope="col" class="number">${answer.homeCurrency} ${product.isBulk ? 'per kg' : 'per unit'}</th><th scope="col" class="number">Share</th></tr></thead>
    <tbody>
      ${items.map((one) => html`<tr><th scope="row">${one.item}</th><td class="number">${figure(one.per, Math.max(4, unitPlaces(answer)))}</td><td class="number">${figure(one.percent, 1)} %</td></tr>`)}
      <tr class="total"><th scope="row">Cash for ${sizeWords(run)}</th><td class="number">${figure(run.cash, minorDigits(answer.homeCurrency))}</td><td></td></tr>
    </tbody>
  </table>`;
}

function looks(answer) {
  const serious = (answer.messages ?? []).filter((one) => one.level !== 'note');
  return serious.length === 0
    ? nothing
    : html`<h2>What needs a look</h2>
        <ul>${serious.slice(0, FINDINGS).map((one) => html`<li><strong>${one.where}</strong> ${one.text}</li>`)}</ul>
        ${serious.length > FINDINGS ? html`<p class="caption">${serious.length - FINDINGS} more on the page and on the sheet Messages.</p>` : nothing}`;
}
