import { log, type Row, usualCells, usualTitles } from '../drive.js';
import { type CorpusFile, clock, latin1, utf8, utf16 } from './shape.js';

const rest = (row: Row) => usualCells(row).slice(1);
const others = usualTitles.slice(1);
const german = [
  'Zeit [s]',
  'Motordrehzahl [1/min]',
  'Luftmassenstrom [kg/h]',
  'Abgastemperatur vor Partikelfilter [°C]',
  'Differenzdruck Partikelfilter [mbar]',
];
const bare = ['Time', 'Engine speed', 'Air mass flow', 'Exhaust gas temperature before DPF', 'DPF differential pressure'];
const units = ['s', 'rpm', 'kg/h', '°C', 'mbar'];
const withTime = (title: string, time: (row: Row) => string | number) =>
  log({ titles: [title, ...others], cells: (row) => [time(row), ...rest(row)] });

const right = (name: string, content: () => string | Uint8Array): CorpusFile => ({ name, content, expect: {} });

/** Ordinary logs in the shapes that tools, spreadsheets and people give them. Each says the same; nothing is asked or left out. */
export const readRight: readonly CorpusFile[] = [
  right('titles with units in square brackets', () => log()),
  right('our own channel names', () =>
    log({ titles: ['time [s]', 'engineSpeed [rpm]', 'airMassFlow [kg/h]', 'gasTemperature [°C]', 'pressureDrop [mbar]'] }),
  ),
  right('units in round brackets', () =>
    log({ titles: ['Time (s)', 'Engine RPM (rpm)', 'MAF (kg/h)', 'Exhaust Temp Before DPF (°C)', 'DPF Diff. Press. (hPa)'] }),
  ),
  right('units in curly and pointed brackets', () =>
    log({ titles: ['Time {s}', 'Engine speed <rpm>', 'MAF {kg/h}', 'EGT before DPF <°C>', 'DPF dp {mbar}'] }),
  ),
  right('units behind a comma, titles in quotation marks', () =>
    log({ titles: ['"Time, s"', '"Engine speed, rpm"', '"MAF, kg/h"', '"EGT before DPF, °C"', '"DPF differential pressure, mbar"'] }),
  ),
  right('units behind a slash', () =>
    log({ titles: ['t / s', 'n / 1/min', 'Air mass flow / kg/h', 'EGT before DPF / °C', 'DPF dp / mbar'] }),
  ),
  right('units as the last word', () =>
    log({ titles: ['Time s', 'Engine speed rpm', 'MAF kg/h', 'EGT before DPF °C', 'DPF differential pressure mbar'] }),
  ),
  right('units behind an underscore', () => log({ titles: ['time_s', 'engine_speed_rpm', 'maf_kg/h', 'egt_before_dpf_C', 'dpf_dp_mbar'] })),
  right('units in a row of their own', () => log({ titles: bare, units })),
  right('units in a row of their own, in brackets', () => log({ titles: bare, units: units.map((unit) => `[${unit}]`) })),
  right('units in a row of their own, a cell empty', () =>
    log({ titles: [...bare, 'Remark'], units: [...units, ''], cells: (row) => [...usualCells(row), 'ok'] }),
  ),
  right('units in every cell', () =>
    log({ titles: bare, cells: (row) => usualCells(row).map((cell, index) => `${cell} ${units[index]}`) }),
  ),
  right('titles in capitals', () => log({ titles: usualTitles.map((title) => title.toUpperCase()) })),
  right('titles in small letters', () =>
    log({ titles: ['time [s]', 'engine speed [rpm]', 'maf [kg/h]', 'exhaust temp before dpf [°c]', 'dpf diff press [mbar]'] }),
  ),
  right('blanks around titles and cells', () =>
    log({ titles: usualTitles.map((title) => `  ${title} `), line: (cells) => cells.map((cell) => ` ${cell}  `).join(',') }),
  ),
  right('German titles', () => log({ titles: german })),
  right('German titles, decimal commas, semicolons', () => log({ titles: german, separator: ';', decimal: ',' })),
  right('German titles with umlauts and abbreviations', () =>
    log({ titles: ['Zeit (Sek)', 'Drehzahl (U/min)', 'Luftmasse (kg/h)', 'Abgastemp. v. DPF (Grad C)', 'DPF-Differenzdruck (mbar)'] }),
  ),
  right('German compounds', () =>
    log({
      titles: [
        'Messzeit [s]',
        'Motordrehzahl [U/min]',
        'Luftmassenstrom [kg/h]',
        'Partikelfiltereintrittstemperatur [°C]',
        'Partikelfilterdifferenzdruck [mbar]',
      ],
    }),
  ),
  right('semicolons', () => log({ separator: ';' })),
  right('semicolons and decimal commas', () => log({ separator: ';', decimal: ',' })),
  right('tabs', () => log({ separator: '\t' })),
  right('tabs and decimal commas', () => log({ separator: '\t', decimal: ',' })),
  right('upright strokes', () => log({ separator: '|' })),
  right('line ends of two signs', () => log({ lineEnd: '\r\n' })),
  right('line ends of a lone carriage return', () => log({ lineEnd: '\r' })),
  right('no line end at the end', () => log({ endsWithLine: false })),
  right('every cell in quotation marks', () => log({ line: (cells) => cells.map((cell) => `"${cell}"`).join(',') })),
  right('decimal commas in quotation marks between commas', () =>
    log({ decimal: ',', line: (cells) => cells.map((cell) => `"${cell}"`).join(',') }),
  ),
  right('titles in quotation marks with a quotation mark inside', () =>
    log({ titles: [...usualTitles, '"Remark ""yard"""'], cells: (row) => [...usualCells(row), '"the ""second"" run"'] }),
  ),
  right('a title with a line end inside', () => log({ titles: ['Time [s]', '"Engine\nspeed [rpm]"', ...usualTitles.slice(2)] })),
  right('a remark with a line end inside', () =>
    log({ titles: [...usualTitles, 'Remark'], cells: (row) => [...usualCells(row), '"one\ntwo"'] }),
  ),
  right('the mark of UTF-8', () => utf8(`\ufeff${log()}`)),
  right('UTF-16 with its mark', () => utf16(log())),
  right('UTF-16, the other byte order', () => utf16(log(), true, true)),
  right('UTF-16 without its mark', () => utf16(log(), false)),
  right('UTF-16, the other byte order, without its mark', () => utf16(log(), false, true)),
  right('Latin-1 degree signs', () => latin1(log())),
  right('Latin-1 umlauts and decimal commas', () =>
    latin1(
      log({
        separator: ';',
        decimal: ',',
        titles: [...german, 'K\u00fchlmitteltemperatur [\u00b0C]'],
        cells: (row) => [...usualCells(row), 84 + (row.time % 3)],
      }),
    ),
  ),
  right('degree signs that another program has lost', () => log({ titles: usualTitles.map((title) => title.replace('°', '?')) })),
  right('a line that tells the separator', () => log({ separator: ';', above: ['sep=;'] })),
  right('a line that tells the separator, with separators behind', () => log({ above: ['sep=,,,,'] })),
  right('a line of title above', () => log({ above: ['Recording in the yard, bus of the county'] })),
  right('lines about the vehicle above', () =>
    log({
      separator: ';',
      above: ['Vehicle;bus, 7.5 t', 'First used;March 2016', 'Odometer [km];146300', 'Engine speed at idle;700 rpm', ''],
    }),
  ),
  right('comments above', () => log({ above: ['# recorded in the yard', '# engine warm', '// second try'] })),
  right('blank lines above', () => log({ above: ['', '', ''] })),
  right('blank lines among the rows', () => log({ line: (cells, index) => (index % 20 === 7 ? ['', cells.join(',')] : cells.join(',')) })),
  right('lines of separators alone among the rows', () =>
    log({ line: (cells, index) => (index % 20 === 7 ? [',,,,', cells.join(',')] : cells.join(',')) }),
  ),
  right('a separator at the end of every line', () => log({ titles: [...usualTitles, ''], line: (cells) => `${cells.join(',')},` })),
  right('a separator at the end of every row, not of the titles', () => log({ line: (cells) => `${cells.join(',')},` })),
  right('other columns between', () =>
    log({
      titles: ['Time [s]', 'Gear', ...others.slice(0, 2), 'Radio volume', ...others.slice(2)],
      cells: (row) => [row.time, 'N', row.speed, row.air, '=1+1', row.temperature, row.drop],
    }),
  ),
  right('columns in another order', () => log({ titles: [...usualTitles].reverse(), cells: (row) => [...usualCells(row)].reverse() })),
  right('a running number before', () => log({ titles: ['No.', ...usualTitles], cells: (row, index) => [index + 1, ...usualCells(row)] })),
  right('a thousand columns more', () =>
    log({
      titles: [...usualTitles, ...Array.from({ length: 1000 }, (_, index) => `X${index}`)],
      cells: (row) => [...usualCells(row), ...Array.from({ length: 1000 }, () => 1)],
    }),
  ),
  right('set values beside the measured ones', () =>
    log({ titles: [...usualTitles, 'Engine speed desired [rpm]'], cells: (row) => [...usualCells(row), 900] }),
  ),
  right('milliseconds', () => withTime('Time [ms]', ({ time }) => time * 1000)),
  right('minutes', () => withTime('Time [min]', ({ time }) => (time / 60).toFixed(6))),
  right('hours', () => withTime('Time [h]', ({ time }) => (time / 3600).toFixed(8))),
  right('time as a title of seconds', () => withTime('Seconds', ({ time }) => time)),
  right('clock', () => withTime('Clock', ({ time }) => clock(time))),
  right('clock with a fraction', () => withTime('Uhrzeit', ({ time }) => `${clock(time)}.250`)),
  right('clock with a comma before the fraction', () =>
    log({ separator: ';', decimal: ',', titles: ['Uhrzeit', ...others], cells: (row) => [`${clock(row.time)},5`, ...rest(row)] }),
  ),
  right('clock of twelve hours', () => withTime('Time', ({ time }) => `${clock(time).replace(/^14/, '2')} PM`)),
  right('clock through midnight', () =>
    withTime('Clock', ({ time }) => {
      const second = (86_400 - 50 + time) % 86_400;
      return new Date(second * 1000).toISOString().slice(11, 19);
    }),
  ),
  right('minutes and seconds with a fraction', () =>
    withTime('Time', ({ time }) => `${String(Math.floor(time / 60)).padStart(2, '0')}:${String(time % 60).padStart(2, '0')}.0`),
  ),
  right('date and clock', () => withTime('Timestamp', ({ time }) => `2026-11-30 ${clock(time)}`)),
  right('date and clock as in ISO 8601', () => withTime('Timestamp', ({ time }) => `2026-11-30T${clock(time)}Z`)),
  right('date and clock in German', () => withTime('Zeitstempel', ({ time }) => `30.11.2026 ${clock(time)}`)),
  right('date and clock, the month first', () => withTime('Time', ({ time }) => `11/30/2026 ${clock(time)}`)),
  right('date and clock in columns of their own', () =>
    log({ titles: ['Date', 'Time', ...others], cells: (row) => ['30.11.2026', clock(row.time), ...rest(row)] }),
  ),
  right('date and clock over the turn of a month', () =>
    withTime('Time', ({ time }) => {
      const moment = new Date(Date.UTC(2026, 8, 30, 23, 59, 0) + time * 1000).toISOString();
      return `${moment.slice(5, 7)}/${moment.slice(8, 10)}/2026 ${moment.slice(11, 19)}`;
    }),
  ),
  right('seconds since 1970', () => withTime('timestamp', ({ time }) => 1_796_043_600 + time)),
  right('milliseconds since 1970', () => withTime('timestamp', ({ time }) => (1_796_043_600 + time) * 1000)),
  right('seconds since 1970 with a fraction', () => withTime('Unix time', ({ time }) => (1_796_043_600.25 + time).toFixed(2))),
  right('air in g/s', () =>
    log({
      titles: usualTitles.map((title) => title.replace('kg/h', 'g/s')),
      cells: (row) => [row.time, row.speed, (row.air / 3.6).toFixed(4), row.temperature, row.drop],
    }),
  ),
  right('temperature in °F', () =>
    log({
      titles: usualTitles.map((title) => title.replace('°C', '°F')),
      cells: (row) => [row.time, row.speed, row.air, (row.temperature * 1.8 + 32).toFixed(2), row.drop],
    }),
  ),
  right('temperature in K', () =>
    log({
      titles: usualTitles.map((title) => title.replace('°C', 'K')),
      cells: (row) => [row.time, row.speed, row.air, (row.temperature + 273.15).toFixed(2), row.drop],
    }),
  ),
  right('pressure in kPa', () =>
    log({
      titles: usualTitles.map((title) => title.replace('mbar', 'kPa')),
      cells: (row) => [row.time, row.speed, row.air, row.temperature, (row.drop / 10).toFixed(3)],
    }),
  ),
  right('pressure in psi', () =>
    log({
      titles: usualTitles.map((title) => title.replace('mbar', 'psi')),
      cells: (row) => [row.time, row.speed, row.air, row.temperature, (row.drop / 68.947_572_9).toFixed(5)],
    }),
  ),
  right('pressure in inches of water', () =>
    log({
      titles: usualTitles.map((title) => title.replace('mbar', 'inH2O')),
      cells: (row) => [row.time, row.speed, row.air, row.temperature, (row.drop / 2.490_889).toFixed(4)],
    }),
  ),
  right('speed in 1/s', () =>
    log({
      titles: usualTitles.map((title) => title.replace('rpm', '1/s')),
      cells: (row) => [row.time, (row.speed / 60).toFixed(5), row.air, row.temperature, row.drop],
    }),
  ),
  right('powers of ten', () =>
    log({ cells: (row) => [row.time, row.speed.toExponential(4), row.air, row.temperature.toExponential(4), row.drop.toExponential()] }),
  ),
  right('plus signs', () => log({ cells: (row) => usualCells(row).map((cell) => `+${cell}`) })),
  right('leading zeros', () => log({ cells: (row) => usualCells(row).map((cell) => `00${cell}`) })),
  right('thousands parted by an apostrophe', () =>
    log({
      cells: (row) => [
        row.time,
        row.speed > 999 ? `${String(row.speed).slice(0, 1)}'${String(row.speed).slice(1)}` : row.speed,
        row.air,
        row.temperature,
        row.drop,
      ],
    }),
  ),
  right('thousands parted by a narrow space', () =>
    log({
      cells: (row) => [
        row.time,
        row.speed > 999 ? `${String(row.speed).slice(0, 1)}\u202f${String(row.speed).slice(1)}` : row.speed,
        row.air,
        row.temperature,
        row.drop,
      ],
    }),
  ),
  right('more decimals than a double holds', () =>
    log({ cells: (row) => [row.time, `${row.speed}.00000000000000000001`, row.air, row.temperature, row.drop] }),
  ),
  right('the sign of minus that is not on a keyboard', () =>
    log({ titles: [...usualTitles, 'Ambient temperature [°C]'], cells: (row) => [...usualCells(row), '−5'] }),
  ),
  right('channels in turn, each on a line of its own', () =>
    log({
      line: ([time, ...cells]) =>
        cells.map((cell, index) =>
          [String(Number(time) + index * 0.2), ...cells.map((_, other) => (other === index ? cell : ''))].join(','),
        ),
    }),
  ),
  right('one value a line', () =>
    log({
      titles: ['Time [s]', 'Name', 'Value', 'Unit'],
      line: ([time, ...cells]) => cells.map((cell, index) => `${time},${bare[index + 1]},${cell},${units[index + 1]}`),
    }),
  ),
  right('one value a line, semicolons, capitals, decimal commas', () =>
    log({
      titles: ['SECONDS', 'PID', 'VALUE', 'UNITS'],
      separator: ';',
      decimal: ',',
      line: ([time, ...cells]) => cells.map((cell, index) => `${time};${bare[index + 1]};${cell};${units[index + 1]}`),
    }),
  ),
  right('one value a line, the unit in the name', () =>
    log({
      titles: ['Time [s]', 'Signal', 'Value'],
      line: ([time, ...cells]) => cells.map((cell, index) => `${time},${usualTitles[index + 1]},${cell}`),
    }),
  ),
  right('one value a line, names that are no channel between', () =>
    log({
      titles: ['Time [s]', 'Name', 'Value', 'Unit'],
      line: ([time, ...cells]) => [
        ...cells.map((cell, index) => `${time},${bare[index + 1]},${cell},${units[index + 1]}`),
        `${time},Radio volume,11,%`,
      ],
    }),
  ),
];
