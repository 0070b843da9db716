import { commonPractice } from '@wallflow/calculation';
import { californiaZinc, washWaterGuidance } from '../sources.js';

/** What is held on the waste of filter work, with its basis. */
export const wasteRows = [
  {
    waste: 'filter ash, California',
    rule: 'Total zinc of 5000 mg/kg and more: hazardous waste, with a manifest.',
    source: californiaZinc,
  },
  {
    waste: 'filter ash, elsewhere',
    rule: 'Test it or take it as hazardous.',
    source: commonPractice('Ash without a test is taken as hazardous'),
  },
  {
    waste: 'wash water of a business',
    rule: 'Trade effluent: never into surface drains, into the foul sewer only with consent.',
    source: washWaterGuidance,
  },
  {
    waste: 'spoilt reductant',
    rule: 'Collect it; not into drains, soil or the tank of another vehicle.',
    source: commonPractice('Spoilt reductant is collected and disposed of by local law'),
  },
] as const;
