/** Start: drop files, choose a workbook of the folder, another folder, or a template. */
import { html, nothing } from '/lib/lit-html/lit-html.js';
import { address } from './route.js';

const KINDS = { workbook: 'workbook', list: 'price list', rates: 'exchange rates', other: 'other file' };

/** The view. */
export function startView(state, actions) {
  const { start } = state;
  return html`
    <h1>Drop a workbook, read the answer</h1>
    <div class="pair">
      <div>
        ${dropZone(state, actions)} ${arrivedList(state.arrived)}
      </div>
      <section class="aside" aria-labelledby="where-heading">
        <h2 id="where-heading">Where your files are</h2>
        <p>Perkilo works in this folder: <span class="path">${start.folder}</span></p>
        <p>
          All of it stays on this computer. The page is served by the program that you started here; it asks no other
          computer. What you drop is copied into the folder, and nothing there is overwritten.
        </p>
      </section>
    </div>
    ${books(start, actions)}
    <div class="pair">
      ${templates(start, actions)}
      <div>${lists(state, actions)} ${recent(start, actions)}</div>
    </div>`;
}

function dropZone(state, actions) {
  const over = (event) => {
    event.preventDefault();
    event.currentTarget.classList.add('over');
  };
  const leave = (event) => event.currentTarget.classList.remove('over');
  const drop = async (event) => {
    event.preventDefault();
    leave(event);
    actions.upload(await dropped(event.dataTransfer));
  };
  const chosen = (event) => {
    actions.upload([...event.target.files]);
    event.target.value = '';
  };
  return html`<section class="drop" aria-labelledby="drop-heading" @dragover=${over} @dragleave=${leave} @drop=${drop}>
    <h2 id="drop-heading">Drop files here</h2>
    <p>A workbook with formulas and prices (XLSX, XLSM). Price lists and exchange rates may come with it, or later.</p>
    <p>
      <label class="file button">
        <input type="file" id="files" multiple ?disabled=${state.isUploading} @change=${chosen}>
        Choose files
      </label>
    </p>
  </section>`;
}

/** The files of a drop, those in folders too. */
async function dropped(transfer) {
  const entries = [...transfer.items].map((item) => item.webkitGetAsEntry?.()).filter(Boolean);
  if (!entries.some((entry) => entry.isDirectory)) {
    return [...transfer.files];
  }
  const found = await Promise.all(entries.map(filesIn));
  return found.flat();
}

async function filesIn(entry) {
  if (entry.isFile) {
    return [await new Promise((done, failed) => entry.file(done, failed))];
  }
  const reader = entry.createReader();
  const inside = [];
  for (;;) {
    const some = await new Promise((done, failed) => reader.readEntries(done, failed));
    if (some.length === 0) {
      return (await Promise.all(inside.map(filesIn))).flat();
    }
    inside.push(...some);
  }
}

function arrivedList(arrived) {
  return arrived.length === 0
    ? nothing
    : html`<section aria-labelledby="arrived-heading">
        <h2 id="arrived-heading">Just arrived</h2>
        <ul class="plain">
          ${arrived.map(
            (file) => html`<li class=${file.error ? 'problem' : nothing}>
              <strong>${file.name}</strong>${file.error ? html`: ${file.error}` : html`, ${KINDS[file.kind] ?? file.kind}${file.note ? html`. ${file.note}` : nothing}`}
            </li>`,
          )}
        </ul>
      </section>`;
}

function books(start) {
  return html`<section aria-labelledby="books-heading">
    <h2 id="books-heading">Workbooks in the folder</h2>
    ${start.books.length === 0
      ? html`<p>None yet. Drop one above, or begin with a template below.</p>`
      : html`<div class="scroll" role="group" aria-label="Workbooks in the folder" tabindex="0"><table>
          <thead>
            <tr><th scope="col">Workbook</th><th scope="col">Changed</th><th scope="col" class="number">Size</th><th scope="col">Go to</th></tr>
          </thead>
          <tbody>${start.books.map(book)}</tbody>
        </table></div>`}
  </section>`;
}

function book(one) {
  return html`<tr>
    <th scope="row">${one.name}</th>
    <td>${moment(one.changed)}</td>
    <td class="number">${size(one.bytes)}</td>
    <td>
      ${one.result
        ? html`a result, <a href=${`/api/files/${encodeURIComponent(one.name)}`} download=${one.name}>download ${one.name}</a>`
        : html`<a class="go" href=${address('reading', one.name)} aria-label=${`Reading of ${one.name}`}>Reading</a>
            <a class="go" href=${address('cost', one.name)} aria-label=${`Cost of ${one.name}`}>Cost</a>`}
    </td>
  </tr>`;
}

function templates(start, actions) {
  return html`<section aria-labelledby="templates-heading">
    <h2 id="templates-heading">Begin with a template</h2>
    <p>Each is a workbook with an invented example to write over.</p>
    <ul class="plain choices">
      ${start.templates.map(
        (one) => html`<li>
          <button type="button" class="quiet" @click=${() => actions.begin(one)} aria-describedby=${`about-${one.name}`}>${one.title ?? one.name}</button>
          <span id=${`about-${one.name}`}>${one.about}</span>
        </li>`,
      )}
    </ul>
  </section>`;
}

/** The lists of the folder: several price lists may be used, and one file of rates. */
function lists(state, actions) {
  const all = state.start.lists ?? [];
  const part = (title, kind, type, isUsed) => {
    const some = all.filter((one) => (one.kind === 'rates') === (kind === 'rates'));
    return some.length === 0
      ? nothing
      : html`<fieldset class="uses">
          <legend>${title}</legend>
          ${some.map(
            (one) => html`<label class="use">
              <input type="checkbox" .checked=${isUsed(one.name)} @change=${(event) => actions.use(type, one.name, event.target.checked)}> ${one.name}
            </label>`,
          )}
        </fieldset>`;
  };
  return all.length === 0
    ? nothing
    : html`<section aria-labelledby="lists-heading">
        <h2 id="lists-heading">Count with these too</h2>
        <p>Files in the folder that are used beside the workbook's own prices and rates, if you tick them.</p>
        ${part('Price lists', 'list', 'prices', (name) => state.uses.prices.includes(name))}
        ${part('Exchange rates', 'rates', 'rates', (name) => state.uses.rates === name)}
      </section>`;
}

function recent(start, actions) {
  const others = (start.recentFolders ?? []).filter((one) => one.display !== start.folder);
  return others.length
    ? html`<section aria-labelledby="recent-heading">
        <h2 id="recent-heading">Folders that you used before</h2>
        <ul class="plain">
          ${others.map(
            (one) => html`<li><button type="button" class="quiet path" @click=${() => actions.openFolder(one)}>${one.display}</button></li>`,
          )}
        </ul>
      </section>`
    : nothing;
}

function moment(iso) {
  const shown = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeStyle: 'short' }).format(new Date(iso));
  return html`<time datetime=${iso}>${shown}</time>`;
}

function size(bytes) {
  return bytes < 1000 ? `${bytes} bytes` : bytes < 1000000 ? `${Math.round(bytes / 1000)} kB` : `${(bytes / 1000000).toFixed(1)} MB`;
}
