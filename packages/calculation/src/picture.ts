/** What a band of a gauge says: nothing against it, something to watch, something wrong. */
export type Tone = 'good' | 'mind' | 'bad';

/** A stretch of a gauge. It ends at the input, constant or result of this name, `-name` for its negative; the last has no end. */
export interface Band {
  readonly label: string;
  readonly tone: Tone;
  readonly upTo?: string;
}

/** A number among bands, such as a soot load against its limits. */
export interface Gauge {
  readonly type: 'gauge';
  /** The result that is drawn. */
  readonly value: string;
  /** The result that is its uncertainty, where the calculation works out one; else the ± of the inputs is drawn. */
  readonly spread?: string;
  readonly bands: readonly Band[];
}

/** A few numbers of one kind beside each other, such as a drop before and after, at equal flow. */
export interface Bars {
  readonly type: 'bars';
  readonly bars: readonly { readonly value: string; readonly label: string }[];
}

/** How a result is drawn. */
export type Picture = Gauge | Bars;

/** A gauge of a result; bands in order, each with its words: `['good', 'clean', 'cleanBand']`, the last without an end. */
export function gauge(value: string, bands: readonly (readonly [tone: Tone, label: string, upTo?: string])[], spread?: string): Gauge {
  return {
    type: 'gauge',
    value,
    ...(spread === undefined ? {} : { spread }),
    bands: bands.map(([tone, label, upTo]) => ({ tone, label, ...(upTo === undefined ? {} : { upTo }) })),
  };
}

/** Bars of one kind of quantity, by the names of inputs or results, with what each is called. */
export function bars(labels: Readonly<Record<string, string>>): Bars {
  return { type: 'bars', bars: Object.entries(labels).map(([value, label]) => ({ value, label })) };
}

/** Names that a picture takes its numbers from. */
export function namesOfPicture(picture: Picture): string[] {
  if (picture.type === 'bars') return picture.bars.map(({ value }) => value);
  const ends = picture.bands.flatMap(({ upTo }) => (upTo === undefined ? [] : [upTo.replace(/^-/, '')]));
  return [picture.value, ...(picture.spread === undefined ? [] : [picture.spread]), ...ends];
}

/** The same picture with other words. */
export function pictureTexts(picture: Picture, map: (key: string, text: string) => string): Picture {
  const labelled = <T extends { readonly label: string }>(parts: readonly T[]): T[] =>
    parts.map((part, index) => ({ ...part, label: map(`picture.${index + 1}`, part.label) }));
  return picture.type === 'bars' ? { ...picture, bars: labelled(picture.bars) } : { ...picture, bands: labelled(picture.bands) };
}
