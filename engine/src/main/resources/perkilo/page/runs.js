/** The runs of an answer, as the cost view looks at them: by product, or bulk by formula. */
import { minorDigits, rounded, sum } from './figures.js';

/** What a run is of. */
export function subject(run) {
  return run.product ?? run.formula;
}

/** The same for the same product and size, in whatever answer. */
export function runKey(run) {
  return run.product ? `${run.product}|${run.units}` : `bulk ${run.formula}|${run.batchKg}|${run.batches}`;
}

/** The size in words: "1,000", "80 kg of bulk". */
export function size(run) {
  if (run.units == null && run.batchKg == null) {
    return 'unknown size';
  }
  return run.product ? rounded(run.units, 0) : `${rounded(run.batchKg, 2)} kg × ${run.batches}`;
}

/** The size with its unit: "1,000 units". */
export function sizeWords(run) {
  return run.product ? `${size(run)} units` : `${size(run)} of bulk`;
}

/** The runs by what they are of, each in the order of size. */
export function products(answer) {
  const all = new Map();
  for (const run of answer.runs ?? []) {
    const key = run.product ? `p${run.product}` : `b${run.formula}`;
    if (!all.has(key)) {
      all.set(key, { key, name: subject(run), isBulk: !run.product, runs: [] });
    }
    all.get(key).runs.push(run);
  }
  for (const one of all.values()) {
    one.runs.sort((a, b) => Number(a.units ?? a.batchKg) - Number(b.units ?? b.batchKg));
    one.complete = one.runs.filter((run) => run.complete);
  }
  return [...all.values()];
}

/** The cost of a unit in home currency; of a kilogram for bulk; null if it is not known. */
export function costOf(run, answer) {
  const costs = run.product ? run.unitCost : run.bulkPerKg;
  return run.complete ? (costs?.[answer.homeCurrency] ?? null) : null;
}

/** Decimals for costs of a unit: two, but four where a unit costs less than 1. */
export function unitPlaces(answer) {
  const usual = minorDigits(answer.homeCurrency);
  const isSmall = (answer.runs ?? []).some((run) => run.product && Number(costOf(run, answer) ?? 1) < 1);
  return isSmall ? Math.max(usual, 4) : usual;
}

/** What a head of a run costs per unit, or per kilogram of bulk that is made, as a number for drawing. */
export function perUnit(amount, run) {
  return Number(amount) / (run.product ? Number(run.units) : Number(run.batchKg) * run.batches);
}

/** Work of a run, in home currency. */
export function workOf(run) {
  const { heads } = run;
  return sum(heads.making, heads.filling, heads['quality control'], heads.overhead);
}

/** The items of a run by what they cost per unit, each with its purchases. */
export function itemsByCost(run, answer) {
  const bought = new Map((run.items ?? []).map((item) => [item.item, item]));
  return (answer.shares ?? [])
    .filter((share) => share.product === run.product && share.formula === run.formula && share.units === run.units)
    .filter((share) => run.product || share.batchKg === run.batchKg)
    .map((share) => ({ ...share, per: share.perUnit ?? share.perKg, bought: bought.get(share.item) ?? null }));
}

/** What a person pays, in words: "2 × 1 kg from Quillfen at 31.95 EUR a pack". */
export function purchaseWords(purchase) {
  const price = `${rounded(purchase.price, decimals(purchase.price))} ${purchase.currency}`;
  const unit = purchase.pricePer === 'pack' ? 'a pack' : purchase.pricePer === 'each' ? 'each' : `per ${purchase.pricePer}`;
  const pack = Number(purchase.packSize) === 1 && purchase.packUnit === 'each' ? '' : ` × ${rounded(purchase.packSize, decimals(purchase.packSize, 0))} ${purchase.packUnit}`;
  return `${rounded(String(purchase.packs), 0)}${pack} from ${purchase.supplier} at ${price} ${unit}`;
}

function decimals(text, least = 2) {
  return Math.min(6, Math.max(least, text.split('.')[1]?.length ?? 0));
}
