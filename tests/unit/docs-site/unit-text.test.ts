import { kinds } from '@wallflow/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  changeUnit,
  quantityEntry,
  quantityText,
  splitNumber,
  typedEntry,
  typedUnit,
  unitNote,
} from '../../../docs-site/src/calculator/unit-text.js';
import type { Entry } from '../../../docs-site/src/data/types.js';

describe('splitNumber', () => {
  it.each([
    ['360 mbar', '360', 'mbar'],
    ['360mbar', '360', 'mbar'],
    ['36,0 kPa', '36,0', 'kPa'],
    ['-11 °C', '-11', '°C'],
    ['360 ± 5 mbar', '360 ± 5', 'mbar'],
    ['360 +/- 5', '360 +/- 5', ''],
    ['360 +/- 5 mbar', '360 +/- 5', 'mbar'],
    ['36+/−0.5', '36+/−0.5', ''],
    ['３６０', '360', ''],
    ['2.4e-13 m2', '2.4e-13', 'm2'],
    ['3.0 1/m', '3.0', '1/m'],
    ['1 1/m', '1', '1/m'],
    ['90 %', '90', '%'],
    ['12', '12', ''],
  ])('parts %s', (text, number, unit) => {
    expect(splitNumber(text)).toEqual({ number, unit });
  });

  it.each(['', 'abc', 'mbar', '± °C'])('finds no number in "%s"', (text) => {
    expect(splitNumber(text)).toBeUndefined();
  });
});

describe('quantityText', () => {
  it('puts the selected unit behind a bare number', () => {
    expect(quantityText({ text: ' 360 ', unit: 'mbar' })).toBe('360 mbar');
    expect(quantityText({ text: '360 ± 5', unit: 'mbar' })).toBe('360 ± 5 mbar');
    expect(quantityText({ text: '360 +/- 5', unit: 'mbar' })).toBe('360 +/- 5 mbar');
  });

  it('leaves alone what carries a unit, is no number, or has none to add', () => {
    expect(quantityText({ text: '36 kPa', unit: 'mbar' })).toBe('36 kPa');
    expect(quantityText({ text: 'about 5', unit: 'mbar' })).toBe('about 5');
    expect(quantityText({ text: '1.05', unit: '1' })).toBe('1.05');
  });
});

describe('typedUnit', () => {
  it('reads the unit behind the number', () => {
    expect(typedUnit('differentialPressure', '36 kPa')).toBe('kPa');
    expect(typedUnit('temperature', '250 C')).toBe('degC');
  });

  it('gives none for a bare number, an unknown or an ambiguous unit', () => {
    expect(typedUnit('differentialPressure', '36')).toBeUndefined();
    expect(typedUnit('differentialPressure', '36 stones')).toBeUndefined();
    expect(typedUnit('volume', '36 gal')).toBeUndefined();
  });
});

describe('typedEntry', () => {
  const start = { text: '', unit: 'kg/h' };
  const typing = (texts: readonly string[]) => texts.reduce((entry, text) => typedEntry('massFlow', entry, text), start as Entry);

  it('moves the select to the unit that was typed', () => {
    expect(typing(['480 mg/s'])).toMatchObject({ text: '480 mg/s', unit: 'mg/s' });
  });

  it('leaves no half-typed unit behind when the text is refused', () => {
    // On the way to the refused unit another one is a unit.
    const refused = typing(['480', '480 mg/', '480 mg/s', '480 mg/st', '480 mg/stroke']);
    expect(refused).toMatchObject({ text: '480 mg/stroke', unit: 'kg/h' });
    expect(typedEntry('massFlow', refused, '480')).toMatchObject({ text: '480', unit: 'kg/h' });
    expect(typing(['480 mg/s', '']).unit).toBe('kg/h');
  });

  it('keeps the unit that was typed and accepted for the number that replaces it', () => {
    expect(typing(['480 mg/s', '490'])).toMatchObject({ text: '490', unit: 'mg/s' });
  });
});

