/**
 * What the words of a column's title mean. The words are those of the trade and of the open standards, in English and in
 * German; a German compound is cut into its parts. Each stem gives one or more concepts.
 */
const lexicon: Readonly<Record<string, readonly string[]>> = {
  engine: ['engine', 'eng', 'motor', 'verbrennungsmotor'],
  rotation: ['rpm', 'drehzahl', 'revolutions', 'revs', 'rev', 'umdrehungen', 'umdrehung', 'upm', 'rotational', 'rotation', 'n', 'umin'],
  'road speed': ['geschwindigkeit', 'geschw', 'vss', 'fahrgeschwindigkeit', 'tacho', 'v'],
  speed: ['speed', 'spd', 'tempo'],
  vehicle: ['vehicle', 'veh', 'fahrzeug', 'road', 'wheel', 'ground'],
  air: ['air', 'luft', 'frischluft'],
  'air mass': ['maf', 'lmm', 'luftmasse', 'luftmassen', 'airmass'],
  mass: ['mass', 'masse', 'massen', 'gramm', 'grams'],
  flow: ['flow', 'strom', 'durchfluss', 'durchsatz', 'flowrate', 'rate', 'fluss'],
  volume: ['volume', 'volumen', 'vol', 'volumetric'],
  stroke: ['stroke', 'hub', 'cylinder', 'zylinder', 'injection', 'arbeitsspiel'],
  exhaust: ['exhaust', 'exh', 'abgas', 'auspuff', 'gas'],
  temperature: ['temperature', 'temp', 'temperatur', 'temps', 'tmp', 't'],
  'exhaust temperature': ['egt', 'agt'],
  pressure: ['pressure', 'press', 'pres', 'druck', 'prs', 'p'],
  difference: ['differential', 'diff', 'difference', 'delta', 'differenz', 'dp', 'deltap', 'drop', 'abfall', 'verlust', 'loss'],
  'back-pressure': ['backpressure', 'gegendruck', 'staudruck'],
  back: ['back', 'gegen'],
  filter: ['filter', 'dpf', 'partikelfilter', 'russfilter', 'trap', 'particulate', 'partikel', 'particle', 'pf'],
  before: [
    'before',
    'upstream',
    'inlet',
    'intake',
    'in',
    'pre',
    'vor',
    'eintritt',
    'eingang',
    'ein',
    'einlass',
    'ahead',
    'front',
    'us',
    'vorn',
    'v',
  ],
  after: [
    'after',
    'downstream',
    'outlet',
    'out',
    'post',
    'nach',
    'austritt',
    'ausgang',
    'aus',
    'auslass',
    'behind',
    'hinter',
    'rear',
    'ds',
    'n',
  ],
  across: ['across', 'over', 'ueber'],
  'oxidation catalyst': ['doc', 'oxi', 'oxidation', 'oxidations', 'oxidationskatalysator', 'oxikat'],
  'reduction catalyst': ['scr', 'denox', 'reduktion', 'reduktions'],
  catalyst: ['catalyst', 'cat', 'kat', 'katalysator', 'catalytic', 'converter'],
  turbine: ['turbine', 'turbo', 'turbocharger', 'turbolader', 'lader', 'atl'],
  coolant: ['coolant', 'ect', 'kuehlmittel', 'kuehlwasser', 'cooling', 'water', 'wasser', 'kuehl', 'mittel'],
  oil: ['oil', 'oel', 'lube', 'schmieroel'],
  fuel: ['fuel', 'kraftstoff', 'treibstoff', 'sprit'],
  ambient: ['ambient', 'outside', 'outdoor', 'umgebung', 'umgebungs', 'aussen', 'umgebungsluft', 'amb'],
  barometric: ['barometric', 'baro', 'barometer', 'atmospheric', 'atmosphaeren', 'luftdruck'],
  intake: ['iat', 'intake', 'inlet', 'ansaug', 'einlass', 'ansaugluft', 'saugrohr', 'charge', 'ladeluft'],
  manifold: ['manifold', 'map'],
  boost: ['boost', 'lade', 'ladedruck'],
  absolute: ['absolute', 'abs', 'absolut', 'absoluter', 'absolutdruck'],
  gauge: ['gauge', 'relative', 'relativ', 'ueberdruck', 'rel'],
  soot: ['soot', 'russ', 'russmasse'],
  ash: ['ash', 'asche', 'oelasche'],
  load: ['load', 'loading', 'beladung', 'last', 'beladungs', 'fuellstand', 'auslastung', 'fill', 'gehalt', 'grad'],
  share: ['percent', 'prozent', 'percentage', 'share', 'anteil'],
  distance: ['distance', 'dist', 'strecke', 'weg', 'km', 'kilometer', 'kilometre', 'mileage', 'fahrstrecke', 'laufstrecke', 'wegstrecke'],
  since: ['since', 'seit', 'last', 'letzter', 'letzte', 'letzten', 'previous', 'der'],
  regeneration: ['regeneration', 'regen', 'regenerations', 'reg', 'rgn', 'regenerierung'],
  state: ['state', 'status', 'active', 'aktiv', 'zustand', 'running', 'laeuft', 'mode', 'flag'],
  odometer: ['odometer', 'odo', 'kilometerstand', 'kmstand', 'laufleistung', 'gesamtstrecke'],
  nox: ['nox', 'stickoxid', 'stickoxide', 'stickoxyd'],
  oxygen: ['o2', 'oxygen', 'sauerstoff'],
  opacity: ['opacity', 'truebung', 'rauchgastruebung', 'opazitaet'],
  smoke: ['smoke', 'rauch', 'rauchgas'],
  absorption: ['absorption', 'absorptions', 'kwert', 'koeffizient', 'coefficient', 'truebungskoeffizient'],
  number: ['number', 'count', 'anzahl', 'pn', 'concentration', 'konzentration', 'zahl'],
  recirculation: ['egr', 'agr', 'recirculation', 'rueckfuehrung', 'abgasrueckfuehrung'],
  valve: ['valve', 'ventil', 'position', 'pos', 'stellung', 'lage', 'ventilstellung', 'oeffnung', 'opening'],
  level: ['level', 'tankstand', 'pegel', 'stand'],
  reductant: ['reductant', 'reagent', 'def', 'urea', 'harnstoff', 'reduktionsmittel', 'aus32', 'reagens'],
  dosing: ['dosing', 'dosage', 'dosierung', 'dosier', 'dosed', 'menge', 'quantity'],
  tank: ['tank'],
  pedal: ['pedal', 'accelerator', 'throttle', 'app', 'fahrpedal', 'gaspedal', 'accel'],
  torque: ['torque', 'drehmoment', 'moment'],
  battery: ['battery', 'batterie', 'voltage', 'spannung', 'bordnetz', 'supply', 'batteriespannung', 'versorgungs'],
  time: ['time', 'zeit', 'uhrzeit', 'timestamp', 'zeitstempel', 'clock', 'elapsed', 'relative', 'messzeit', 'laufzeit', 't'],
  date: ['date', 'datum', 'day', 'tag'],
  'time unit': ['seconds', 'second', 'sekunden', 'sekunde', 'milliseconds', 'millisekunden', 'ms', 'sec', 'secs'],
  epoch: ['epoch', 'unix', 'unixtime'],
  unit: ['unit', 'units', 'einheit', 'einheiten'],
  // What makes another thing of a title.
  setpoint: [
    'setpoint',
    'desired',
    'specified',
    'target',
    'soll',
    'sollwert',
    'demand',
    'demanded',
    'commanded',
    'reference',
    'requested',
    'nominal',
  ],
  limit: ['limit', 'maximum', 'minimum', 'max', 'threshold', 'schwelle', 'grenze', 'grenzwert', 'average', 'mittelwert', 'mean'],
  fault: ['fault', 'error', 'fehler', 'dtc', 'code'],
  rail: ['rail', 'raildruck', 'injector', 'pump', 'pumpe', 'injektor'],
  gearbox: ['gear', 'gang', 'getriebe', 'transmission', 'clutch', 'brake', 'bremse', 'fan', 'luefter', 'wind'],
  lambda: ['lambda'],
};

