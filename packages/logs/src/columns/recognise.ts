import { type ChannelName, channelNames, channelOf, channels, isChannelName } from '../channels/channels.js';
import { forms } from './forms.js';
import { bracketUnit, type TitleParts, titleCuts } from './title.js';
import { type ColumnUnit, unitOfText, unitOne } from './unit-text.js';
import { plainTitle, type TitleWords, wordsOf } from './words.js';

/** What else than a channel a column can be: a calendar day, a running number, or a part of the long form. */
export type ColumnRole = 'date' | 'index' | 'name' | 'value' | 'unit';

/** How well the words of a title fit a channel. */
type Fit = 'whole' | 'part';

/** One reading of a title. */
export interface Candidate {
  readonly channel: ChannelName;
  readonly unit?: ColumnUnit;
  readonly fit: Fit;
  /** Words that are not in the vocabulary stood beside. */
  readonly extra: boolean;
  readonly unitWhere?: NonNullable<TitleParts['where']> | 'unit row';
}

/** How a title was understood. */
export interface TitleReading {
  readonly candidates: readonly Candidate[];
  readonly role?: ColumnRole;
  /** A unit was written that none of the candidates has. */
  readonly strangeUnit?: string;
  /** A set value or a limit, which is no measurement. */
  readonly notMeasured?: true;
}

const byName = new Map<string, ChannelName>();
for (const name of channelNames) {
  byName.set(name.toLowerCase(), name);
  byName.set(plainTitle(channels[name].label), name);
}

const formParts = Object.entries(forms).map(([channel, list]) => ({
  channel: channel as ChannelName,
  list: list.map(({ words, beside }) => ({
    words: words.split(','),
    allowed: new Set([...words.split(','), ...(beside === undefined || beside === '' ? [] : beside.split(','))]),
  })),
}));

/** Concepts that name nothing by themselves: `before`, `engine` and the like. */
const vague = new Set([
  'engine',
  'before',
  'after',
  'across',
  'value',
  'vehicle',
  'load',
  'level',
  'since',
  'mass',
  'volume',
  'flow',
  'number',
]);
vague.add('state').add('share').add('valve').add('name').add('unit').add('catalyst').add('filter').add('tank').add('time').add('time unit');
const timeWords = new Set(['time', 'time unit', 'epoch', 'date']);

function fitOf(words: TitleWords, channel: ChannelName): Fit | undefined {
  const entry = formParts.find((part) => part.channel === channel);
  let best: Fit | undefined;
  for (const form of entry?.list ?? []) {
    if (!words.known.every((alternatives) => alternatives.some((concept) => form.allowed.has(concept)))) continue;
    const said = (concept: string) => words.known.some((alternatives) => alternatives.includes(concept));
    if (form.words.every(said)) return 'whole';
    if (form.words.some((concept) => !vague.has(concept) && said(concept))) best = 'part';
  }
  return best;
}

function isTime(words: TitleWords): boolean {
  return words.known.length > 0 && words.known.every((alternatives) => alternatives.some((concept) => timeWords.has(concept)));
}

function onlyWord(words: TitleWords, concept: string): boolean {
  return words.unknown.length === 0 && words.known.length > 0 && words.known.every((alternatives) => alternatives.includes(concept));
}

function roleOf(name: string, words: TitleWords): ColumnRole | undefined {
  const plain = plainTitle(name);
  if (/^(?:index|no|nr|row|line|sample|record|zeile|lfd nr|messung|sample no|frame)$/.test(plain) || name.trim() === '#') return 'index';
  if (onlyWord(words, 'date')) return 'date';
  if (/^(?:value|wert|messwert|reading)$/.test(plain)) return 'value';
  if (onlyWord(words, 'unit')) return 'unit';
  if (/^(?:name|parameter|pid|channel|signal|kanal|messgroesse|bezeichnung|variable|parameter name|channel name|signal name)$/.test(plain))
    return 'name';
  return undefined;
}

