/** Calls to the program on this computer. Every refusal becomes a {@link Refused} with a sentence for a person. */

/** A call that was not answered as hoped; `status` 0 means that the program has ended. */
export class Refused extends Error {
  constructor(status, sentence) {
    super(sentence);
    this.status = status;
  }
}

const GONE =
  'Perkilo has ended, so this page gets no more answers. Your workbook and all that you saved are in your folder. Start Perkilo again to go on.';
const LOCKED =
  'This page may not ask Perkilo. Open it with the address that Perkilo gave when it started, or start Perkilo again.';

const gone = new Set();

/** Calls `listener` when the program turns out to have ended. */
export function whenGone(listener) {
  gone.add(listener);
}

let folder = null;

/** From now on every call is about this folder; one about another is refused. */
export function workIn(folderId) {
  folder = folderId ?? null;
}

async function send(path, options) {
  let response;
  try {
    const headers = { ...options.headers, ...(folder ? { 'X-Folder': folder } : {}) };
    response = await fetch(path, { credentials: 'same-origin', ...options, headers });
  } catch (problem) {
    if (problem.name === 'AbortError') {
      throw problem;
    }
    gone.forEach((listener) => listener(GONE));
    throw new Refused(0, GONE);
  }
  const answer = await response.json().catch(() => ({}));
  if (!response.ok) {
    const sentence = response.status === 401 || response.status === 403 ? LOCKED : answer.error;
    throw new Refused(response.status, sentence ?? 'Perkilo could not answer this. Try it again.');
  }
  return answer;
}

/** Reads. */
export function get(path, options = {}) {
  return send(path, options);
}

/** Asks for work. */
export function post(path, body, options = {}) {
  const headers = { 'content-type': 'application/json', ...options.headers };
  return send(path, { ...options, method: 'POST', headers, body: JSON.stringify(body) });
}

/** Copies a file into the folder. */
export function upload(file) {
  return send(`/api/files?name=${encodeURIComponent(file.name)}`, {
    method: 'POST',
    headers: { 'content-type': 'application/octet-stream' },
    body: file,
  });
}

/** The path of a workbook's part. */
export function ofBook(name, part) {
  return `/api/books/${encodeURIComponent(name)}/${part}`;
}

const tabs = new BroadcastChannel('perkilo');

/**
 * Tells the program that a page is open, and is told at once when the program ends. One tab does so for all, because a
 * browser keeps few connections; when it is closed, the next one takes over.
 */
export function stayAlive() {
  tabs.onmessage = () => gone.forEach((listener) => listener(GONE));
  navigator.locks.request('alive', () => new Promise(listen));
}

function listen(done) {
  const stream = new EventSource('/api/alive');
  stream.onerror = () => {
    get('/api/start').catch((problem) => {
      if (problem.status === 0) {
        stream.close();
        tabs.postMessage('gone');
        done();
      }
    });
  };
}