/** Words that say nothing about what is measured. */
const fillers = new Set([
  ...[
    'the',
    'of',
    'at',
    'a',
    'an',
    'from',
    'for',
    'to',
    'is',
    'and',
    'des',
    'im',
    'am',
    'von',
    'und',
    'zum',
    'zur',
    'dem',
    'den',
    'die',
    'das',
  ],
  ...[
    'parameter',
    'channel',
    'name',
    'reading',
    'messwert',
    'kanal',
    'bank',
    'calculated',
    'measured',
    'berechnet',
    'gemessen',
    'berechnete',
    'gemessene',
    'corrected',
    'korrigiert',
    'filtered',
    'estimated',
  ],
  ...[
    'diesel',
    'sae',
    'obd',
    'ecu',
    'ecm',
    'signal',
    'sensor',
    'actual',
    'current',
    'aktuell',
    'aktuelle',
    'aktueller',
    'ist',
    'istwert',
    'wert',
    'value',
  ],
]);

const conceptsOf = new Map<string, string[]>();
for (const [concept, stems] of Object.entries(lexicon)) {
  for (const stem of stems) conceptsOf.set(stem, [...(conceptsOf.get(stem) ?? []), concept]);
}
const longestStem = Math.max(...[...conceptsOf.keys()].map((stem) => stem.length));
/** A part of a compound has at least this many letters, or `in` and `dp` would be found everywhere. */
const shortestPart = 3;

