/** Questions about a workbook, each with its choices as buttons. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { counted } from './figures.js';

/** More choices than this are a list. */
const MOST_BUTTONS = 8;

function chooseFrom(choices, answer, isOther, choose, label = 'Choose') {
  return html`<label class="free">${label}
    <select .value=${isOther ? '' : (answer ?? '')} @change=${(event) => choose(event.target.value || null)}>
      <option value="">–</option>
      ${choices.map((choice) => html`<option value=${choice.value} ?selected=${choice.value === answer}>${choice.label ?? choice.value}</option>`)}
    </select>
  </label>`;
}

/** What is not asked, but can be corrected: how each sheet and column is read. */
export function corrections(more, given, actions) {
  const isNew = more.some((one) => given.has(one.id));
  return html`<details class="sheet">
    <summary><span class="tab">Something is read wrongly?</span> <span class="fate">Say what each sheet and column is</span></summary>
    <form @submit=${(event) => { event.preventDefault(); actions.saveAnswers(); }}>
      <ul class="plain">
        ${more.map((one) => {
          const answer = answerTo(one, given);
          const isOther = answer !== null && !(one.choices ?? []).some((choice) => choice.value === answer);
          return html`<li class="correction"><span>${one.text} <span class="place">${one.where}${one.recognised ? `, now read as ${one.recognised}` : ''}</span></span>
            ${chooseFrom(one.choices ?? [], answer, isOther, (value) => actions.answer(one.id, value), 'Read as')}</li>`;
        })}
      </ul>
      <p class="actions"><button type="submit" ?disabled=${!isNew}>Save the corrections into the workbook</button></p>
    </form>
  </details>`;
}

/** The questions with the answers that were given on the page so far (a map from the question's id to a value). */
export function questionList(questions, given, actions) {
  const open = questions.filter((one) => answerTo(one, given) === null).length;
  const isNew = questions.some((one) => given.has(one.id));
  return html`<form @submit=${(event) => { event.preventDefault(); actions.saveAnswers(); }}>
    ${questions.map((one, at) => question(one, at, given, actions))}
    <p class="actions">
      <button type="submit" ?disabled=${!isNew}>Save the answers into the workbook</button>
      <span>${open ? `${counted(open, 'question')} without an answer.` : 'Every question has an answer.'}
        A dated copy of the workbook is kept.</span>
    </p>
  </form>`;
}

function answerTo(one, given) {
  return given.get(one.id) ?? one.answer ?? null;
}

function question(one, at, given, actions) {
  const answer = answerTo(one, given);
  const choices = one.choices ?? [];
  const isOther = answer !== null && !choices.some((choice) => choice.value === answer);
  return html`<fieldset class=${answer === null ? 'question open' : 'question'} data-question=${one.id}>
    <legend>${one.text}</legend>
    <p class="place">${one.where}</p>
    <div class="choices-row">
      ${choices.length > MOST_BUTTONS ? chooseFrom(choices, answer, isOther, (value) => actions.answer(one.id, value)) : choices.map(
        (choice) => html`<label class="choice">
          <input type="radio" name=${`question-${at}`} .checked=${choice.value === answer} value=${choice.value}
            @change=${() => actions.answer(one.id, choice.value)}>
          <span>${choice.label ?? choice.value}${choice.value === one.proposed ? html` <em>(likely)</em>` : nothing}</span>
        </label>`,
      )}
      ${one.free && choices.length === 0 ? typedAnswer(one, answer, isOther, actions) : nothing}
    </div>
    ${one.free && choices.length > 0
      ? html`<details class="other" ?open=${isOther}><summary>Another answer</summary>${typedAnswer(one, answer, isOther, actions)}</details>`
      : nothing}
  </fieldset>`;
}

function typedAnswer(one, answer, isOther, actions) {
  return html`<label class="free">Type the answer
    <input type="text" .value=${isOther ? answer : ''} @change=${(event) => actions.answer(one.id, event.target.value.trim() || null)}>
  </label>`;
}
