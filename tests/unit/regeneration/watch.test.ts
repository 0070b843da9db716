import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

type Line = Readonly<Record<string, unknown>>;

const calculation = registry.get('regeneration-watch');

/** A burn that is well: 600 °C, 2000 rpm, the drop falling slowly. */
const burning = (time: number, change: Line = {}): Line => ({
  time: `${time} s`,
  inlet: '600 °C',
  outlet: '600 °C',
  pressureDrop: `${80 - time / 100} mbar`,
  engineSpeed: '2000 rpm',
  coolantTemperature: '90 °C',
  ...change,
});

function watch(log: readonly Line[]) {
  const result = calculation?.run({ log });
  if (!result?.ok) throw new Error(JSON.stringify(result?.ok === false ? result.issues : 'no calculation'));
  return result.outputs as { verdict: string; act: string; never: string; firstTime?: number; notWatched: string };
}

const without = (line: Line, ...keys: string[]) => Object.fromEntries(Object.entries(line).filter(([key]) => !keys.includes(key)));

describe('loss of the cooling flow during a burn', () => {
  it('is an alarm at once when the engine stops', () => {
    const found = watch([burning(0), burning(2), burning(4, { engineSpeed: '0 rpm', pressureDrop: '0 mbar' })]);
    expect(found).toMatchObject({ verdict: 'flow-lost', firstTime: 4 });
    expect(found.act).toMatch(/[Ss]tart it again/);
    expect(found.act).toMatch(/[Ee]xtinguisher/);
  });

  it('is an alarm at once when the engine drops towards idle, hot or not yet fully hot', () => {
    for (const outlet of ['641 °C', '480 °C']) {
      const found = watch([burning(0), burning(2), burning(4, { engineSpeed: '750 rpm', outlet })]);
      expect(found.verdict).toBe('flow-lost');
      expect(found.act).toMatch(/[Rr]aise the engine speed/);
    }
    expect(watch([burning(0), burning(2), burning(4, { engineSpeed: '1400 rpm' })]).verdict).toBe('flow-lost');
  });

  it('is an alarm when the log only begins at idle', () => {
    expect(watch([burning(0, { engineSpeed: '720 rpm' }), burning(2, { engineSpeed: '720 rpm' })]).verdict).toBe('flow-lost');
  });

  it('is seen by the pressure drop or the mass flow alone', () => {
    const blindToSpeed = (time: number, change: Line) => without(burning(time, change), 'engineSpeed');
    expect(watch([blindToSpeed(0, {}), blindToSpeed(5, { pressureDrop: '25 mbar' })]).verdict).toBe('flow-lost');
    const flow = (time: number, massFlow: string) => without(burning(time, { massFlow }), 'engineSpeed', 'pressureDrop');
    expect(watch([flow(0, '200 kg/h'), flow(5, '80 kg/h')]).verdict).toBe('flow-lost');
  });

  it('counts a filter of which no temperature is known as burning', () => {
    const log = [burning(0), burning(2, { engineSpeed: '0 rpm' })].map((line) => without(line, 'inlet', 'outlet'));
    expect(watch(log).verdict).toBe('flow-lost');
  });

  it('still sees it where the gas before the filter has cooled in the same line', () => {
    const line = (time: number, inlet: string, engineSpeed: string) =>
      without(burning(time, { inlet, engineSpeed }), 'outlet', 'pressureDrop');
    expect(watch([line(0, '610 °C', '2000 rpm'), line(30, '320 °C', '750 rpm')]).verdict).toBe('flow-lost');
  });

  it('is none when the filter has cooled before, nor when the speed wanders a little', () => {
    const cooled = [0, 30, 60, 90].map((time) => burning(time, { inlet: '260 °C', outlet: '300 °C' }));
    const stopped = burning(100, { inlet: '250 °C', outlet: '290 °C', engineSpeed: '0 rpm', pressureDrop: '0 mbar' });
    expect(watch([...cooled, stopped]).verdict).toBe('go-on');
    expect(watch([burning(0), burning(2, { engineSpeed: '1850 rpm' })]).verdict).toBe('go-on');
  });

  it('does not outrank fire or a lost oil pressure', () => {
    const stopped = { engineSpeed: '0 rpm', pressureDrop: '0 mbar' };
    expect(watch([burning(0), burning(2, { ...stopped, fire: true })]).verdict).toBe('stop-engine');
    expect(watch([burning(0), burning(2, { ...stopped, oilPressureLamp: true })]).verdict).toBe('stop-engine');
  });
});

describe('what counts as watched', () => {
  it('is only what a rule still sees in the last line', () => {
    expect(watch([burning(0), burning(2)]).notWatched).toBe('nothing');
    expect(watch([burning(0), without(burning(2), 'coolantTemperature')]).notWatched).toContain('coolant temperature');
    expect(watch([burning(0), without(burning(2), 'engineSpeed')]).notWatched).toContain('engine speed');
  });

  it('is not enough to go on where nothing would show that the flow is lost', () => {
    const log = [burning(0), burning(2)].map((line) => without(line, 'engineSpeed', 'pressureDrop'));
    expect(watch(log).verdict).toBe('unknown');
  });
});

describe('times of a log', () => {
  it.each([
    ['repeated', [0, 5, 5]],
    ['backward', [0, 5, 3]],
  ])('are refused where they are %s, with the line', (_, times) => {
    for (const id of ['regeneration-watch', 'regeneration-quality']) {
      const log = times.map((time) => (id === 'regeneration-watch' ? burning(time) : { time: `${time} min`, temperature: '600 °C' }));
      const result = registry.get(id)?.run({ ...(registry.get(id)?.example as object), log });
      expect(result?.ok === false ? result.issues[0] : undefined).toMatchObject({ code: 'inconsistent_inputs', path: ['log', 2, 'time'] });
    }
  });
});
