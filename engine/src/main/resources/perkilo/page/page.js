/** The page: enters with the key, goes by the address, holds what is known, and shows it. */
import { html, nothing, render } from '/lib/lit-html/lit-html.js';
import { get, ofBook, post, Refused, stayAlive, upload, whenGone, workIn } from './api.js';
import { costView, inView } from './cost.js';
import { counted } from './figures.js';
import { printedPages } from './printed.js';
import { readingView } from './reading.js';
import { address, route, takeKey } from './route.js';
import { products } from './runs.js';
import { spoken } from './sentence.js';
import { startView } from './start.js';
import { whenWorkChanges, work, workInSight } from './work.js';

const NO_USES = { prices: [], rates: null };
const NO_TRIAL = { what: '', change: '', changes: [], answer: null, error: null };

const state = {
  view: 'start',
  book: null,
  start: null,
  arrived: [],
  uses: NO_USES,
  isUploading: false,
  reading: null,
  given: new Map(),
  cost: null,
  product: null,
  run: null,
  price: null,
  trial: NO_TRIAL,
  kept: [],
  saved: null,
  said: '',
  problem: null,
  isOver: null,
};

function update(patch) {
  Object.assign(state, patch);
  show();
}

// ---- what is shown

const TITLES = { start: () => 'Start', reading: (book) => `Reading of ${book}`, cost: (book) => `Cost of ${book}` };

function show() {
  document.title = `${TITLES[state.view](state.book)} – Perkilo`;
  render(masthead(), document.getElementById('masthead'));
  render(status(), document.getElementById('status'));
  render(content(), document.getElementById('main'));
  render(foot(), document.getElementById('foot'));
  render(onPaper(), document.getElementById('printed'));
}

function masthead() {
  const { view, book, isOver } = state;
  const link = (name, words) =>
    html`<li><a href=${address(name, book)} aria-current=${view === name ? 'page' : nothing}>${words}</a></li>`;
  return html`<p class="mark"><a href="#/">Perkilo</a></p>
    <nav aria-label="Views"><ul>${link('start', 'Start')}${book ? html`${link('reading', 'Reading')}${link('cost', 'Cost')}` : nothing}</ul></nav>
    ${book ? html`<p class="book">${book}</p>` : nothing}
    ${isOver ? nothing : html`<button type="button" class="quiet" @click=${actions.close}>Close Perkilo</button>`}`;
}

function status() {
  const { said, problem, isOver } = state;
  return html`${workInSight()}
    <p class="said" role="status">${said}</p>
    ${isOver ? html`<p class="problem banner" role="alert">${isOver}</p>` : nothing}
    ${problem && !isOver
      ? html`<div class="problem banner" role="alert"><p>${problem.sentence}</p>
          ${problem.isStale ? html`<button type="button" @click=${actions.again}>Read it again</button>` : nothing}
          <button type="button" class="quiet" @click=${() => update({ problem: null })}>Hide this</button></div>`
      : nothing}`;
}

function content() {
  if (state.view === 'start') {
    return state.start ? startView(state, actions) : html`<h1>Perkilo</h1>`;
  }
  return state.view === 'reading' ? readingView(state, actions) : costView(state, actions);
}

function foot() {
  const { start } = state;
  return start ? html`<p>Perkilo ${start.version}. Everything stays on this computer. A cost is not a release: a qualified person must assess a formula and its safety.</p>` : nothing;
}

function onPaper() {
  const { view, cost, book } = state;
  return view === 'cost' && cost ? printedPages(book, products(cost.answer), cost.answer, cost.curve) : nothing;
}

// ---- what is done

/** Does something that may be refused; a refusal is shown as a sentence. */
async function tried(task) {
  try {
    update({ problem: null });
    return await task();
  } catch (problem) {
    if (!(problem instanceof Refused)) {
      throw problem;
    }
    if (problem.status !== 0) {
      const isStale = problem.status === 409;
      update({ problem: { isStale, sentence: isStale ? 'The file has changed meanwhile. Read it again.' : problem.message } });
    }
    return null;
  }
}

