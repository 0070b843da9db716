import { Decimal } from 'decimal.js';
import { loadSource } from './load-source.mjs';

const { evaluateFactor } = await loadSource('factor-text.ts');
const { plainUnit, sameButForHarmlessCase } = await loadSource('spelling.ts');

function refuseIf(condition, message) {
  if (condition) throw new Error(message);
}

const alike = (first, second) => sameButForHarmlessCase(plainUnit(first), plainUnit(second));

/** No spelling may belong to two units of a kind, nor be written twice, nor be both sure and ambiguous. */
function checkSpellings(name, kind) {
  const taken = [];
  const take = (spelling, owner) => {
    const plain = plainUnit(spelling);
    refuseIf(plain === '', `${name}: ${owner} has the empty spelling "${spelling}"`);
    const clash = taken.find((other) => alike(plain, other.plain) || alike(other.plain, plain));
    refuseIf(clash !== undefined, `${name}: "${spelling}" of ${owner} is already a spelling of ${clash?.owner}`);
    taken.push({ plain, owner });
  };
  for (const [id, symbol, unitName, , aliases] of kind.units) {
    take(id, id);
    if (symbol !== '' && !alike(symbol, id)) take(symbol, id);
    if (!alike(unitName, id) && !alike(unitName, symbol)) take(unitName, id);
    for (const alias of aliases.split(' ').filter(Boolean)) take(alias, id);
  }
  for (const key of Object.keys(kind.ambiguous ?? {})) for (const spelling of key.split(' ')) take(spelling, `the ambiguous ${key}`);
}

/** Fail on what the types cannot see in one kind of data/. */
export function checkKind([name, kind], sources) {
  const ids = kind.units.map(([id]) => id);
  const [base] = kind.units;
  refuseIf(base === undefined || base[3] !== '1' || base[6] !== undefined, `${name}: the first unit is not the coherent one`);
  refuseIf(new Set(ids).size !== ids.length, `${name}: a unit id stands twice`);
  for (const id of kind.prefer) refuseIf(!ids.includes(id), `${name}: preferred unit ${id} does not exist`);
  for (const [id, , unitName, factor, , source, shift] of kind.units) {
    refuseIf(!/^[\x21-\x7e]+$/.test(id), `${name}: ${id} is not plain ASCII`);
    refuseIf(unitName === '', `${name}: ${id} has no name`);
    refuseIf(sources[source] === undefined, `${name}: ${id} has the unknown source ${source}`);
    const { over, under } = evaluateFactor(factor);
    refuseIf(!over.dividedBy(under).isPositive() || over.isZero(), `${name}: ${id} has the factor ${factor}`);
    refuseIf(!['reciprocal', undefined].includes(shift) && !new Decimal(Number(shift)).equals(shift), `${name}: ${id} loses its offset`);
  }
  for (const [key, list] of Object.entries(kind.ambiguous ?? {})) {
    refuseIf(list.length < 2, `${name}: ${key} is not ambiguous`);
    for (const id of list) refuseIf(!ids.includes(id), `${name}: candidate ${id} of ${key} does not exist`);
  }
  checkSpellings(name, kind);
}

/** Fail where kinds do not fit together: a unit of one dimension with two factors, a source that nothing uses. */
export function checkKinds(kinds, sources) {
  const factors = new Map();
  for (const [name, kind] of Object.entries(kinds)) {
    for (const [id, , , factor, , , shift] of kind.units) {
      const key = `${id} of ${kind.dimension.split(' ').sort().join(' ')}`;
      const { over, under } = evaluateFactor(factor);
      const known = factors.get(key);
      const same = known === undefined || known.over.times(under).equals(over.times(known.under));
      refuseIf(!same && shift === undefined, `${name}: ${id} has another factor than in ${known?.name}`);
      factors.set(key, { over, under, name });
    }
  }
  const used = new Set(Object.values(kinds).flatMap((kind) => kind.units.map((unit) => unit[5])));
  for (const key of Object.keys(sources)) refuseIf(!used.has(key), `source ${key} is not used`);
}
