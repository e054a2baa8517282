/** Cost: the answer of a workbook, and what it depends on. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { cashPart } from './cash.js';
import { targetPart, variancePart } from './decide.js';
import { day, listed } from './figures.js';
import { headsPart } from './heads.js';
import { itemsPart } from './items.js';
import { ladderPart } from './ladder.js';
import { findingsTable, tally } from './messages.js';
import { address } from './route.js';
import { products, runKey } from './runs.js';
import { sentences } from './sentence.js';
import { sizesPart } from './sizes.js';
import { whatIfPart } from './whatif.js';

/** The product and the run in view. */
export function inView(state) {
  const all = products(state.cost.answer);
  const product = all.find((one) => one.key === state.product) ?? all.find((one) => one.complete.length) ?? all[0] ?? null;
  const run = product?.complete.find((one) => runKey(one) === state.run) ?? product?.complete[0] ?? null;
  return { all, product, run };
}

/** The view. */
export function costView(state, actions) {
  const { book, cost } = state;
  if (!cost) {
    return html`<h1>Cost of ${book}</h1>`;
  }
  const { answer } = cost;
  const { all, product, run } = inView(state);
  return html`
    <h1>What it costs</h1>
    <p class="lead">${book}${answer.costingDate ? `, prices and rates of ${day(answer.costingDate)}, amounts in ${answer.homeCurrency}` : ''}.</p>
    ${toolbar(state, actions, all.length > 0)}
    ${product ? html`<section aria-labelledby="answer-heading" class="answer">
          <h2 id="answer-heading">The answer</h2>
          ${sentences(all, product, answer, actions.chooseProduct)}
        </section>
        <div class="sections">
          ${sizesPart(product, run, answer, cost.curve, actions.chooseRun)} ${headsPart(product, answer)}
          ${cashPart(run, answer)} ${itemsPart(product, run, answer, cost.controls, actions.whatIf)}
          ${ladderPart(run, answer, state.price, actions.tryPrice)} ${whatIfPart(state, product, run, actions)}
          ${targetPart(cost.targets, answer)} ${variancePart(cost.variance, answer)}
        </div>`
      : html`<p class="sentence problem">Nothing can be costed yet. Correct what is named below in the workbook, then read it again.</p>`}
    ${needsALook(answer.messages ?? [])}`;
}

function toolbar(state, actions, isCosted) {
  const { book, saved } = state;
  return html`<div class="actions">
      ${isCosted
        ? html`<button type="button" @click=${actions.save}>Save the result workbook</button>
            <button type="button" class="quiet" @click=${() => window.print()}>Print, a page per product</button>
            <button type="button" class="quiet" @click=${() => actions.whatIf(state.trial.what)}>What if</button>`
        : nothing}
      <button type="button" class="quiet" @click=${actions.costAgain}>Read the workbook again</button>
      <a class="button quiet" href=${address('reading', book)}>What was read</a>
    </div>
    ${saved
      ? html`<p class="saved">Written: <strong>${saved.written}</strong>${saved.place ? html` in <span class="path">${saved.place}</span>` : nothing}. <a href=${`/api/files/${encodeURIComponent(saved.written)}`} download=${saved.written}>Download a copy</a>${saved.backup ? html`. The earlier one is kept as ${saved.backup}` : nothing}.</p>`
      : nothing}`;
}

function needsALook(messages) {
  return messages.length === 0
    ? nothing
    : html`<section aria-labelledby="messages-heading">
        <h2 id="messages-heading">What needs a look</h2>
        <p>${listed(tally(messages))}.</p>
        ${findingsTable(messages, 'What needs a look')}
      </section>`;
}
