/** Questions about a workbook, each with its choices as buttons. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { counted } from './figures.js';

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
    <p class="place">${one.where}${one.about ? html`. ${one.about}` : nothing}</p>
    <div class="choices-row">
      ${choices.map(
        (choice) => html`<label class="choice">
          <input type="radio" name=${`question-${at}`} .checked=${choice.value === answer} value=${choice.value}
            @change=${() => actions.answer(one.id, choice.value)}>
          <span>${choice.label ?? choice.value}${choice.value === one.proposed ? html` <em>(likely)</em>` : nothing}</span>
        </label>`,
      )}
      ${one.free
        ? html`<label class="free">${choices.length ? 'Or type it' : 'Type the answer'}
            <input type="text" .value=${isOther ? answer : ''} @change=${(event) => actions.answer(one.id, event.target.value.trim() || null)}>
          </label>`
        : nothing}
    </div>
  </fieldset>`;
}
