/** Shop price and margin: either can be changed, and the other follows. The cost stays what the engine found. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { asText, figure, minorDigits, percent, rounded, typed } from './figures.js';
import { costOf, runKey, sizeWords, unitPlaces } from './runs.js';

/** The part of a shop price that reaches the maker. */
function reaching(ladder) {
  return ((1 - Number(ladder.retailerMargin)) * (1 - Number(ladder.distributorMargin))) / (1 + Number(ladder.vat));
}

/** Margin, wholesale price and profit of a unit at a shop price. */
export function atPrice(price, cost, ladder) {
  const wholesale = price * reaching(ladder);
  return { price, wholesale, exVat: price / (1 + Number(ladder.vat)), margin: wholesale > 0 ? 1 - cost / wholesale : null, profit: wholesale - cost };
}

/** The same at a margin, which is a fraction below 1. */
export function atMargin(margin, cost, ladder) {
  return atPrice(cost / (1 - margin) / reaching(ladder), cost, ladder);
}

/** The section; `tried` is `{price}` or `{margin}` as typed on the page, or null for the workbook's own. */
export function ladderPart(run, answer, tried, set) {
  if (!run?.ladder || run.ladder.shopPrice == null) {
    return nothing;
  }
  const { ladder } = run;
  const home = answer.homeCurrency;
  const minor = minorDigits(home);
  const cost = Number(costOf(run, answer));
  const own = tried?.run === runKey(run) ? tried : null;
  const now = own?.margin != null ? atMargin(own.margin, cost, ladder) : atPrice(own?.price ?? Number(ladder.shopPrice), cost, ladder);
  const priceText = rounded(asText(now.price), minor).replaceAll(',', '');
  const marginText = now.margin == null ? '' : rounded(asText(now.margin * 100), 1).replace('\u2212', '-');
  const tryPrice = (text) => {
    const price = typed(text);
    set(price > 0 ? { run: runKey(run), price } : null);
  };
  const tryMargin = (text) => {
    const margin = typed(text);
    set(margin !== null && margin < 100 ? { run: runKey(run), margin: margin / 100 } : null);
  };
  const highest = Math.ceil(Number(ladder.shopPrice) * 2);
  return html`<section aria-labelledby="ladder-heading">
    <h2 id="ladder-heading">Shop price and margin at ${sizeWords(run)}</h2>
    <p>Change either one; the other follows. Unit cost ${figure(costOf(run, answer), unitPlaces(answer))} ${home}.</p>
    <div class="ladder-controls">
      <label>Shop price, ${home}
        <input type="text" inputmode="decimal" id="shop-price" .value=${priceText} @change=${(event) => tryPrice(event.target.value)}>
      </label>
      <input type="range" class="slide" aria-label=${`Shop price, ${home}`} min="0" max=${highest} step=${highest > 100 ? 1 : 0.1}
        .value=${priceText} aria-valuetext=${`${priceText} ${home}, margin ${marginText} %`} @input=${(event) => tryPrice(event.target.value)}>
      <label>Your margin, %
        <input type="text" inputmode="decimal" id="margin" .value=${marginText} @change=${(event) => tryMargin(event.target.value)}>
      </label>
      ${own ? html`<button type="button" class="quiet" @click=${() => set(null)}>Back to the workbook's price</button>` : nothing}
    </div>
    <div class="scroll" role="group" aria-label="From the cost to the shop price" tabindex="0"><table class="ladder" aria-live="polite">
      <thead>
        <tr><th scope="col" class="number">Unit cost</th><th scope="col" class="number">Your price (wholesale)</th><th scope="col" class="number">Shop price without VAT</th><th scope="col" class="number">Shop price</th><th scope="col" class="number">Your margin</th><th scope="col" class="number">Profit per unit</th><th scope="col" class="number">Profit per run</th></tr>
      </thead>
      <tbody>
        <tr>
          <td class="number">${figure(costOf(run, answer), unitPlaces(answer))}</td>
          <td class="number">${figure(asText(now.wholesale), minor, 'tried wholesale')}</td>
          <td class="number">${figure(asText(now.exVat), minor)}</td>
          <td class="number key">${figure(asText(now.price), minor, 'tried price')}</td>
          <td class="number key">${percent(asText(now.margin ?? NaN), 1, 'tried margin')}</td>
          <td class="number">${figure(asText(now.profit), unitPlaces(answer))}</td>
          <td class="number">${figure(own ? asText(now.profit * Number(run.units)) : run.ladder.profitPerRun, minor, 'tried profit')}</td>
        </tr>
      </tbody>
    </table></div>
    <p class="caption">The shop keeps ${percent(ladder.retailerMargin)} of its price without VAT${Number(ladder.distributorMargin) ? html`, a distributor ${percent(ladder.distributorMargin)}` : nothing}; VAT is ${percent(ladder.vat)}.
      ${own ? 'This price is tried here only. To keep it, type it as Target retail price on Products.' : nothing}</p>
  </section>`;
}
