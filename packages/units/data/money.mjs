export const kinds = {
  money: {
    label: 'money',
    note: 'Amounts in one currency, which no unit names.',
    dimension: '',
    prefer: ['1'],
    units: [['1', '', 'one in your currency', '1', '', 'RATIO']],
  },
};
