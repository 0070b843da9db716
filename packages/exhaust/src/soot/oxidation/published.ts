/** Activation energies that are published without all that a rate needs; for comparison. */
export const publishedEnergies = [
  {
    oxidant: 'O₂',
    energy: '178.5 kJ/mol',
    from: 'Konstandopoulos, Papaioannou 2008, p. 52: uncatalysed, E/R 21 000 K to 22 000 K (middle shown)',
  },
  { oxidant: 'O₂', energy: '150 kJ/mol', from: 'Konstandopoulos et al. 2000, Table 8: catalysed disk, E/R 18 040 K' },
  { oxidant: 'NO₂', energy: '121.8 kJ/mol', from: 'Konstandopoulos et al. 2000, Table 8: catalysed disk, E/R 14 650 K' },
  { oxidant: 'O₂', energy: '120 kJ/mol', from: 'Yao et al. 2023, Table 4: whole-filter model; factor in units of its own' },
  { oxidant: 'O₂', energy: '97 kJ/mol', from: 'Lizarraga et al. 2011: with oxidation catalyst, ±5 kJ/mol' },
  { oxidant: 'O₂', energy: '101 kJ/mol', from: 'Lizarraga et al. 2011: without oxidation catalyst, ±8 kJ/mol' },
  { oxidant: 'O₂', energy: '110 kJ/mol', from: 'Kim, Fletcher, Zachariah 2005: diesel soot, about' },
  { oxidant: 'O₂', energy: '162 kJ/mol', from: 'Kim, Fletcher, Zachariah 2005: flame soot, ±3 kJ/mol' },
  { oxidant: 'NO₂', energy: '46.5 kJ/mol', from: 'Shrivastava et al. 2010: 500 °C to 950 °C in nitrogen, law with √T' },
  { oxidant: 'O₂', energy: '408 kJ/mol', from: 'Bai et al. 2016, Table 6 as printed: a misprint for 108 kJ/mol' },
] as const;
