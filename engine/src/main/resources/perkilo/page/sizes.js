/** Run sizes: the curve with the person's own sizes, and a row for each. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { curve } from './chart.js';
import { figure, minorDigits, percent, rounded } from './figures.js';
import { costOf, runKey, size, unitPlaces } from './runs.js';

/** The points of a product: those that were computed, with the person's own sizes. */
export function points(product, answer, curves) {
  const computed = (curves ?? []).find((one) => one.product === product.name)?.points ?? [];
  const own = product.complete.map((run) => ({ units: run.units, unitCost: costOf(run, answer), own: true }));
  const sizes = new Set(own.map((one) => Number(one.units)));
  return [...own, ...computed.filter((one) => !sizes.has(Number(one.units))).map((one) => ({ ...one, own: false }))];
}

/** The curve of a product as a drawing of some width. */
export function sizeCurve(product, answer, curves, chosen, width, height) {
  return curve(
    `${product.name}: cost of a unit by the size of the run`,
    points(product, answer, curves),
    answer.homeCurrency,
    unitPlaces(answer),
    chosen,
    width,
    height,
  );
}

/** The section. */
export function sizesPart(product, run, answer, curves, choose) {
  const drawn = product.isBulk ? [] : points(product, answer, curves);
  const isDrawn = drawn.length > 1;
  return html`<section aria-labelledby="sizes-heading">
    <h2 id="sizes-heading">Run sizes of ${product.name}</h2>
    ${isDrawn
      ? html`<drawn-chart .draw=${(width) => sizeCurve(product, answer, curves, run?.units, width)}></drawn-chart>
          <p class="caption">Large marks are your own sizes. ${drawn.length > product.complete.length ? 'Small marks were computed too: packs and price breaks make the steps. ' : ''}The scale of sizes is logarithmic.</p>`
      : nothing}
    ${runTable(product, answer, run, choose)}
  </section>`;
}

/** The runs of a product; with `choose`, one of them can be chosen for the details. */
export function runTable(product, answer, chosen, choose) {
  const home = answer.homeCurrency;
  const minor = minorDigits(home);
  const places = unitPlaces(answer);
  const others = Object.keys(product.complete[0]?.unitCost ?? {}).filter((currency) => currency !== home);
  const ladder = (run, name) => figure(run.ladder?.[name] ?? null, name === 'breakEvenUnits' ? 0 : minor, name);
  const hasLadder = product.complete.some((run) => run.ladder);
  return html`<div class="scroll" role="group" aria-label=${`Runs of ${product.name}`} tabindex=${choose ? 0 : nothing}><table class="runs">
    <thead>
      <tr>
        <th scope="col" class="number">${product.isBulk ? 'Batches' : 'Units'}</th>
        <th scope="col" class="number">${product.isBulk ? 'Bulk per kg' : 'Unit cost'}</th>
        ${others.map((currency) => html`<th scope="col" class="number">in ${currency}</th>`)}
        <th scope="col" class="number">Cash for the run</th>
        <th scope="col" class="number">Paid for items</th>
        <th scope="col" class="number">Left in stock</th>
        ${hasLadder
          ? html`<th scope="col" class="number">Shop price</th>
              <th scope="col" class="number">Margin</th>
              <th scope="col" class="number">Profit per run</th>
              <th scope="col" class="number">Break-even, units</th>`
          : nothing}
      </tr>
    </thead>
    <tbody>
      ${product.runs.map((run) =>
        run.complete
          ? html`<tr data-run=${runKey(run)} class=${chosen && runKey(run) === runKey(chosen) ? 'chosen' : nothing}>
              <th scope="row" class="number">${choose ? chooser(run, chosen, choose) : size(run)}</th>
              <td class="number key">${figure(costOf(run, answer), places, 'unitCost')}</td>
              ${others.map((currency) => html`<td class="number">${figure(run.unitCost[currency], places, `unitCost ${currency}`)}</td>`)}
              <td class="number">${figure(run.cash, minor, 'cash')}</td>
              <td class="number">${figure(run.outlay[home], minor, 'outlay')}</td>
              <td class="number">${figure(run.stockLeft, minor, 'stockLeft')}</td>
              ${hasLadder
                ? html`<td class="number">${ladder(run, 'shopPrice')}</td>
                    <td class="number">${percent(run.ladder?.margin, 1, 'margin')}</td>
                    <td class="number">${ladder(run, 'profitPerRun')}</td>
                    <td class="number">${ladder(run, 'breakEvenUnits')}</td>`
                : nothing}
            </tr>`
          : html`<tr data-run=${runKey(run)} class="problem">
              <th scope="row" class="number">${size(run)}</th>
              <td colspan=${4 + others.length + (hasLadder ? 4 : 0)}>Unknown, because of ${run.missing.join(', ')}. Known so far: ${run.knownSoFar?.[home] ? `${rounded(run.knownSoFar[home], minor)} ${home} for the run` : 'nothing'}.</td>
            </tr>`,
      )}
    </tbody>
  </table></div>
  <p class="caption">${hasLadder ? 'Shop price: your target price, else the price that gives your target margin. ' : ''}All amounts in ${home}.</p>`;
}

function chooser(run, chosen, choose) {
  const isChosen = chosen && runKey(run) === runKey(chosen);
  return html`<label class="choose"><input type="radio" name="run" .checked=${Boolean(isChosen)} @change=${() => choose(runKey(run))}>${size(run)}</label>`;
}
