import { BandedMatrix, DenseMatrix, NumericsError, type SystemMatrix, solveLinear, TridiagonalMatrix } from '@wallflow/numerics';
import { describe, expect, it } from 'vitest';
import { expectAllClose } from './expect-close.js';

const makers: Array<[string, (size: number) => SystemMatrix]> = [
  ['dense', (size) => new DenseMatrix(size)],
  ['banded', (size) => new BandedMatrix(size, 1, 1)],
  ['tridiagonal', (size) => new TridiagonalMatrix(size)],
];

function fill(matrix: SystemMatrix, rows: number[][]): SystemMatrix {
  for (const [i, row] of rows.entries()) {
    for (const [j, value] of row.entries()) if (value !== 0) matrix.set(i, j, value);
  }
  return matrix;
}

describe.each(makers)('%s matrix', (_, make) => {
  // Inverse known in closed form: the second difference matrix.
  it('solves the second difference system, whose solution is a parabola', () => {
    const n = 9;
    const matrix = make(n);
    for (let i = 0; i < n; i += 1) {
      matrix.set(i, i, 2);
      if (i > 0) matrix.set(i, i - 1, -1);
      if (i < n - 1) matrix.set(i, i + 1, -1);
    }
    const result = solveLinear(matrix, new Float64Array(n).fill(1));
    expect(result.status).toBe('solved');
    expectAllClose(
      result.solution,
      Array.from({ length: n }, (_, i) => ((i + 1) * (n - i)) / 2),
      1e-11,
    );
  });

  it('reads back what was set, zero elsewhere', () => {
    const matrix = fill(make(3), [
      [1, 2, 0],
      [3, 4, 5],
      [0, 6, 7],
    ]);
    expect([0, 1, 2].map((i) => [0, 1, 2].map((j) => matrix.get(i, j)))).toEqual([
      [1, 2, 0],
      [3, 4, 5],
      [0, 6, 7],
    ]);
    matrix.clear();
    expect(matrix.get(1, 1)).toBe(0);
  });

  it('makes a diagonal less another matrix', () => {
    const other = fill(make(2), [
      [1, 2],
      [3, 4],
    ]);
    const matrix = make(2);
    matrix.setToDiagonalMinus(Float64Array.of(10, 20), other);
    expect([matrix.get(0, 0), matrix.get(0, 1), matrix.get(1, 0), matrix.get(1, 1)]).toEqual([9, -2, -3, 16]);
  });

  it.each([
    [
      'dependent rows',
      [
        [1, 2],
        [2, 4],
      ],
    ],
    [
      'dependent rows up to rounding',
      [
        [0.1, 0.2],
        [0.3, 0.6],
      ],
    ],
    [
      'a row of zeros',
      [
        [0, 0],
        [1, 1],
      ],
    ],
    [
      'an entry that is not a number',
      [
        [1, Number.NaN],
        [1, 1],
      ],
    ],
    [
      'an infinite entry',
      [
        [1, 1],
        [1, Infinity],
      ],
    ],
  ])('says that it is singular: %s', (_name, rows) => {
    expect(solveLinear(fill(make(2), rows), [1, 1])).toEqual({ status: 'singular', solution: new Float64Array(0) });
  });

  it('is not misled by rows of very different size', () => {
    const result = solveLinear(
      fill(make(2), [
        [1e-30, 0],
        [1, 1],
      ]),
      [1e-30, 3],
    );
    expect(result.status).toBe('solved');
    expect(Array.from(result.solution)).toEqual([1, 2]);
  });

  it('refuses entries that do not exist, sizes without meaning and a wrong right-hand side', () => {
    expect(() => make(3).set(3, 3, 1)).toThrow(NumericsError);
    expect(() => make(3).set(-1, 0, 1)).toThrow(NumericsError);
    expect(() => make(0)).toThrow(NumericsError);
    expect(() => solveLinear(make(3), [1])).toThrow(expect.objectContaining({ code: 'unequal_lengths' }));
  });
});

describe('row swaps', () => {
  const needsSwap = [
    [0, 2, 0],
    [1, 1, 1],
    [0, 3, 1],
  ];
  it.each([
    ['dense', new DenseMatrix(3)],
    ['banded', new BandedMatrix(3, 1, 1)],
  ])('a zero pivot is no trouble for a %s matrix', (_, matrix) => {
    const result = solveLinear(fill(matrix, needsSwap), [4, 6, 9]);
    expect(Array.from(result.solution)).toEqual([1, 2, 3]);
  });

  it('a tridiagonal matrix says so instead of losing digits', () => {
    expect(solveLinear(fill(new TridiagonalMatrix(3), needsSwap), [4, 6, 9]).status).toBe('singular');
    const nearlyZero = [
      [1e-12, 1],
      [1, 1],
    ];
    expect(solveLinear(fill(new TridiagonalMatrix(2), nearlyZero), [1, 2]).status).toBe('singular');
  });
});

it('a band matrix refuses entries outside of its band, a dense one rows that are not square', () => {
  expect(() => new BandedMatrix(5, 1, 1).set(0, 2, 1)).toThrow(NumericsError);
  expect(() => new BandedMatrix(5, -1, 1)).toThrow(NumericsError);
  expect(() => DenseMatrix.fromRows([[1, 2], [3]])).toThrow(NumericsError);
});
