/** What-ifs: changes that the engine plans anew, side by side with today. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { asText, difference, figure, minus, rounded } from './figures.js';
import { headsOf } from './heads.js';
import { costOf, perUnit, products, runKey, size, sizeWords, subject, unitPlaces } from './runs.js';

const IN_SIGHT = 40;

/** The section. `trial` is what is tried now; `kept` are the what-ifs with a name. */
export function whatIfPart(state, product, run, actions) {
  const { cost, trial, kept } = state;
  return html`<section aria-labelledby="whatif-heading" class="whatif" id="whatif">
    <h2 id="whatif-heading">What if</h2>
    <p>Change a price, a rate, the wage, a loss or the run size. Everything is planned anew; your workbook stays as it is.</p>
    ${changeForm(cost.controls ?? [], trial, actions)} ${changeList(trial, actions)}
    ${trial.error ? html`<p class="problem" role="alert">${trial.error}</p>` : nothing}
    ${trial.answer ? outcome(product, run, cost.answer, trial.answer) : nothing}
    ${trial.answer ? keepForm(actions) : nothing}
    ${kept.length ? sideBySide(cost.answer, kept, actions) : nothing}
  </section>`;
}

function changeForm(controls, trial, actions) {
  const found = matching(controls, trial.what);
  const one = controls.find((control) => control.what === trial.what);
  const submit = (event) => {
    event.preventDefault();
    const form = new FormData(event.target);
    actions.addChange(form.get('what').trim(), form.get('change').trim());
  };
  const step = (by) => {
    const field = document.getElementById('change');
    const now = /^([+\-\u2212]?)\s*(\d+(?:[.,]\d+)?)\s*%$/.exec(field.value.trim());
    const value = (now ? (now[1] === '' || now[1] === '+' ? 1 : -1) * Number(now[2].replace(',', '.')) : 0) + by;
    actions.addChange(document.getElementById('what').value.trim(), `${value < 0 ? '-' : '+'}${Math.abs(value)} %`);
  };
  return html`<form class="change" @submit=${submit}>
    <label class="what">What changes
      <input type="text" name="what" id="what" list="controls" autocomplete="off" required .value=${trial.what} @input=${(event) => actions.typeWhat(event.target.value)}>
    </label>
    <datalist id="controls">${found.map((control) => html`<option value=${control.what}>${control.label}${control.value ? `, ${control.value} ${control.unit ?? ''}` : ''}</option>`)}</datalist>
    <label>To, or by how much
      <input type="text" name="change" id="change" required autocomplete="off" .value=${trial.change} aria-describedby="change-hint">
    </label>
    <span class="steps">
      <button type="button" class="quiet" @click=${() => step(-5)} aria-label="5 % less">−5 %</button>
      <button type="button" class="quiet" @click=${() => step(5)} aria-label="5 % more">+5 %</button>
    </span>
    <button type="submit">Plan anew</button>
    <p id="change-hint" class="caption">
      ${one ? html`Now ${one.label ?? one.what}: ${one.value ? html`<data value=${one.value}>${rounded(one.value, Math.min(4, Math.max(2, one.value.split('.')[1]?.length ?? 0)))}</data> ${one.unit}` : one.unit}. ` : nothing}
      ${one && !one.byPercent ? 'Type a new value, or a change such as +10 %.' : 'Type a change, such as +10 % or -5 %.'}
    </p>
  </form>`;
}

function matching(controls, text) {
  const key = text.toLowerCase();
  return controls.filter((one) => `${one.what} ${one.label ?? ''}`.toLowerCase().includes(key)).slice(0, IN_SIGHT);
}

function changeList(trial, actions) {
  return trial.changes.length === 0
    ? nothing
    : html`<ul class="changes" aria-label="Changes that are tried">
        ${trial.changes.map(
          (one, at) => html`<li>
            <span>${one.what} <strong>${one.change}</strong></span>
            <button type="button" class="small" @click=${() => actions.dropChange(at)} aria-label=${`Take back ${one.what} ${one.change}`}>take back</button>
          </li>`,
        )}
        <li><button type="button" class="quiet" @click=${actions.dropTrial}>Take all back</button></li>
      </ul>`;
}

/** The run of the other answer that belongs to a run: the same size, or else the same place among its product's runs. */
function partner(run, before, after) {
  const same = after.runs.find((one) => runKey(one) === runKey(run));
  if (same) {
    return same;
  }
  const at = before.runs.filter((one) => subject(one) === subject(run)).indexOf(run);
  return after.runs.filter((one) => subject(one) === subject(run))[at] ?? null;
}