describe('changeUnit', () => {
  it('converts the number', () => {
    expect(changeUnit('differentialPressure', { text: '360', unit: 'mbar' }, 'kPa')).toMatchObject({ text: '36', unit: 'kPa' });
    expect(changeUnit('temperature', { text: '250', unit: 'degC' }, 'degF')).toMatchObject({ text: '482', unit: 'degF' });
  });

  it('converts an uncertainty by its scale alone', () => {
    expect(changeUnit('temperature', { text: '250 ± 5', unit: 'degC' }, 'degF')).toMatchObject({ text: '482 ± 9', unit: 'degF' });
  });

  it('brings back the typed text when the typed unit is chosen again', () => {
    const typed = { text: '36,0', unit: 'kPa' };
    const there = changeUnit('differentialPressure', typed, 'psi');
    expect(there.text).toBe('5.2214');
    expect(changeUnit('differentialPressure', there, 'kPa')).toEqual(typed);
  });

  it('keeps a text that is no quantity', () => {
    expect(changeUnit('differentialPressure', { text: '36..0', unit: 'kPa' }, 'psi')).toEqual({ text: '36..0', unit: 'psi' });
    expect(changeUnit('differentialPressure', { text: '', unit: 'kPa' }, 'psi')).toEqual({ text: '', unit: 'psi' });
  });

  it('comes back to the typed text from any other unit', () => {
    const kind = kinds.differentialPressure;
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99999 }),
        fc.constantFrom(...kind.units),
        fc.constantFrom(...kind.units),
        (number, from, to) => {
          const typed = { text: String(number / 100), unit: from };
          const back = changeUnit(kind.kind, changeUnit(kind.kind, typed, to), from);
          expect(back).toEqual(typed);
        },
      ),
    );
  });
});

describe('a bare number that was typed here', () => {
  const typed = { text: '36', unit: 'mbar', own: true } as const;

  it('takes the unit that is chosen after it, and any other one after that', () => {
    const kept = changeUnit('differentialPressure', typed, 'kPa');
    expect(kept).toMatchObject({ text: '36', unit: 'kPa', own: true });
    expect(changeUnit('differentialPressure', kept, 'psi')).toMatchObject({ text: '36', unit: 'psi' });
    expect(changeUnit('differentialPressure', kept, 'mbar')).toEqual(typed);
  });

  it('keeps its ±', () => {
    expect(changeUnit('differentialPressure', { ...typed, text: '36 ± 2' }, 'kPa')).toMatchObject({ text: '36 ± 2', unit: 'kPa' });
  });

  it('is converted when its unit was typed as well', () => {
    expect(changeUnit('differentialPressure', { text: '36 kPa', unit: 'kPa', own: true }, 'mbar')).toMatchObject({ text: '360' });
  });
});

describe('unitNote', () => {
  it('says nothing while the unit is the one that was typed', () => {
    expect(unitNote('differentialPressure', { text: '360', unit: 'mbar' })).toBeUndefined();
    const there = changeUnit('differentialPressure', { text: '360', unit: 'mbar' }, 'kPa');
    expect(unitNote('differentialPressure', changeUnit('differentialPressure', there, 'mbar'))).toBeUndefined();
  });

  it('after a conversion offers to keep the number, and then to convert after all', () => {
    const converted = changeUnit('differentialPressure', { text: '360', unit: 'mbar' }, 'kPa');
    const note = unitNote('differentialPressure', converted);
    expect(note).toMatchObject({ text: 'Converted from 360 mbar.', action: 'Keep the number: 360 kPa' });
    const kept = note?.entry ?? converted;
    expect(kept).toMatchObject({ text: '360', unit: 'kPa', own: true });
    const back = unitNote('differentialPressure', kept);
    expect(back).toMatchObject({ text: 'Counts as 360 kPa.', action: 'Convert: 360 mbar is 36 kPa' });
    expect(back?.entry).toMatchObject({ text: '36', unit: 'kPa' });
  });
});

describe('quantityEntry', () => {
  it('reads every unit of every kind back into number and unit', () => {
    for (const kind of Object.values(kinds)) {
      for (const unit of kind.units) {
        if (unit === '1' || kind.kind === 'dilutionRatio') continue;
        expect(quantityEntry(kind.kind, `300 ${unit}`, kind.baseUnit), `${kind.kind} in ${unit}`).toEqual({ text: '300', unit });
      }
    }
  });

  it('keeps a text that it cannot read', () => {
    expect(quantityEntry('volume', '5 gal', 'L')).toEqual({ text: '5 gal', unit: 'L' });
  });
});
