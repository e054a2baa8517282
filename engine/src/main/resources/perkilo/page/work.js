/** Long work: shows how far it is, and can be stopped. Short work shows nothing. */
import { html } from '/lib/lit-html/lit-html.js';
import { post } from './api.js';

const PATIENCE = 400;

let current = null;
let changed = () => {};

/** Calls `listener` whenever there is something new to show. */
export function whenWorkChanges(listener) {
  changed = listener;
}

/**
 * Does one piece of work. Only the newest is shown.
 *
 * @param title what is done, such as "Reading launch.xlsx"
 * @param task gets the headers that the call needs
 */
export async function work(title, task) {
  const id = crypto.randomUUID();
  const mine = { id, title, shown: false, stage: null, stopping: false, events: null };
  current = mine;
  const timer = setTimeout(() => follow(mine), PATIENCE);
  try {
    return await task({ 'X-Work': id });
  } finally {
    clearTimeout(timer);
    mine.events?.close();
    if (current === mine) {
      current = null;
    }
    changed();
  }
}

function follow(mine) {
  mine.shown = true;
  mine.events = new EventSource(`/api/work/${mine.id}/events`);
  mine.events.onmessage = (event) => {
    const stage = JSON.parse(event.data);
    if (stage.end) {
      mine.events.close();
    } else {
      mine.stage = stage;
    }
    changed();
  };
  mine.events.onerror = () => mine.events.close();
  changed();
}

/** What is being done now. */
export function workInSight() {
  if (!current?.shown) {
    return null;
  }
  const { title, stage, stopping } = current;
  const isCounted = stage?.of > 0;
  return html`<div class="work">
    <p>
      <strong>${title}.</strong>
      ${isCounted ? `${stage.done} of ${stage.of} ${stage.pieces}.` : stage ? `${stage.done} ${stage.pieces}.` : 'Please wait.'}
    </p>
    ${isCounted
      ? html`<progress aria-label=${title} max=${stage.of} value=${stage.done}></progress>`
      : html`<progress aria-label=${title}></progress>`}
    <button type="button" class="quiet" ?disabled=${stopping} @click=${stop}>${stopping ? 'Stopping' : 'Stop'}</button>
  </div>`;
}

function stop() {
  current.stopping = true;
  changed();
  post(`/api/work/${current.id}/stop`, {}).catch(() => {});
}
