/** Where the factors come from, by key. */
export const sources = {
  SI: 'BIPM, The International System of Units (SI Brochure), 9th edition, 2019',
  SP811: 'NIST Special Publication 811, 2008 edition, Appendix B',
  SP811C:
    'NIST Special Publication 811, 2008 edition, Appendix B.8 (column of liquid at a stated temperature, printed to five or six digits)',
  YARD: 'International yard and pound agreement, 1959: 1 yd = 0.9144 m, 1 lb = 0.45359237 kg',
  UKWM: 'UK Weights and Measures Act 1985: 1 gal = 4.54609 L',
  USGAL: 'US gallon: 231 in³, NIST Handbook 44, Appendix C',
  GN: 'Standard acceleration of free fall 9.80665 m/s², 3rd CGPM 1901',
  IT: 'Fifth International Conference on Properties of Steam, 1956: 1 cal_IT = 4.1868 J',
  JULIAN: 'Julian year of 365.25 days, IAU style manual, 1989 (from memory)',
  REF: 'Ideal-gas ratio of the named reference states',
  RATIO: 'Definition of the ratio',
};
