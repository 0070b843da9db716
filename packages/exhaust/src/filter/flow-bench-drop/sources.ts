import { commonPractice } from '@wallflow/calculation';

export const opennessPractice = commonPractice(
  'A cleaned filter that reads below 85 % of its new value is not taken for clean: air goes past it or through a crack, or the flow was another',
  'Own mirror image of the upper limit of 115 %: cleaning takes out what came in and opens no wall, so a filter reads no lower than new but for scatter between parts.',
);
