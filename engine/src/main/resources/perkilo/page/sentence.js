/** The answer for each product, in a sentence. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { figure, listed, rounded } from './figures.js';
import { costOf, size, unitPlaces } from './runs.js';

/** The sentences of all products; the one in view is marked, and each can be chosen. */
export function sentences(all, chosen, answer, choose) {
  return html`<ul class="sentences">
    ${all.map(
      (product) => html`<li class=${product.key === chosen?.key ? 'chosen' : nothing}>
        <p class="sentence">${sentence(product, answer)}</p>
        ${all.length > 1
          ? html`<button type="button" class="quiet" aria-pressed=${product.key === chosen?.key} @click=${() => choose(product.key)}
              aria-label=${`Details of ${product.name}`}>Details</button>`
          : nothing}
      </li>`,
    )}
  </ul>`;
}

/** One product's sentence, with its name unless that is a heading above. */
export function sentence(product, answer, isNamed = true) {
  const { complete, runs, name, isBulk } = product;
  const places = unitPlaces(answer);
  const lacking = runs.filter((run) => !run.complete);
  const costs = complete.map(
    (run, at) => html`${at === 0 ? '' : at === complete.length - 1 ? ' and ' : ', '}<strong>${figure(costOf(run, answer), places, 'cost')}</strong>${at === 0 ? html` ${answer.homeCurrency}` : nothing} at ${size(run)}`,
  );
  return html`${isNamed ? html`<b class="name">${name}.</b> ` : nothing}${complete.length ? html`${isBulk ? 'A kilogram' : 'A unit'} costs ${costs}.` : nothing}
    ${lacking.length ? html`<span class="problem">${lacks(lacking)}</span>` : nothing}`;
}

function lacks(runs) {
  const missing = [...new Set(runs.flatMap((run) => run.missing))];
  const named = missing.length > 4 ? [...missing.slice(0, 4), `${missing.length - 4} more`] : missing;
  const sizes = runs.some((run) => run.units == null && run.batchKg == null) ? '' : ` at ${listed(runs.map(size))}`;
  return `The cost${sizes} is unknown, because of ${listed(named)}: see what needs a look.`;
}

/** The same as plain text, for who listens. */
export function spoken(product, answer) {
  const costs = product.complete.map((run) => `${rounded(costOf(run, answer), unitPlaces(answer))} at ${size(run)}`);
  return costs.length ? `${product.name}: ${listed(costs)} ${answer.homeCurrency}.` : `${product.name}: unknown.`;
}
