import { commonPractice, type Source } from '@wallflow/calculation';

export const wang2021: Source = {
  type: 'paper',
  by: 'Wang, Tan, Zhu et al.',
  title: 'Soot loading prediction from collection mechanism and equivalent permeability, Fuel 286, 119409',
  year: 2021,
  mark: 'read',
};

export const acicularCeramicStudy: Source = {
  type: 'paper',
  by: 'Michigan Technological University',
  title: 'Experimental Studies of an Advanced Ceramic Diesel Particulate Filter, SAE',
  locator: 'abstract: model-calibrated wall permeabilities',
  mark: 'read',
};

export const unequalCells: Source = {
  type: 'derivation',
  title: 'Closed form of Konstandopoulos 2000 with the two channel counts and widths kept apart',
  mark: 'read',
  note: 'Soot and ash lie on the inlet side of the walls, gas passes the wall over the width of the narrower channel, each channel term has its own count and width; equal cells give the printed form.',
};

export const checkerboard: Source = {
  type: 'derivation',
  title: 'Square cells of two widths on one pitch, inlet and outlet cells in turn',
  mark: 'read',
  note: 'Diagonal neighbours of one sort stand one pitch apart both ways, so that a width a leaves √2 (s − a) of wall between their corners. With a + b = 2 (s − w) the wider cell stays below the pitch for ratios below s/(s − 2 w).',
};

export const flowConversion: Source = {
  type: 'derivation',
  title: 'Konstandopoulos 2008 Eqs A.3 to A.9 with the volume flow at another pressure than that behind the filter',
  mark: 'read',
  note: 'Pressure times volume flow is the same everywhere at one temperature. With the flow in the middle of the filter the sum is p − p1 = Δp(Q), the incompressible form without a correction.',
};

export const restrictionPractice = commonPractice('Judging a filter by pressure drop over viscosity times volume flow');

export const cakeCompaction: Source = {
  type: 'paper',
  by: 'Konstandopoulos, Papaioannou',
  title: 'Compaction of soot cakes, KONA Powder and Particle Journal 26, 36–65',
  year: 2008,
  locator: 'Fig. 14',
  mark: 'second-hand',
  note: 'Taken from notes of that work: five sizes of soot, onset at 155 to 205 mbar, solid fraction 10 to 16 % higher at the highest drop.',
};

export const yao2023: Source = {
  type: 'paper',
  by: 'Yao, Hu, Zhang, Zhang, Wu',
  title: 'Dynamic modeling and carbon load estimation of diesel particulate filters, Energy Sources A 45:4, 12165–12180',
  year: 2023,
  doi: '10.1080/15567036.2023.2269126',
  mark: 'read',
};

export const bissett1984: Source = {
  type: 'paper',
  by: 'Bissett',
  title:
    'Mathematical model of the thermal regeneration of a wall-flow monolith diesel particulate filter, Chemical Engineering Science 39, 1233–1244',
  year: 1984,
  mark: 'from memory',
  note: 'The equations were read as later papers restate them.',
};

export const liu2021: Source = {
  type: 'paper',
  by: 'Liu, Liu, He, Gong, Li',
  title: 'Exhaust characteristics and DOC-assisted active regeneration, Processes 9, 1403',
  year: 2021,
  mark: 'read',
};

export const deng2017: Source = {
  type: 'paper',
  by: 'Deng, Zheng, E and others',
  title: 'Influence of geometric characteristics of a diesel particulate filter, Applied Thermal Engineering 123, 61–73',
  year: 2017,
  mark: 'read',
  note: 'Wall permeability of 10⁻¹² m² as an input of a model, not a measurement; the most open bare wall that was found.',
};

export const konstandopoulosJohnson1989: Source = {
  type: 'paper',
  by: 'Konstandopoulos, Johnson',
  title: 'Wall-Flow Diesel Particulate Filters: Their Pressure Drop and Collection Efficiency, SAE 890405',
  year: 1989,
  mark: 'from memory',
  note: 'Unit-collector model. The partition coefficient between wall and cake, with the percolation factor, is that of SAE 2000-01-1016; both from memory.',
};

export const deepBedFit: Source = {
  type: 'derivation',
  title: 'Percolation factor fitted to two loaded heavy-duty curves of Konstandopoulos et al., SAE 2000-01-1016, Figs 10 and 11',
  mark: 'read',
  note: 'Curves read off the figures. With the published permeabilities and 8.15 kg/m³ in the wall one number is fitted per curve: 0.863 (EX-47) and 0.884 (EX-54).',
};

export const cakeOnset: Source = {
  type: 'paper',
  title: 'Single-layer filtration study, Journal of Chemistry 2016, 9612856',
  year: 2016,
  locator: 'abstract: a cake closes at a layer of 15 to 20 µm',
  mark: 'read',
  note: 'Stated for soot; taken over for ash.',
};

export const dropScaling: Source = {
  type: 'derivation',
  title: 'Konstandopoulos 2008 Eq. 8 grouped into a part with μQ and a part with ρQ²',
  mark: 'read',
  note: 'Darcy wall, cake and laminar channels make the first part; entrance, exit, pipes, bends and catalyst cones the second.',
};

export const sensorPractice = commonPractice('Zero, hose and response tests of a differential pressure sensor');
export const benchPractice = commonPractice(
  'A cleaned filter on a flow bench is accepted up to 110 to 115 % of its new value',
  'No published general criterion was found.',
);
export const budgetPractice = commonPractice(
  'Drops along an exhaust measured at one engine state and compared with the whole back pressure',
);
