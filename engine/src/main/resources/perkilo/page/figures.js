/**
 * Figures as the engine gives them: plain decimals in text. They are rounded and added as decimals, so that the page
 * shows exactly what the commands show. What is not known is "unknown", never 0.
 */
import { html, nothing } from '/lib/lit-html/lit-html.js';

const PLAIN = /^(-?)(\d+)(?:\.(\d+))?$/;
const PLACES = 6;

/** A decimal rounded half up, with commas between thousands; other text stays as it is. */
export function rounded(text, places) {
  const parts = PLAIN.exec(text);
  if (!parts) {
    return String(text);
  }
  const fraction = (parts[3] ?? '').padEnd(places + 1, '0');
  let number = BigInt(parts[2] + fraction.slice(0, places));
  if (fraction[places] >= '5') {
    number += 1n;
  }
  const digits = number.toString().padStart(places + 1, '0');
  const whole = digits.slice(0, digits.length - places).replace(/\B(?=(\d{3})+$)/g, ',');
  const sign = parts[1] && number !== 0n ? '\u2212' : '';
  return sign + whole + (places ? '.' + digits.slice(-places) : '');
}

function millionths(text) {
  const parts = PLAIN.exec(text);
  const number = BigInt(parts[2] + (parts[3] ?? '').padEnd(PLACES, '0').slice(0, PLACES));
  return parts[1] ? -number : number;
}

function decimal(number) {
  const digits = (number < 0n ? -number : number).toString().padStart(PLACES + 1, '0');
  const fraction = digits.slice(-PLACES).replace(/0+$/, '');
  return (number < 0n ? '-' : '') + digits.slice(0, -PLACES) + (fraction ? '.' + fraction : '');
}

/** The exact sum; null if any part is unknown. */
export function sum(...texts) {
  return texts.some((text) => text == null)
    ? null
    : decimal(texts.reduce((all, text) => all + millionths(text), 0n));
}

/** What is left of the first after the second is taken away; null if either is unknown. */
export function minus(from, taken) {
  return from == null || taken == null ? null : decimal(millionths(from) - millionths(taken));
}

/** A number of this page's own arithmetic as a decimal text. */
export function asText(number) {
  return Number.isFinite(number) ? number.toFixed(PLACES) : null;
}

/** What a person typed as a number: "24.90", "24,9", "1,200.50"; null if it is not a number or has two meanings. */
export function typed(text) {
  const bare = String(text).trim().replace(/[\s\u00a0']/g, '').replace('\u2212', '-');
  if (/^[+-]?\d{1,3}([.,]\d{3})$/.test(bare)) {
    return null;
  }
  const plain = /^[+-]?\d{1,3}(,\d{3})+\.\d+$/.test(bare)
    ? bare.replaceAll(',', '')
    : /^[+-]?\d{1,3}(\.\d{3})+,\d+$/.test(bare)
      ? bare.replaceAll('.', '').replace(',', '.')
      : bare.replace(',', '.');
  return /^[+-]?\d+(\.\d+)?$/.test(plain) ? Number(plain) : null;
}

/** How many decimals a currency has: 2 for EUR, 0 for JPY. */
export function minorDigits(currency) {
  try {
    return new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits;
  } catch {
    return 2;
  }
}

/** A figure with its full value for who needs it; "unknown" if there is none. */
export function figure(text, places, name) {
  return text == null
    ? html`<span class="unknown">unknown</span>`
    : html`<data value=${text} data-name=${name ?? nothing}>${rounded(text, places)}</data>`;
}

/** A difference: with its sign, and a class for dearer or cheaper. */
export function difference(text, places) {
  if (text == null) {
    return html`<span class="unknown">unknown</span>`;
  }
  const shown = rounded(text, places);
  const isNone = !/[1-9]/.test(shown);
  const isMore = !isNone && !shown.startsWith('\u2212');
  const look = isNone ? 'same' : isMore ? 'dearer' : 'cheaper';
  return html`<data class=${look} value=${text}>${isMore ? '+' : ''}${isNone ? rounded('0', places) : shown}</data>`;
}

/** A fraction as per cent. */
export function percent(fraction, places = 1, name = undefined) {
  return fraction == null
    ? html`<span class="unknown">unknown</span>`
    : html`<data value=${fraction} data-name=${name ?? nothing}>${rounded(asText(Number(fraction) * 100), places)} %</data>`;
}

/** "3 sheets", "1 sheet". */
export function counted(number, one, many = one + 's') {
  return `${rounded(String(number), 0)} ${number === 1 ? one : many}`;
}

/** "a, b and c". */
export function listed(texts) {
  return texts.length < 2 ? texts.join('') : `${texts.slice(0, -1).join(', ')} and ${texts.at(-1)}`;
}

/** 2026-11-20 as 20 November 2026; other text as it is. */
export function day(iso) {
  const date = /^\d{4}-\d{2}-\d{2}/.test(iso ?? '') ? new Date(iso.slice(0, 10) + 'T00:00:00Z') : null;
  return date
    ? new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' }).format(date)
    : (iso ?? '');
}
