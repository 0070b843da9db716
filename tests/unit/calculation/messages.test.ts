import { issueText } from '@wallflow/calculation';
import { kinds } from '@wallflow/units';
import { describe, expect, it } from 'vitest';

describe('the sentence of an issue', () => {
  it.each([
    ['the drop is below that of the clean filter', 'No result: the drop is below that of the clean filter.'],
    ['The drop is below that of the clean filter.', 'No result: The drop is below that of the clean filter.'],
    ['Which of the two is right?', 'No result: Which of the two is right?'],
  ])('ends in one stop: "%s"', (reason, sentence) => {
    expect(issueText({ code: 'no_solution', path: [], reason })).toBe(sentence);
  });

  it('says of a unit per stroke what turns it into a flow, and suggests no unit that only looks like it', () => {
    for (const unit of ['mg/stroke', 'mg/str', 'mg/stk', 'mg/Hub', 'mg per stroke', 'mg/cyl']) {
      const parsed = kinds.massFlow.parse(`480 ${unit}`);
      if (parsed.ok || parsed.issue.code !== 'unknown_unit') throw new Error('taken as a flow');
      const said = issueText({ ...parsed.issue, path: ['Air mass flow'], given: `480 ${unit}` });
      expect(said).toContain(`"${unit}" counts one stroke of one cylinder`);
      expect(said).toMatch(/number of cylinders.*engine speed/);
      expect(said).not.toMatch(/did you mean/);
      // 480 mg, four cylinders, 2200 rpm: each fills every second revolution, 1100 times a minute.
      const [, factor = ''] = /× rpm × ([\d.]+) gives kg\/h/.exec(said) ?? [];
      expect(480 * 4 * 2200 * Number(factor)).toBeCloseTo(480e-6 * 4 * 1100 * 60, 9);
    }
    const slip = kinds.massFlow.parse('480 kg/hr.s');
    if (slip.ok || slip.issue.code !== 'unknown_unit') throw new Error('taken as a flow');
    expect(issueText({ ...slip.issue, path: ['Air mass flow'], given: '480 kg/hr.s' })).toMatch(/did you mean/);
  });

  it('ends in one stop where inputs contradict each other', () => {
    const paths = [['first'], ['second']];
    const issue = { code: 'inconsistent_inputs', path: ['first'], paths, reason: 'Give one of the two.' } as const;
    expect(issueText(issue)).toBe('first and second contradict each other: Give one of the two.');
  });
});
