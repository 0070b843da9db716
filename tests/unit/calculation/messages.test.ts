import { issueText } from '@wallflow/calculation';
import { describe, expect, it } from 'vitest';

describe('the sentence of an issue', () => {
  it.each([
    ['the drop is below that of the clean filter', 'No result: the drop is below that of the clean filter.'],
    ['The drop is below that of the clean filter.', 'No result: The drop is below that of the clean filter.'],
    ['Which of the two is right?', 'No result: Which of the two is right?'],
  ])('ends in one stop: "%s"', (reason, sentence) => {
    expect(issueText({ code: 'no_solution', path: [], reason })).toBe(sentence);
  });

  it('ends in one stop where inputs contradict each other', () => {
    const paths = [['first'], ['second']];
    const issue = { code: 'inconsistent_inputs', path: ['first'], paths, reason: 'Give one of the two.' } as const;
    expect(issueText(issue)).toBe('first, second do not go together: Give one of the two.');
  });
});
