// All bits of a 16-bit value set, or the least and the greatest signed one, are what a bus sends for "not available", for an
// error or for nothing at all (SAE J1939-71 reserves FFxx and FExx, from memory). A tool scales them like any other value.
const codes = [65_535, 65_534, 65_280, 65_024, 32_767, -32_768];
const decimalSteps = [1, 0.1, 0.01, 0.001];
const otherSteps = [0.5, 0.25, 0.2, 0.125, 0.05, 0.03125];

const lost = new Set<number>([2_147_483_647, 4_294_967_295]);
const add = (value: number) => lost.add(Number(value.toPrecision(12)));
for (const code of codes) for (const step of decimalSteps) add(code * step);
for (const code of [65_535, 65_534]) for (const step of otherSteps) add(code * step);
// With the offsets of the open standards: 0.1 °C from -40 °C, 0.03125 °C from -273 °C, 0.05 ppm from -200 ppm.
for (const code of [65_535, 65_534, 65_280, 65_024]) {
  add(code * 0.1 - 40);
  add(code * 0.03125 - 273);
  add(code * 0.05 - 200);
}

/** Whether a number, in the unit of its column, is one that stands for a signal that is not there. */
export function isLostSignal(value: number): boolean {
  return lost.has(value);
}
