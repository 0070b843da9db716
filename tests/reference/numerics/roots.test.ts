import { findRoot } from '@wallflow/numerics';
import { describe, expect, it } from 'vitest';
import { expectCase } from './expect-case.js';
import { equations, rootOf } from './roots.cases.js';

describe('findRoot', () => {
  it.each(equations)('$id: $title', (reference) => {
    const { f, bracket } = reference.given;
    const found = findRoot(f, ...bracket);
    expect(found.status).toBe('converged');
    expect(found.iterations).toBeLessThan(20);
    expectCase(reference, rootOf(reference));
  });
});
