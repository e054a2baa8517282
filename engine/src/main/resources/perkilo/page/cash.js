/** Cash for a run: what it takes from the bank, what that buys, and what is left of it. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { bar } from './chart.js';
import { figure, minorDigits } from './figures.js';
import { sizeWords, workOf } from './runs.js';

/** The section. */
export function cashPart(run, answer) {
  if (!run || run.cash == null) {
    return nothing;
  }
  const minor = minorDigits(answer.homeCurrency);
  const parts = [
    ['Materials and packaging that the run uses', run.used, 'used'],
    ['Materials and packaging left over, still good', run.stockLeft, 'stockLeft'],
    ['Left over and lost, as it expires or is not credited', run.wasted, 'wasted'],
    ['Work: making, filling, quality control, overhead', workOf(run), 'work'],
    ['One-off costs, paid at once', run.oneOffCosts, 'oneOffCosts'],
  ].filter(([, amount]) => amount == null || Number(amount) !== 0);
  return html`<section aria-labelledby="cash-heading" class="half">
    <h2 id="cash-heading">Cash for ${sizeWords(run)}</h2>
    <p class="sentence">The run takes <strong>${figure(run.cash, minor, 'cash')}</strong> ${answer.homeCurrency} from the bank.
      ${Number(run.stockLeft) > 0 ? html`Of that, <strong>${figure(run.stockLeft, minor, 'stockLeft')}</strong> is material that you still have afterwards.` : nothing}</p>
    <div class="scroll" role="group" aria-label="What the cash buys" tabindex="0"><table class="cash">
      <thead><tr><th scope="col">What it buys</th><th scope="col" class="number">${answer.homeCurrency}</th><th scope="col" class="number">Share</th></tr></thead>
      <tbody>
        ${parts.map(
          ([words, amount, name]) => html`<tr>
            <th scope="row">${words}</th>
            <td class="number">${figure(amount, minor, name)}</td>
            <td class="number share">${amount == null ? '' : html`${bar(Number(amount) / Number(run.cash))}${((100 * Number(amount)) / Number(run.cash)).toFixed(1)} %`}</td>
          </tr>`,
        )}
        <tr class="total"><th scope="row">Cash for the run</th><td class="number">${figure(run.cash, minor)}</td><td></td></tr>
      </tbody>
    </table></div>
  </section>`;
}
