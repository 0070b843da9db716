/**
 * The symbol that most ids stand for: `m3/h` is m³/h, `N.m` is N·m, `ug` is µg, `m3/h_0C` is m³/h (0 °C). Where the custom
 * is another, the data give the symbol.
 */
export function symbolFromId(id: string): string {
  return id
    .replace(/_(\d+)([CF])$/, ' ($1 °$2)')
    .replace(/_(IT|th)/, ' ($1)')
    .replace('_conventional', ' (conv.)')
    .replace('H2O', 'H₂O')
    .replace(/(?<=m|ft|in|s)2/g, '²')
    .replace(/(?<=m|ft|in)3/g, '³')
    .replace(/\./g, '·')
    .replace(/^u/, 'µ')
    .replace(/deg(?=[CFR])/, '°')
    .replace('ohm', 'Ω');
}

/** What a kind is called in words, unless the data say otherwise: `differentialPressure` is differential pressure. */
export function labelFromName(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
