/** Pascal, kilopascal, millibar and bar may be marked as absolute, gauge or differential: `kPa(a)`, `mbar(g)`. */
const marked = (unit, marks) => marks.map((mark) => `${unit}(${mark})`).join(' ');

const pressureUnits = (marks, own) => [
  ['Pa', 'Pa', 'pascal', '1', `pascals N/m2 ${marked('Pa', marks)}`, 'SI'],
  ['hPa', 'hPa', 'hectopascal', '100', `${marked('hPa', marks)}`, 'SI'],
  ['kPa', 'kPa', 'kilopascal', '1000', `${marked('kPa', marks)}`, 'SI'],
  ['MPa', 'MPa', 'megapascal', '1000000', `N/mm2 ${marked('MPa', marks)}`, 'SI'],
  ['mbar', 'mbar', 'millibar', '100', `millibars ${marked('mbar', marks)}`, 'SI'],
  ['bar', 'bar', 'bar', '100000', 'bars', 'SI'],
  ['psi', 'psi', 'pound-force per square inch', '4.4482216152605/0.00064516', 'lbf/in2 lb/in2', 'SP811'],
  ['inH2O_4C', 'inH₂O (4 °C)', 'inch of water at 4 °C', '~249.082', 'inWC_4C', 'SP811C'],
  ['inH2O_60F', 'inH₂O (60 °F)', 'inch of water at 60 °F', '~248.84', 'inWC_60F', 'SP811C'],
  ['inH2O_conventional', 'inH₂O (conv.)', 'conventional inch of water', '249.08891', 'inWC_conventional inWC(conv)', 'SP811'],
  ['ftH2O_4C', 'ftH₂O (4 °C)', 'foot of water at 4 °C', '~2988.98', '', 'SP811C'],
  ['ftH2O_conventional', 'ftH₂O (conv.)', 'conventional foot of water', '2989.06692', '', 'SP811'],
  ['mmH2O_conventional', 'mmH₂O', 'conventional millimetre of water', '9.80665', 'mmWC mmWG mmWS', 'SP811'],
  ['cmH2O_conventional', 'cmH₂O', 'conventional centimetre of water', '98.0665', 'cmWC cmWS', 'SP811'],
  ['mmHg_conventional', 'mmHg', 'conventional millimetre of mercury', '133.322387415', '', 'SP811'],
  ['Torr', 'Torr', 'torr', '101325/760', '', 'SP811'],
  ['inHg_32F', 'inHg (32 °F)', 'inch of mercury at 32 °F', '~3386.38', 'inHg_0C', 'SP811C'],
  ['inHg_60F', 'inHg (60 °F)', 'inch of mercury at 60 °F', '~3376.85', '', 'SP811C'],
  ['inHg_conventional', 'inHg (conv.)', 'conventional inch of mercury', '3386.388640341', '', 'SP811'],
  ['atm', 'atm', 'standard atmosphere', '101325', 'atmosphere', 'SP811'],
  ['at', 'at', 'technical atmosphere', '98066.5', 'kgf/cm2 kp/cm2', 'SP811'],
  ...own,
];

const water = ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'];
const mercury = ['inHg_32F', 'inHg_60F', 'inHg_conventional'];
const ambiguous = {
  'inH2O inWC inWG inchH2O inchesH2O "H2O "WC "WG': water,
  'inHg inchHg inchesHg "Hg': mercury,
  'ftH2O ftWC': ['ftH2O_4C', 'ftH2O_conventional'],
};
const prefer = ['mbar', 'kPa', 'hPa', 'Pa', 'bar', 'psi', 'inH2O_conventional', 'inHg_conventional', 'mmHg_conventional'];
const dimension = 'M L-1 T-2';
const psi = '4.4482216152605/0.00064516';

export const kinds = {
  absolutePressure: {
    label: 'absolute pressure',
    note: 'Counted from vacuum; never negative.',
    dimension,
    floor: true,
    prefer: ['kPa', 'mbar', 'hPa', 'bar', 'Pa', 'psi', 'inHg_conventional', 'mmHg_conventional', 'atm'],
    ambiguous,
    units: pressureUnits(
      ['a', 'abs'],
      [
        ['psia', 'psia', 'pound-force per square inch absolute', psi, 'psi(abs)', 'SP811'],
        ['bara', 'bara', 'bar absolute', '100000', 'bar(abs)', 'SI'],
      ],
    ),
  },
  gaugePressure: {
    label: 'gauge pressure',
    note: 'Counted from the ambient pressure; `toAbsolute` needs that pressure.',
    dimension,
    prefer,
    ambiguous,
    units: pressureUnits(
      ['g', 'gauge'],
      [
        ['psig', 'psig', 'pound-force per square inch gauge', psi, 'psi(gauge)', 'SP811'],
        ['barg', 'barg', 'bar gauge', '100000', '', 'SI'],
      ],
    ),
  },
  differentialPressure: {
    label: 'differential pressure',
    note: 'Between two places, such as before and after a filter.',
    dimension,
    prefer,
    ambiguous,
    units: pressureUnits(
      ['d', 'diff'],
      [
        ['psid', 'psid', 'pound-force per square inch differential', psi, 'psi(diff)', 'SP811'],
        ['bard', 'bard', 'bar differential', '100000', 'bar(diff)', 'SI'],
      ],
    ),
  },
  pressureRate: {
    label: 'rate of pressure change',
    dimension: 'M L-1 T-3',
    prefer: ['mbar/min', 'Pa/s', 'kPa/min', 'mbar/s'],
    units: [
      ['Pa/s', 'Pa/s', 'pascal per second', '1', '', 'SI'],
      ['kPa/s', 'kPa/s', 'kilopascal per second', '1000', '', 'SI'],
      ['kPa/min', 'kPa/min', 'kilopascal per minute', '1000/60', '', 'SI'],
      ['mbar/s', 'mbar/s', 'millibar per second', '100', 'hPa/s', 'SI'],
      ['mbar/min', 'mbar/min', 'millibar per minute', '100/60', 'hPa/min', 'SI'],
      ['mbar/h', 'mbar/h', 'millibar per hour', '100/3600', 'hPa/h', 'SI'],
      ['psi/min', 'psi/min', 'pound-force per square inch per minute', `${psi}/60`, '', 'SP811'],
    ],
  },
  pressurePerVolumeFlow: {
    label: 'pressure drop per volume flow',
    dimension: 'M L-4 T-1',
    prefer: ['mbar/(m3/h)', 'Pa/(m3/h)', 'Pa.s/m3'],
    units: [
      ['Pa.s/m3', 'Pa·s/m³', 'pascal second per cubic metre', '1', 'Pa/(m3/s)', 'SI'],
      ['Pa/(m3/h)', 'Pa/(m³/h)', 'pascal per cubic metre per hour', '3600', 'Pa.h/m3', 'SI'],
      ['mbar/(m3/h)', 'mbar/(m³/h)', 'millibar per cubic metre per hour', '360000', 'mbar.h/m3', 'SI'],
    ],
  },
};
