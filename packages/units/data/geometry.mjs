/**
 * Each row: id, symbol, name, exact factor to the base unit, aliases, source. The first row is the coherent SI unit.
 * Case, spaces, dots, brackets, underscores and superscripts are evened out before spellings are compared, and ids and
 * symbols are read as well, so an alias is needed only for another word or abbreviation.
 */
export const kinds = {
  length: {
    label: 'length',
    dimension: 'L',
    prefer: ['mm', 'in', 'm', 'cm', 'km', 'mi', 'ft', 'mil', 'um'],
    units: [
      ['m', 'm', 'metre', '1', 'metres', 'SI'],
      ['km', 'km', 'kilometre', '1000', 'kilometres', 'SI'],
      ['dm', 'dm', 'decimetre', '0.1', '', 'SI'],
      ['cm', 'cm', 'centimetre', '0.01', 'centimetres', 'SI'],
      ['mm', 'mm', 'millimetre', '0.001', 'millimetres', 'SI'],
      ['um', 'µm', 'micrometre', '0.000001', 'micron microns', 'SI'],
      ['nm', 'nm', 'nanometre', '0.000000001', '', 'SI'],
      ['in', 'in', 'inch', '0.0254', 'inches "', 'YARD'],
      ['ft', 'ft', 'foot', '0.3048', "feet '", 'YARD'],
      ['yd', 'yd', 'yard', '0.9144', 'yards', 'YARD'],
      ['mi', 'mi', 'mile', '1609.344', 'miles', 'YARD'],
      ['mil', 'mil', 'thousandth of an inch', '0.0000254', 'thou mils', 'YARD'],
    ],
  },
  area: {
    label: 'area',
    dimension: 'L2',
    prefer: ['m2', 'cm2', 'mm2', 'in2', 'ft2'],
    units: [
      ['m2', 'm²', 'square metre', '1', 'sqm', 'SI'],
      ['cm2', 'cm²', 'square centimetre', '0.0001', 'sqcm', 'SI'],
      ['mm2', 'mm²', 'square millimetre', '0.000001', 'sqmm', 'SI'],
      ['in2', 'in²', 'square inch', '0.0254*0.0254', 'sqin', 'YARD'],
      ['ft2', 'ft²', 'square foot', '0.3048*0.3048', 'sqft', 'YARD'],
    ],
  },
  volume: {
    label: 'volume',
    dimension: 'L3',
    prefer: ['L', 'mL', 'cm3', 'm3', 'in3', 'ft3', 'gal_US', 'gal_imp'],
    ambiguous: {
      'gal gals gallon gallons': ['gal_US', 'gal_imp'],
      'qt quart quarts': ['qt_US', 'qt_imp'],
      'pt pint pints': ['pt_US', 'pt_imp'],
      'floz fluidounce fluidounces oz': ['floz_US', 'floz_imp'],
    },
    units: [
      ['m3', 'm³', 'cubic metre', '1', 'cbm', 'SI'],
      ['L', 'L', 'litre', '0.001', 'litres dm3 ltr', 'SI'],
      ['dL', 'dL', 'decilitre', '0.0001', '', 'SI'],
      ['cL', 'cL', 'centilitre', '0.00001', '', 'SI'],
      ['mL', 'mL', 'millilitre', '0.000001', 'millilitres', 'SI'],
      ['uL', 'µL', 'microlitre', '0.000000001', '', 'SI'],
      ['cm3', 'cm³', 'cubic centimetre', '0.000001', 'cc ccm', 'SI'],
      ['mm3', 'mm³', 'cubic millimetre', '0.000000001', 'cmm', 'SI'],
      ['in3', 'in³', 'cubic inch', '0.000016387064', 'cuin ci cid', 'YARD'],
      ['ft3', 'ft³', 'cubic foot', '0.028316846592', 'cuft cf', 'YARD'],
      ['gal_US', 'US gal', 'US gallon', '0.003785411784', 'USgallons', 'USGAL'],
      ['qt_US', 'US qt', 'US liquid quart', '0.000946352946', 'USquart USquarts', 'USGAL'],
      ['pt_US', 'US pt', 'US liquid pint', '0.000473176473', 'USpint USpints', 'USGAL'],
      ['floz_US', 'US fl oz', 'US fluid ounce', '0.0000295735295625', '', 'USGAL'],
      ['gal_imp', 'imp gal', 'imperial gallon', '0.00454609', 'galUK UKgal imperialgallons', 'UKWM'],
      ['qt_imp', 'imp qt', 'imperial quart', '0.0011365225', 'qtUK UKqt', 'UKWM'],
      ['pt_imp', 'imp pt', 'imperial pint', '0.00056826125', 'ptUK UKpt', 'UKWM'],
      ['floz_imp', 'imp fl oz', 'imperial fluid ounce', '0.0000284130625', 'flozUK UKfloz', 'UKWM'],
    ],
  },
  cellDensity: {
    label: 'cell density',
    dimension: 'L-2',
    prefer: ['cpsi', '1/cm2', '1/m2'],
    units: [
      ['1/m2', '1/m²', 'cells per square metre', '1', 'cells/m2 m-2', 'SI'],
      ['1/cm2', '1/cm²', 'cells per square centimetre', '10000', 'cells/cm2 cm-2 cpscm', 'SI'],
      ['cpsi', 'cpsi', 'cells per square inch', '1/0.00064516', 'cells/in2 1/in2 cells/sqin', 'YARD'],
    ],
  },
  permeability: {
    label: 'permeability',
    note: 'Of a porous wall or layer, by the law of Darcy.',
    dimension: 'L2',
    prefer: ['m2', 'um2', 'mD'],
    units: [
      ['m2', 'm²', 'square metre', '1', '', 'SI'],
      ['cm2', 'cm²', 'square centimetre', '0.0001', '', 'SI'],
      ['um2', 'µm²', 'square micrometre', '0.000000000001', '', 'SI'],
      ['darcy', 'D', 'darcy', '0.000000000001/1.01325', 'Da', 'SP811'],
      ['mD', 'mD', 'millidarcy', '0.000000000000001/1.01325', '', 'SP811'],
    ],
  },
  inertialCoefficient: {
    label: 'inertial (Forchheimer) coefficient',
    note: 'The coefficient β in dp/dx = µu/k + βρu².',
    dimension: 'L-1',
    prefer: ['1/m'],
    units: [['1/m', '1/m', 'per metre', '1', 'm-1', 'SI']],
  },
  absorptionCoefficient: {
    label: 'absorption coefficient',
    note: 'Light absorption of smoke by length of path.',
    dimension: 'L-1',
    prefer: ['1/m'],
    units: [
      ['1/m', '1/m', 'per metre', '1', 'm-1', 'SI'],
      ['1/ft', '1/ft', 'per foot', '1/0.3048', 'ft-1', 'YARD'],
    ],
  },
};