const actions = {
  async upload(files) {
    update({ isUploading: true, arrived: [] });
    for (const file of files) {
      try {
        update({ arrived: [...state.arrived, await upload(file)] });
      } catch (problem) {
        update({ arrived: [...state.arrived, { name: file.name, error: problem.message }] });
      }
    }
    const books = state.arrived.filter((one) => one.kind === 'workbook' && !one.error);
    state.arrived.filter((one) => !one.error).forEach((one) => useNew(one));
    update({ isUploading: false, said: `${counted(state.arrived.filter((one) => !one.error).length, 'file')} arrived.` });
    if (books.length === 1 && state.arrived.length === 1) {
      location.hash = address('reading', books[0].name);
    } else {
      await loadStart();
    }
  },
  begin: (template) =>
    tried(async () => {
      const made = await post('/api/new', { template: template.name });
      location.hash = address('cost', made.name);
    }),
  use(type, name, isUsed) {
    const { prices, rates } = state.uses;
    const others = prices.filter((one) => one !== name);
    const uses = type === 'rates' ? { prices, rates: isUsed ? name : rates === name ? null : rates } : { prices: isUsed ? [...others, name] : others, rates };
    update({ uses, reading: null, cost: null });
  },
  openFolder: (folder) =>
    tried(async () => {
      workIn(null);
      const start = await post('/api/folder', { id: folder.id });
      workIn(start.folderId);
      update({ start, arrived: [], book: null, uses: NO_USES, said: `Now working in ${start.folder}.` });
    }),
  close: () =>
    tried(async () => {
      await post('/api/close', {});
      update({ isOver: 'Perkilo has ended. You can close this page. Your files are in the folder.' });
    }),
  again: () => (state.view === 'cost' ? actions.costAgain() : actions.readAgain()),

  readAgain: () => loadReading(),
  answer(id, value) {
    const given = new Map(state.given);
    if (value === null) {
      given.delete(id);
    } else {
      given.set(id, value);
    }
    update({ given });
  },
  saveAnswers: () =>
    tried(async () => {
      const answers = [...state.given].map(([id, value]) => ({ id, value }));
      const body = { ...sources(), stamp: state.reading.stamp, answers };
      const reading = await work('Saving the answers', (headers) => post(ofBook(state.book, 'answers'), body, { headers }));
      const open = (reading.questions ?? []).filter((one) => (one.answer ?? null) === null).length;
      update({ reading, given: new Map(), cost: null, said: `Saved. ${open ? `${counted(open, 'question')} left.` : 'Every question has an answer.'}` });
      if (open === 0) {
        location.hash = address('cost', state.book);
      }
    }),

  costAgain: () => loadCost(),
  chooseProduct: (product) => update({ product, run: null, price: null }),
  chooseRun: (run) => update({ run }),
  tryPrice: (price) => update({ price }),
  save: () =>
    tried(async () => {
      const body = { ...sources(), stamp: state.cost.stamp, what: 'cost' };
      const saved = await work('Writing the result workbook', (headers) => post(ofBook(state.book, 'save'), body, { headers }));
      update({ saved, said: `Written: ${saved.written}.` });
    }),

  whatIf(what) {
    update({ trial: { ...state.trial, what, change: '' } });
    document.getElementById('whatif').scrollIntoView({ block: 'start' });
    document.getElementById(what ? 'change' : 'what').focus({ preventScroll: true });
  },
  typeWhat: (what) => update({ trial: { ...state.trial, what } }),
  addChange(what, change) {
    if (what && change) {
      const others = state.trial.changes.filter((one) => one.what.toLowerCase() !== what.toLowerCase());
      return plan([...others, { what, change }], what, change);
    }
    return null;
  },
  dropChange: (at) => plan(state.trial.changes.filter((_, other) => other !== at), '', ''),
  dropTrial: () => update({ trial: NO_TRIAL, said: 'All changes are taken back.' }),
  keep(name) {
    const { changes, answer } = state.trial;
    const others = state.kept.filter((one) => one.name !== name);
    update({ kept: [...others, { name, changes, answer, isSaved: false }], trial: NO_TRIAL, said: `${name} is kept beside the others.` });
  },
  dropKept: (one) => update({ kept: state.kept.filter((other) => other !== one) }),
};

/** What every question about a workbook says of the files that count with it. */
function sources() {
  const { prices, rates } = state.uses;
  return { prices, ...(rates ? { rates } : {}) };
}

/** A list that was just dropped is meant to be used. */
function useNew(file) {
  if (file.kind === 'list' || file.kind === 'rates') {
    actions.use(file.kind === 'list' ? 'prices' : 'rates', file.name, true);
  }
}

let planned = 0;

