/** Target cost, and why the cost changed, where the workbook has what they need. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { difference, figure, listed, minorDigits, minus, rounded } from './figures.js';
import { unitPlaces } from './runs.js';

/** The section about target costs. */
export function targetPart(targets, answer) {
  if (!targets?.length) {
    return nothing;
  }
  const places = unitPlaces(answer);
  return html`<section aria-labelledby="target-heading">
    <h2 id="target-heading">What a unit may cost at your shop price</h2>
    <div class="scroll" role="group" aria-label="Target costs" tabindex="0"><table>
      <thead><tr><th scope="col">Product</th><th scope="col" class="number">Run</th><th scope="col" class="number">Shop price</th><th scope="col" class="number">May cost</th><th scope="col" class="number">Costs</th><th scope="col" class="number">Over (+) or under</th><th scope="col" class="wide">What would bring it there</th></tr></thead>
      <tbody>
        ${targets.map(
          (one) => html`<tr>
            <th scope="row">${one.product}</th>
            <td class="number">${rounded(one.units, 0)}</td>
            <td class="number">${figure(one.targetRetail, minorDigits(answer.homeCurrency))}</td>
            <td class="number">${figure(one.allowedUnitCost, places)}</td>
            <td class="number key">${figure(one.unitCost, places)}</td>
            <td class="number">${difference(one.gap, places)}</td>
            <td class="wide">${moves(one)}</td>
          </tr>`,
        )}
      </tbody>
    </table></div>
    <p class="caption">Swaps among these are candidates for the bench, not releases.</p>
  </section>`;
}

function moves(one) {
  if (Number(one.gap) <= 0) {
    return 'It is there already.';
  }
  const words = (one.moves ?? []).map((move) => move.what);
  return words.length ? `${listed(words)}${one.reached ? '' : ' (not enough alone)'}` : 'Nothing was found that would.';
}

/** The section about the difference to what was really paid. */
export function variancePart(variance, answer) {
  if (!variance?.products?.length) {
    return nothing;
  }
  const places = unitPlaces(answer);
  const parts = Object.keys(variance.products[0].parts).filter((part) => variance.products.some((one) => Number(one.parts[part]) !== 0));
  return html`<section aria-labelledby="variance-heading">
    <h2 id="variance-heading">Why the real cost differs</h2>
    <div class="scroll" role="group" aria-label="Why the real cost differs" tabindex="0"><table>
      <thead><tr><th scope="col">Product</th><th scope="col" class="number">Run</th><th scope="col" class="number">Planned</th>${parts.map((part) => html`<th scope="col" class="number">${part}</th>`)}<th scope="col" class="number">Real</th><th scope="col" class="number">Difference</th></tr></thead>
      <tbody>
        ${variance.products.map(
          (one) => html`<tr>
            <th scope="row">${one.product ?? one.formula}</th>
            <td class="number">${one.units == null ? '' : rounded(one.units, 0)}</td>
            <td class="number">${figure(one.before, places)}</td>
            ${parts.map((part) => html`<td class="number">${difference(one.parts[part], places)}</td>`)}
            <td class="number key">${figure(one.after, places)}</td>
            <td class="number">${difference(minus(one.after, one.before), places)}</td>
          </tr>`,
        )}
      </tbody>
    </table></div>
    ${variance.notCompared?.length ? html`<p class="caption">Not compared: ${listed(variance.notCompared)}.</p>` : nothing}
  </section>`;
}
