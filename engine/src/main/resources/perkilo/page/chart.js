/** Charts as SVG. Every figure in them is also in a table beside them. */
import { html, render, svg } from '/lib/lit-html/lit-html.js';
import { rounded } from './figures.js';

/** Draws its content for the width that it has, and again when that changes: `draw` takes a width in pixels. */
class DrawnChart extends HTMLElement {
  #draw = null;
  #observer = new ResizeObserver(() => this.#show());

  set draw(draw) {
    this.#draw = draw;
    this.#show();
  }

  connectedCallback() {
    this.#observer.observe(this);
    this.#show();
  }

  disconnectedCallback() {
    this.#observer.disconnect();
  }

  #show() {
    if (this.#draw && this.clientWidth > 0) {
      render(this.#draw(this.clientWidth), this);
    }
  }
}
customElements.define('drawn-chart', DrawnChart);

const LEFT = 52;
const RIGHT = 24;
const TOP = 22;
const BOTTOM = 34;

/** Round numbers from 0 to at least `most`. */
export function ticks(most) {
  const rough = most / 4;
  const size = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 2.5, 5, 10].map((times) => times * size).find((one) => one >= rough);
  return Array.from({ length: Math.ceil(most / step) + 1 }, (_, at) => at * step);
}

/**
 * The cost of a unit against the size of a run, on a logarithmic scale of sizes.
 *
 * @param title what the chart is about, for who does not see it
 * @param points `{units, unitCost, own}`; the person's own sizes are marked and labelled
 * @param chosen the size in view
 */
export function curve(title, points, currency, places, chosen, width, height = 250) {
  const all = points.map((one) => ({ ...one, x: Number(one.units), y: Number(one.unitCost) })).sort((a, b) => a.x - b.x);
  const own = all.filter((one) => one.own);
  const low = Math.log(all[0].x);
  const high = Math.log(all.at(-1).x);
  const lines = ticks(Math.max(...all.map((one) => one.y)) * 1.08);
  const top = lines.at(-1);
  const across = (x) =>
    high === low ? (LEFT + width - RIGHT) / 2 : LEFT + 8 + ((Math.log(x) - low) / (high - low)) * (width - LEFT - RIGHT - 24);
  const down = (y) => TOP + (1 - y / top) * (height - TOP - BOTTOM);
  const labels = own.filter((one, at) => own.length <= Math.max(2, width / 90) || at === 0 || at === own.length - 1);
  const digits = lines[1] < 0.1 ? 3 : lines[1] < 1 ? 2 : lines[1] % 1 ? 1 : 0;
  return html`<svg class="chart" role="img" aria-label=${title} viewBox="0 0 ${width} ${height}" width="100%">
    <text class="axis" x="0" y="12">${currency} per unit</text>
    ${lines.map(
      (line) => svg`
        <line class="grid" x1=${LEFT} x2=${width - RIGHT} y1=${down(line)} y2=${down(line)}></line>
        <text class="axis end" x=${LEFT - 8} y=${down(line) + 4}>${line.toFixed(digits)}</text>`,
    )}
    ${labels.map(
      (one) => svg`
        <line class="fall" x1=${across(one.x)} x2=${across(one.x)} y1=${down(one.y)} y2=${height - BOTTOM}></line>
        <text class="axis middle" x=${across(one.x)} y=${height - BOTTOM + 16}>${rounded(one.units, 0)}</text>`,
    )}
    <text class="axis end" x=${width - RIGHT} y=${height - 2}>units in a run</text>
    <polyline class="line" points=${all.map((one) => `${across(one.x)},${down(one.y)}`).join(' ')}></polyline>
    ${all.map(
      (one) => svg`<circle
        class=${one.own ? (one.units === chosen ? 'own chosen' : 'own') : 'step'}
        cx=${across(one.x)} cy=${down(one.y)} r=${one.own ? 5 : 2.5}>
        <title>${rounded(one.units, 0)} units: ${rounded(one.unitCost, places)} ${currency}</title></circle>`,
    )}
    ${labels.map(
      (one, at) => svg`<text
        class="mark ${at === labels.length - 1 && labels.length > 1 ? 'end' : 'start'}"
        x=${across(one.x) + (at === labels.length - 1 && labels.length > 1 ? 6 : 8)}
        y=${down(one.y) - 9}>${rounded(one.unitCost, places)}</text>`,
    )}
  </svg>`;
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** The letter that a part has in a chart and in its table. */
export function letter(at) {
  return LETTERS[at % LETTERS.length];
}

/**
 * Bars of parts, one below the other.
 *
 * @param bars `{label, total, parts: [number]}`; part n has the colour and the letter n in every bar
 */
export function stacked(title, bars, width) {
  const most = Math.max(...bars.map((bar) => bar.parts.reduce((all, part) => all + Math.max(part, 0), 0)));
  const rowHeight = 46;
  const scale = most > 0 ? (width - 4) / most : 0;
  return html`<svg class="chart" role="img" aria-label=${title} viewBox="0 0 ${width} ${bars.length * rowHeight}" width="100%">
    ${bars.map((bar, row) => {
      let x = 0;
      return svg`
        <text class="mark" x="0" y=${row * rowHeight + 13}>${bar.label}</text>
        <text class="axis end" x=${width} y=${row * rowHeight + 13}>${bar.total}</text>
        ${bar.parts.map((part, at) => {
          const from = x;
          const long = Math.max(part, 0) * scale;
          x += long;
          return long < 0.5
            ? null
            : svg`<rect class="part part-${at % 10}" x=${from} y=${row * rowHeight + 19} width=${Math.max(long - 1, 0.5)} height="18"></rect>
              ${long > 16 ? svg`<text class="inside middle on-${at % 10}" x=${from + long / 2} y=${row * rowHeight + 32}>${letter(at)}</text>` : null}`;
        })}`;
    })}
  </svg>`;
}

/** A bar in a cell of a table, `fraction` of its width long. */
export function bar(fraction) {
  const long = Math.max(0, Math.min(100, fraction * 100));
  return html`<svg class="cellbar" aria-hidden="true" viewBox="0 0 100 10" preserveAspectRatio="none">
    <rect width=${long} height="10"></rect>
  </svg>`;
}
