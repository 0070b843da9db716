import type { Source } from '@wallflow/calculation';

export const unR24: Source = {
  type: 'regulation',
  by: 'UNECE',
  title: 'UN Regulation No. 24, Emissions of visible pollutants of compression-ignition engines',
  mark: 'from memory',
  note: 'The effective path of 0.430 m and the formula are also in UN R49 of 2008, which was read.',
};

export const unR49Smoke: Source = {
  type: 'regulation',
  by: 'UNECE',
  title: 'UN Regulation No. 49, Official Journal of the European Union L 103',
  year: 2008,
  locator: 'Annex 4, ELR test, worked example, p. 300',
  mark: 'read',
};

export const cfr86Smoke: Source = {
  type: 'regulation',
  by: 'US Environmental Protection Agency',
  title: '40 CFR 86.884-14, Calculations (smoke)',
  mark: 'read',
};

export const directive2014: Source = {
  type: 'regulation',
  by: 'European Parliament and Council',
  title: 'Directive 2014/45/EU on periodic roadworthiness tests, Annex I, 8.2.2.2 Opacity',
  year: 2014,
  mark: 'from memory',
  note: 'The limits 2.5 and 3.0 per metre were read in the older directive that it replaced.',
};

export const ukTestLimits: Source = {
  type: 'regulation',
  by: 'UK Driver and Vehicle Standards Agency',
  title: 'Annual test, default smoke limits and visible-smoke rule',
  year: 2018,
  mark: 'read',
  note: 'Read in trade articles of 2018 to 2020, not in the testing manual.',
};

export const californiaSmoke: Source = {
  type: 'regulation',
  by: 'California Air Resources Board',
  title: '13 CCR 2193, Periodic Smoke Inspection: snap-acceleration opacity',
  mark: 'read',
};

export const recommendation2023: Source = {
  type: 'regulation',
  by: 'European Commission',
  title: 'Recommendation (EU) 2023/688 on particle number measurement at periodic technical inspection, OJ L 90',
  year: 2023,
  mark: 'read',
  note: 'The limit was read in a news report of the recommendation; it is voluntary for the states.',
};

export const netherlandsParticleRule: Source = {
  type: 'regulation',
  by: 'Kingdom of the Netherlands',
  title: 'Notification 2019/0328/NL, particle counter test at the periodic inspection',
  year: 2019,
  mark: 'read',
};

export const germanyParticleRule: Source = {
  type: 'regulation',
  by: 'Bundesministerium für Digitales und Verkehr',
  title: 'Guideline for the exhaust test, particle count for Euro 6/VI diesel vehicles from 1 July 2023',
  year: 2023,
  mark: 'from memory',
  note: 'The date was read in a workshop guide; the limit of 250 000 per cubic centimetre is from memory.',
};

export const switzerlandParticleRule: Source = {
  type: 'regulation',
  by: 'Swiss Federal Roads Office',
  title: 'Particle number at the periodic inspection from 1 January 2023',
  year: 2022,
  mark: 'read',
  note: 'Read in a news report of March 2022.',
};

export const jrcPeriodicParticles: Source = {
  type: 'paper',
  by: 'European Commission Joint Research Centre',
  title: 'Evaluation of Measurement Procedures for Solid Particle Number at Periodic Technical Inspection, IJERPH 19(13), 7602',
  year: 2022,
  mark: 'read',
  note: 'Abstract.',
};

export const ukConstructionAndUse: Source = {
  type: 'regulation',
  by: 'UK Government',
  title: 'Road Vehicles (Construction and Use) Regulations, regulation 61A(3)',
  mark: 'read',
  note: 'Read in trade notes of 2017 and 2018, not in the regulation.',
};

export const eh40: Source = {
  type: 'regulation',
  by: 'UK Health and Safety Executive',
  title: 'EH40, Workplace exposure limits',
  year: 2018,
  mark: 'from memory',
  note: 'That the limits were introduced or lowered in 2018 was read in a trade article.',
};

export const dangerAtOnce: Source = {
  type: 'regulation',
  by: 'US National Institute for Occupational Safety and Health',
  title: 'Concentrations immediately dangerous to life or health (IDLH)',
  mark: 'from memory',
  note: 'The value for nitric oxide, 100 ppm, was read (May 1994).',
};

export const euExposureLimits: Source = {
  type: 'regulation',
  by: 'European Commission',
  title: 'Directive (EU) 2017/164, fourth list of indicative occupational exposure limit values',
  year: 2017,
  mark: 'from memory',
};

export const dieselExhaustLimit: Source = {
  type: 'regulation',
  by: 'European Parliament and Council',
  title: 'Directive (EU) 2019/130: diesel engine exhaust emissions, 0.05 mg/m³ as elemental carbon',
  year: 2019,
  mark: 'read',
  note: 'The value was read in notes of 2018 and 2019; the number of the directive is from memory.',
};

export const iarc2012: Source = {
  type: 'report',
  by: 'International Agency for Research on Cancer',
  title: 'Diesel engine exhaust is carcinogenic to humans (group 1)',
  year: 2012,
  mark: 'read',
  note: 'Read in the encyclopaedia of the European Agency for Safety and Health at Work.',
};

export const californiaZinc: Source = {
  type: 'report',
  title: 'Letter on waste ash from filters, filed with the Environmental Health Department of San Joaquin County, California',
  year: 2015,
  locator: 'total zinc of 5000 mg/kg and more makes the ash hazardous waste',
  mark: 'read',
};

export const washWaterGuidance: Source = {
  type: 'report',
  by: 'NetRegs and the environment agencies of Northern Ireland and Scotland',
  title: 'Guidance for Pollution Prevention 13, Vehicle washing and cleaning',
  year: 2017,
  mark: 'read',
};