/** One plain form of a title: lower case, umlauts written out, words apart. */
export function plainTitle(title: string): string {
  return title
    .normalize('NFKC')
    .replace(/[Δ∆]/g, ' delta ')
    .replace(/(?<=[a-zäöü])(?=[A-ZÄÖÜ])/g, ' ')
    .toLowerCase()
    .replace(/ä/g, 'ae')
    .replace(/ö/g, 'oe')
    .replace(/ü/g, 'ue')
    .replace(/ß/g, 'ss')
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();
}

/** Cut a compound such as `abgastemperatur` into known stems; undefined where a part is not known. */
function cut(word: string, depth = 0): string[] | undefined {
  if (word === '') return [];
  if (depth > 6) return undefined;
  for (let length = Math.min(longestStem, word.length); length >= shortestPart; length -= 1) {
    const stem = word.slice(0, length);
    if (!conceptsOf.has(stem)) continue;
    for (const joint of ['', 's', 'n', 'en', 'e']) {
      const rest = word.slice(length);
      if (!rest.startsWith(joint)) continue;
      const more = cut(rest.slice(joint.length), depth + 1);
      if (more !== undefined) return [stem, ...more];
    }
  }
  return undefined;
}

/** What a title says: the concepts of its words, each word with its alternatives, and the words that are not known. */
export interface TitleWords {
  /** For each known word, the concepts that it can stand for. */
  readonly known: readonly (readonly string[])[];
  readonly unknown: readonly string[];
}

/** Look up the words of a title. Numbers and words that say nothing are passed over. */
export function wordsOf(title: string): TitleWords {
  const known: (readonly string[])[] = [];
  const unknown: string[] = [];
  for (const word of plainTitle(title).split(' ')) {
    if (word === '') continue;
    if (fillers.has(word) || /^\d+$/.test(word)) continue;
    const whole = conceptsOf.get(word);
    if (whole !== undefined) known.push(whole);
    else {
      const parts = word.length > 400 ? undefined : cut(word.replace(/\d+$/, ''));
      if (parts === undefined || parts.length === 0) unknown.push(word);
      else for (const part of parts) known.push(conceptsOf.get(part) ?? []);
    }
  }
  return { known, unknown };
}