function candidatesOf(parts: TitleParts, where: Candidate['unitWhere']): Candidate[] {
  const own = byName.get(parts.name.trim().toLowerCase()) ?? byName.get(plainTitle(parts.name));
  const words = wordsOf(parts.name);
  const extra = words.unknown.length > 0;
  const found: Candidate[] = [];
  const add = (channel: ChannelName, fit: Fit, more: boolean) => {
    const unit = parts.unit === undefined ? unitOne(channelOf(channel)) : unitOfText(channelOf(channel), parts.unit);
    found.push({
      channel,
      fit,
      extra: more,
      ...(unit === undefined ? {} : { unit }),
      ...(where === undefined ? {} : { unitWhere: where }),
    });
  };
  if (own !== undefined) {
    add(own, 'whole', false);
    return found;
  }
  if (isTime(words)) add('time', 'whole', extra);
  else {
    for (const { channel } of formParts) {
      const fit = fitOf(words, channel);
      if (fit !== undefined) add(channel, fit, extra);
    }
  }
  return found;
}

/** Titles that are a unit and nothing else: `rpm`, `km/h`, `seconds`. */
function unitAlone(title: string): Candidate[] {
  const given = title.trim();
  const alone: readonly ChannelName[] = ['engineSpeed', 'vehicleSpeed', 'time'];
  return alone.flatMap((channel): Candidate[] => {
    const unit = /^(?:m|h|d)$/i.test(given) ? undefined : unitOfText(channelOf(channel), given);
    return unit === undefined ? [] : [{ channel, unit, fit: 'whole', extra: false, unitWhere: 'last word' }];
  });
}

function keepBest(candidates: readonly Candidate[]): Candidate[] {
  const withUnit = candidates.some(({ unit }) => unit !== undefined) ? candidates.filter(({ unit }) => unit !== undefined) : candidates;
  const whole = withUnit.filter(({ fit }) => fit === 'whole');
  return [...(whole.length > 0 ? whole : withUnit)];
}

/**
 * Understand the title of a column, with the text of its unit row where there is one. Nothing is chosen here: several
 * candidates are several meanings, and a candidate without a unit lacks one.
 */
export function readTitle(title: string, unitRow?: string): TitleReading {
  const whole = wordsOf(title);
  const cuts = titleCuts(title);
  const plainName = cuts.find(({ where }) => where === 'square brackets' || where === 'round brackets')?.name ?? title;
  const role = roleOf(plainName, wordsOf(plainName)) ?? roleOf(title, whole);
  if (role !== undefined) {
    const reading: TitleReading = { candidates: [], role };
    return role === 'date' ? { ...reading, candidates: [{ channel: 'time', fit: 'part', extra: false }] } : reading;
  }
  const contrary = whole.known.some((alternatives) => alternatives.every((concept) => concept === 'setpoint' || concept === 'limit'));
  if (contrary) return { candidates: [], notMeasured: true };
  if (unitRow !== undefined && unitRow.trim() !== '') {
    const candidates = keepBest(candidatesOf({ name: title, unit: unitRow }, 'unit row'));
    if (candidates.some(({ unit }) => unit !== undefined)) return { candidates };
    if (candidates.length > 0) return { candidates, strangeUnit: unitRow.trim() };
  }
  for (const parts of cuts) {
    if (parts.unit === undefined || parts.unit === '') continue;
    const candidates = candidatesOf(parts, parts.where).filter(({ unit }) => unit !== undefined);
    if (candidates.length > 0) return { candidates: keepBest(candidates) };
  }
  const alone = unitAlone(title);
  if (alone.length > 0) return { candidates: alone };
  const strange = bracketUnit(title);
  for (const parts of cuts) {
    if (parts.where === 'last word' || parts.where === 'after a slash') continue;
    const candidates = keepBest(candidatesOf({ name: parts.name }, undefined));
    if (candidates.length > 0) return { candidates, ...(strange === undefined || strange === '' ? {} : { strangeUnit: strange }) };
  }
  return { candidates: [] };
}

/** Whether a title can be a channel or a part of the long form at all; tells the header from other lines. */
export function isTitle(title: string): boolean {
  if (title.length > 300 || /^[-+\d.,:;\s]*$/.test(title)) return false;
  const reading = readTitle(title);
  return reading.candidates.length > 0 || reading.role !== undefined || isChannelName(title.trim());
}