/** Plans anew with changes; an answer that a newer question has overtaken is dropped. */
async function plan(changes, what, change) {
  const mine = ++planned;
  if (changes.length === 0) {
    update({ trial: { ...NO_TRIAL, what } });
    return;
  }
  update({ trial: { ...state.trial, what, change, error: null } });
  try {
    const from = performance.now();
    const { answer } = await work('Planning anew', (headers) => post(ofBook(state.book, 'cost'), { ...sources(), stamp: state.cost.stamp, changes }, { headers }));
    if (mine === planned) {
      const { product } = inView(state);
      const after = products(answer).find((one) => one.key === product?.key);
      update({ trial: { what, change, changes, answer, error: null }, said: after ? `With ${changes.map((one) => `${one.what} ${one.change}`).join(', ')}: ${spoken(after, answer)}` : 'Planned anew.' });
      performance.measure('what-if', { start: from });
    }
  } catch (problem) {
    if (!(problem instanceof Refused)) {
      throw problem;
    }
    if (mine === planned && problem.status === 409) {
      update({ problem: { isStale: true, sentence: 'The file has changed meanwhile. Read it again.' } });
    } else if (mine === planned) {
      update({ trial: { ...state.trial, error: problem.message } });
    }
  }
}

// ---- what is loaded

let isFirst = true;

/** A view is there with what it shows. Where the focus was may be gone with the view before. */
function arrived() {
  if (document.activeElement === document.body) {
    focusHeading();
  }
  if (isFirst) {
    isFirst = false;
    performance.measure('first view', { start: 0 });
  }
}

const loadStart = () =>
  tried(async () => {
    update({ start: await get('/api/start') });
    arrived();
  });

const loadReading = () =>
  tried(async () => {
    const { book } = state;
    update({ said: '' });
    const reading = await work(`Reading ${book}`, (headers) => get(`${ofBook(book, 'reading')}${asQuery(sources())}`, { headers }));
    if (book === state.book) {
      update({ reading, given: new Map(), said: state.view === 'reading' ? `${book} was read.` : state.said });
      arrived();
    }
  });

const loadCost = () =>
  tried(async () => {
    const { book } = state;
    update({ said: '' });
    const cost = await work(`Costing ${book}`, (headers) => post(ofBook(book, 'cost'), { ...sources(), changes: [] }, { headers }));
    if (book === state.book) {
      update({ cost, kept: withSaved(cost.answer, state.kept), trial: NO_TRIAL, price: null, saved: null, said: state.view === 'cost' ? `${book} was costed.` : state.said });
      arrived();
      await loadDecisions(book);
    }
  });

/** What takes longer than the cost itself: the sizes between the person's own, targets and variances. */
async function loadDecisions(book) {
  const { cost } = state;
  if (cost?.decides) {
    const more = await post(ofBook(book, 'decide'), sources());
    if (state.cost === cost) {
      update({ cost: { ...cost, ...more, stamp: cost.stamp } });
    }
  }
}

function asQuery({ prices, rates }) {
  const query = new URLSearchParams([...prices.map((name) => ['prices', name]), ...(rates ? [['rates', rates]] : [])]);
  return query.size ? `?${query}` : '';
}

/** The what-ifs on the sheet Scenarios, beside those that were made on the page and not saved. */
function withSaved(answer, kept) {
  const saved = (answer.scenarios ?? []).map((one) => ({ ...one, answer: null, isSaved: true }));
  return [...saved, ...kept.filter((one) => !one.isSaved && !saved.some((other) => other.name === one.name))];
}

/** Goes where the address says. */
async function go() {
  const { view, book } = route();
  const isOther = book !== null && book !== state.book;
  if (isOther) {
    Object.assign(state, { reading: null, given: new Map(), cost: null, product: null, run: null, price: null, trial: NO_TRIAL, kept: [], saved: null });
  }
  update({ view, book: book ?? state.book, problem: null });
  focusHeading();
  window.scrollTo(0, 0);
  if (view === 'start') {
    await loadStart();
  } else if (view === 'reading') {
    await (state.reading ? null : loadReading());
  } else if (!state.cost) {
    await loadCost();
  }
}

/** Who does not see the page is at the heading of the view that was opened. */
function focusHeading() {
  const heading = document.querySelector('#main h1');
  heading?.setAttribute('tabindex', '-1');
  heading?.focus({ preventScroll: true });
}

async function begin() {
  whenGone((sentence) => update({ isOver: state.isOver ?? sentence }));
  whenWorkChanges(show);
  window.addEventListener('hashchange', () => (location.hash.startsWith('#/') ? go() : undefined));
  document.querySelector('.skip').addEventListener('click', (event) => {
    event.preventDefault();
    document.getElementById('main').focus();
  });
  const key = takeKey();
  const start = await tried(async () => {
    if (key) {
      await post('/api/enter', { token: key });
    }
    return get('/api/start');
  });
  if (!start) {
    return;
  }
  stayAlive();
  workIn(start.folderId);
  Object.assign(state, { start });
  if (start.book && key && location.hash === '#/') {
    history.replaceState(null, '', address('reading', start.book));
  }
  await go();
}

begin();
