import { differenceInUnit, getKind, type Kind, type KindName, typeableNumber, unitSymbol } from '@wallflow/units';
import type { Entry } from '../data/types.js';

/** A number with its uncertainty at the start of a text, `+/-` for ± among it; an `e` counts when an exponent follows it. */
const leadingNumber = /^(?:\+\/[-−]|[\s\d.,+\-−±']|[eE](?=[+\-−]?\d))*/;

/** Full-width signs, as some keyboards type digits, in their usual width; as many as before. */
function usualWidth(text: string): string {
  return text.replace(/[！-～]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) - 0xfee0));
}

interface SplitText {
  readonly number: string;
  readonly unit: string;
}

/** Part what was typed into the number and the unit written after it; undefined where no number stands first. */
export function splitNumber(typed: string): SplitText | undefined {
  const text = usualWidth(typed);
  const number = leadingNumber.exec(text)?.[0] ?? '';
  if (!/\d/.test(number)) return undefined;
  const unit = text.slice(number.length).trim();
  // "1:4" is one number in parts, not a 1 with a unit behind it.
  if (unit.startsWith(':')) return { number: text.trim(), unit: '' };
  // In "3.0 1/m" the second number begins the unit.
  const reciprocal = unit.startsWith('/') ? /^(.*\S)\s+1\s*$/s.exec(number) : null;
  if (reciprocal !== null) return { number: (reciprocal[1] ?? '').trim(), unit: `1${unit}` };
  return { number: number.trim(), unit };
}

function kindNamed(kind: string): Kind<KindName> {
  const found = getKind(kind);
  if (found === undefined) throw new Error(`no kind of quantity is called ${kind}`);
  return found;
}

/** The text that the calculation gets: what was typed, with the selected unit behind it where none was typed. */
export function quantityText(entry: Entry): string {
  const split = splitNumber(entry.text);
  if (split === undefined || split.unit !== '' || entry.unit === '' || entry.unit === '1') return entry.text;
  return `${entry.text.trim()} ${entry.unit}`;
}

/** The unit that was typed behind the number, if it is a unit of the kind. */
export function typedUnit(kind: string, text: string): string | undefined {
  const split = splitNumber(text);
  if (split === undefined || split.unit === '') return undefined;
  const parsed = kindNamed(kind).parse(text);
  return parsed.ok ? parsed.unit : undefined;
}

/**
 * What stands in the field after a text was typed. A unit behind the number moves the select; where the text is refused
 * the select goes back to what was chosen, so that no half-typed unit is left behind for the next number.
 */
export function typedEntry(kind: string, entry: Entry, text: string): Entry {
  const chosen = entry.chosen ?? entry.unit;
  const split = splitNumber(text);
  if (split === undefined) return { text, unit: chosen, own: true };
  if (split.unit === '') return { text, unit: entry.unit, own: true };
  const unit = typedUnit(kind, text);
  return unit === undefined ? { text, unit: chosen, own: true } : { text, unit, own: true, ...(unit === chosen ? {} : { chosen }) };
}

/** Read a quantity written as one text, as examples and links hold it, into the field and the select beside it. */
export function quantityEntry(kind: string, text: string, defaultUnit: string): Entry {
  const unit = typedUnit(kind, text);
  const split = splitNumber(text);
  if (unit === undefined || split === undefined) return { text, unit: defaultUnit };
  return { text: split.number, unit };
}

/** The sign of a unit as the select shows it. */
export function symbolOf(kind: string, unit: string): string {
  return unitSymbol(kind as KindName, unit) || unit;
}

function significant(value: number, digits: number): string {
  return String(Number(value.toPrecision(Math.min(digits, 12))));
}

function converted(kindName: string, typed: Entry, unit: string): Entry {
  const kind = kindNamed(kindName);
  const parsed = kind.parse(quantityText(typed));
  if (!parsed.ok) return { text: typed.text, unit };
  if (unit === parsed.unit) return { text: splitNumber(typed.text)?.number ?? typed.text, unit };
  const digits = Math.max(4, parsed.significantDigits + 2);
  const value = kind.in(parsed.quantity, unit as never);
  const number = typeableNumber(significant(value, digits), unit);
  if (parsed.uncertainty === undefined) return { text: number, unit, typed };
  const spread = Math.abs(differenceInUnit(kind.kind, parsed.uncertainty, unit, parsed.quantity));
  return { text: `${number} ± ${significant(spread, 3)}`, unit, typed };
}

function before(entry: Entry): { text: string; unit: string } {
  return entry.typed ?? { text: entry.text, unit: entry.unit };
}

function kept(entry: Entry, unit: string): Entry {
  const typed = before(entry);
  const text = splitNumber(typed.text)?.number ?? typed.text;
  return typed.unit === unit ? { text, unit, own: true } : { text, unit, own: true, typed };
}

/**
 * What stands in the field after another unit was chosen. A bare number that was typed here takes the unit: on a phone
 * the number comes first and its unit second. Everything else is converted. Two digits more than were typed are kept, so
 * that the change of unit does not change the result; going back to the unit that was typed brings back the typed text.
 * A text that is not a quantity stays as it is.
 */
export function changeUnit(kindName: string, entry: Entry, unit: string): Entry {
  if (entry.own && splitNumber(entry.text)?.unit === '') return kept(entry, unit);
  const changed = converted(kindName, before(entry), unit);
  return entry.example ? { ...changed, example: true } : changed;
}

/** What a change of unit did with the number, and the entry that the other way would have given. */
export interface UnitNote {
  readonly text: string;
  readonly action: string;
  readonly entry: Entry;
}

/** Said beside a field whose unit was changed; undefined where nothing was changed. */
export function unitNote(kindName: string, entry: Entry): UnitNote | undefined {
  const { typed } = entry;
  const number = typed === undefined ? undefined : splitNumber(typed.text)?.number;
  if (typed === undefined || number === undefined || typed.unit === entry.unit) return undefined;
  const was = `${number} ${symbolOf(kindName, typed.unit)}`;
  const unit = symbolOf(kindName, entry.unit);
  if (!entry.own) {
    return { text: `Converted from ${was}.`, action: `Keep the number: ${number} ${unit}`, entry: kept(entry, entry.unit) };
  }
  const other = converted(kindName, typed, entry.unit);
  if (other.typed === undefined) return undefined;
  return { text: `Counts as ${entry.text} ${unit}.`, action: `Convert: ${was} is ${other.text} ${unit}`, entry: other };
}