function outcome(product, run, before, after) {
  const places = Math.max(unitPlaces(before), unitPlaces(after));
  const home = before.homeCurrency;
  const other = run && partner(run, before, after);
  return html`<div class="pair outcome">
    <div class="scroll" role="group" aria-label="Before and after" tabindex="0"><table class="before-after">
      <caption>Unit cost before and after, ${home}</caption>
      <thead><tr><th scope="col">Product</th><th scope="col" class="number">Run</th><th scope="col" class="number">Before</th><th scope="col" class="number">After</th><th scope="col" class="number">Difference</th></tr></thead>
      <tbody>
        ${products(before).flatMap((one) =>
          one.runs.map((each) => {
            const changed = partner(each, before, after);
            const [from, to] = [costOf(each, before), changed && costOf(changed, after)];
            const isResized = changed && runKey(changed) !== runKey(each);
            return html`<tr data-run=${runKey(each)}>
              <th scope="row">${one.name}</th>
              <td class="number">${size(each)}${isResized ? ` → ${size(changed)}` : ''}</td>
              <td class="number">${figure(from, places)}</td>
              <td class="number key">${figure(to, places, 'after')}</td>
              <td class="number">${difference(minus(to, from), places)}</td>
            </tr>`;
          }),
        )}
      </tbody>
    </table></div>
    ${run?.complete && other?.complete ? byHead(product, run, other, before, after, places) : nothing}
  </div>`;
}

function byHead(product, run, other, before, after, places) {
  const heads = headsOf([run, other]);
  const of = (one, head) => asText(perUnit(one.heads[head] ?? '0', one));
  return html`<div class="scroll" role="group" aria-label="Difference by head" tabindex="0"><table class="by-head">
    <caption>${product.name} at ${sizeWords(run)}, by head, ${before.homeCurrency} ${product.isBulk ? 'per kg' : 'per unit'}</caption>
    <thead><tr><th scope="col">Head</th><th scope="col" class="number">Before</th><th scope="col" class="number">After</th><th scope="col" class="number">Difference</th></tr></thead>
    <tbody>
      ${heads.map(
        (head) => html`<tr>
          <th scope="row">${head}</th>
          <td class="number">${figure(of(run, head), places)}</td>
          <td class="number">${figure(of(other, head), places)}</td>
          <td class="number">${difference(minus(of(other, head), of(run, head)), places)}</td>
        </tr>`,
      )}
      <tr class="total">
        <th scope="row">${product.isBulk ? 'Bulk per kg' : 'Unit cost'}</th>
        <td class="number">${figure(costOf(run, before), places)}</td>
        <td class="number">${figure(costOf(other, after), places)}</td>
        <td class="number">${difference(minus(costOf(other, after), costOf(run, before)), places)}</td>
      </tr>
    </tbody>
  </table></div>`;
}

function keepForm(actions) {
  const submit = (event) => {
    event.preventDefault();
    const field = event.target.elements.name;
    if (field.value.trim()) {
      actions.keep(field.value.trim());
      field.value = '';
    }
  };
  return html`<form class="keep" @submit=${submit}>
    <label>Name of this what-if <input type="text" name="name" id="whatif-name" required maxlength="60" autocomplete="off"></label>
    <button type="submit">Keep it beside the others</button>
  </form>`;
}

/** Today and the what-ifs that have a name, a column each. */
function sideBySide(today, kept, actions) {
  const places = Math.max(unitPlaces(today), ...kept.filter((one) => one.answer).map((one) => unitPlaces(one.answer)));
  return html`<h3>Side by side</h3>
    <div class="scroll" role="group" aria-label="What-ifs side by side" tabindex="0"><table class="side-by-side">
      <caption>Unit cost, ${today.homeCurrency}</caption>
      <thead>
        <tr><th scope="col">Product</th><th scope="col" class="number">Run</th><th scope="col" class="number">Today</th>${kept.map((one) => html`<th scope="col" class="number">${one.name}</th>`)}</tr>
      </thead>
      <tbody>
        <tr class="words"><td></td><td></td><td></td>${kept.map((one) => html`<td>${one.changes.map((change) => html`<span class="line">${change.what ? `${change.what} ${change.change}` : change}</span>`)}</td>`)}</tr>
        ${products(today).flatMap((product) =>
          product.runs.map(
            (run) => html`<tr>
              <th scope="row">${product.name}</th>
              <td class="number">${size(run)}</td>
              <td class="number">${figure(costOf(run, today), places)}</td>
              ${kept.map((one) => keptCost(one, run, today, places))}
            </tr>`,
          ),
        )}
        <tr class="words">
          <td></td><td></td><td></td>
          ${kept.map(
            (one) => html`<td class="number">
              ${one.isSaved ? html`<span>on the sheet Scenarios</span>` : nothing}
              <button type="button" class="small" @click=${() => actions.dropKept(one)} aria-label=${`Drop ${one.name} from this page`}>drop</button>
            </td>`,
          )}
        </tr>
      </tbody>
    </table></div>
    <p class="caption">"Drop" takes one off this page only.</p>`;
}

function keptCost(one, run, today, places) {
  const line = one.runs?.find((each) => each.product === run.product && each.formula === run.formula && each.units === run.units);
  const changed = one.answer && partner(run, today, one.answer);
  const cost = changed ? costOf(changed, one.answer) : (line?.cost ?? null);
  return html`<td class="number">${figure(cost, places)} <span class="beside">${difference(minus(cost, costOf(run, today)), places)}</span></td>`;
}
