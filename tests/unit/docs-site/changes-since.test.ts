import { describe, expect, it } from 'vitest';
import { changesSince } from '../../../docs-site/src/calculator/changes-since.js';

const history = ['1.10.0', '1.2.1', '1.1.0'].map((version) => ({ version, what: `What ${version} changed.`, why: 'Why.' }));

describe('what a link with an older version is told', () => {
  it.each([
    ['1.0.0', ['1.10.0', '1.2.1', '1.1.0']],
    ['1.1.0', ['1.10.0', '1.2.1']],
    ['1.2.1', ['1.10.0']],
    ['1.9.0', ['1.10.0']],
    ['1.10.0', []],
    ['2.0.0', []],
  ])('after %s: the changes of %j', (version, newer) => {
    expect(changesSince(history, version).map((change) => change.version)).toEqual(newer);
  });
});
