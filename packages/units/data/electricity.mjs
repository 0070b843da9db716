export const kinds = {
  voltage: {
    label: 'voltage',
    dimension: 'M L2 T-3 I-1',
    prefer: ['V', 'mV'],
    units: [
      ['V', 'V', 'volt', '1', 'volts', 'SI'],
      ['mV', 'mV', 'millivolt', '0.001', 'millivolts', 'SI'],
    ],
  },
  electricCurrent: {
    label: 'electric current',
    dimension: 'I',
    prefer: ['A', 'mA'],
    units: [
      ['A', 'A', 'ampere', '1', 'amp amps amperes', 'SI'],
      ['mA', 'mA', 'milliampere', '0.001', '', 'SI'],
    ],
  },
  electricResistance: {
    label: 'electric resistance',
    dimension: 'M L2 T-3 I-2',
    prefer: ['ohm', 'kohm', 'Mohm'],
    units: [
      ['ohm', 'Ω', 'ohm', '1', 'ohms', 'SI'],
      ['mohm', 'mΩ', 'milliohm', '0.001', '', 'SI'],
      ['kohm', 'kΩ', 'kiloohm', '1000', 'kilohm', 'SI'],
      ['Mohm', 'MΩ', 'megaohm', '1000000', 'megohm', 'SI'],
    ],
  },
};
