import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import type uPlot from 'uplot';
import type { PlotData } from '../../logs/log-points.js';
import { Scroll } from '../parts/Scroll.js';
import styles from './logs.module.css';

interface LogPlotProps {
  readonly name: string;
  readonly data: PlotData;
}

/** Colours of the site, which its dark look changes. */
const colours = ['--link', '--heat', '--good', '--ink'] as const;
const dashes = [[], [8, 4], [2, 3], [10, 3, 2, 3]];
const height = 260;
const tableRows = 24;
const steps: Readonly<Record<string, number>> = { ArrowLeft: -2, ArrowRight: 2, PageUp: -40, PageDown: 40, Home: -1e9, End: 1e9 };

const number = (value: number | null | undefined) =>
  value === null || value === undefined ? 'none' : String(Number(value.toPrecision(4)));

/** What the plot shows at a place: least and greatest value of each channel in that stretch of time. */
function valuesAt({ time, series }: PlotData, place: number): string {
  const one = place - (place % 2);
  const parts = series.map(({ label, unit, values }) => {
    const [low, high] = [values[one], values[one + 1]];
    return `${label} ${low === high ? number(low) : `${number(low)} to ${number(high)}`} ${unit}`.trim();
  });
  return `${Math.round(time[one] ?? 0)} s: ${parts.join('; ')}`;
}

/** The log over time; arrow keys move the cursor, and a table holds the same for those who read. */
export function LogPlot({ name, data }: LogPlotProps): ReactNode {
  const holder = useRef<HTMLDivElement>(null);
  const plot = useRef<uPlot | undefined>(undefined);
  const [place, setPlace] = useState<number>();

  useEffect(() => {
    const element = holder.current;
    if (element === null) return;
    let wanted = true;
    const make = async () => {
      const { default: UPlot } = await import('uplot');
      if (!wanted) return;
      const units = [...new Set(data.series.map(({ unit }) => unit))];
      const look = getComputedStyle(element);
      const ink = look.color;
      const axis = { stroke: ink, grid: { stroke: '#8883' }, ticks: { stroke: '#8883' } };
      plot.current = new UPlot(
        {
          width: element.clientWidth,
          height,
          legend: { show: false },
          scales: { x: { time: false } },
          axes: [
            { ...axis, label: 'Time in s' },
            ...units
              .slice(0, 2)
              .map((unit, index) => ({ ...axis, scale: unit, label: unit, side: index === 0 ? (3 as const) : (1 as const) })),
          ],
          series: [
            {},
            ...data.series.map(({ unit }, index) => ({
              scale: unit,
              stroke: look.getPropertyValue(colours[index] ?? '--ink') || ink,
              dash: dashes[index] ?? [],
              width: 1.5,
            })),
          ],
        },
        [data.time as number[], ...data.series.map(({ values }) => values as (number | null)[])],
        element,
      );
    };
    void make().catch(() => undefined);
    const watch = new ResizeObserver(() => plot.current?.setSize({ width: element.clientWidth, height }));
    watch.observe(element);
    return () => {
      wanted = false;
      watch.disconnect();
      plot.current?.destroy();
      plot.current = undefined;
    };
  }, [data]);

  const move = (event: KeyboardEvent) => {
    const step = steps[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const last = data.time.length - 2;
    const next = place === undefined ? 0 : Math.min(last, Math.max(0, place + step));
    setPlace(next);
    const drawing = plot.current;
    drawing?.setCursor({ left: drawing.valToPos(data.time[next] ?? 0, 'x'), top: height / 3 });
  };
  const rows = Array.from(
    { length: Math.min(tableRows, data.time.length / 2) },
    (_, row) => 2 * Math.floor((row * data.time.length) / 2 / Math.min(tableRows, data.time.length / 2)),
  );
  return (
    <figure className={styles.figure}>
      <figcaption>
        {name} over time:{' '}
        {data.series.map(({ channel, label, unit }, index) => (
          <span key={channel} className={styles.key}>
            <svg width="28" height="8" aria-hidden="true">
              <line
                x1="0"
                x2="28"
                y1="4"
                y2="4"
                stroke={`var(${colours[index]})`}
                strokeWidth="2"
                strokeDasharray={dashes[index]?.join(' ')}
              />
            </svg>{' '}
            {label} in {unit}
          </span>
        ))}
      </figcaption>
      <div
        ref={holder}
        className={styles.plot}
        role="slider"
        aria-label={`${name} over time; the arrow keys move through it`}
        aria-valuemin={Math.round(data.time[0] ?? 0)}
        aria-valuemax={Math.round(data.time.at(-1) ?? 0)}
        aria-valuenow={Math.round(data.time[place ?? 0] ?? 0)}
        aria-valuetext={place === undefined ? 'no time chosen' : valuesAt(data, place)}
        tabIndex={0}
        onKeyDown={move}
        data-log-plot
      />
      <p aria-live="polite" className={styles.at}>
        {place === undefined ? '' : valuesAt(data, place)}
      </p>
      <details>
        <summary>The same as a table</summary>
        <Scroll label={`${name} over time`}>
          <table>
            <thead>
              <tr>
                <th scope="col">Time in s</th>
                {data.series.map(({ channel, label, unit }) => (
                  <th key={channel} scope="col">
                    {label}, least and greatest, in {unit}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={row}>
                  <th scope="row">{Math.round(data.time[row] ?? 0)}</th>
                  {data.series.map(({ channel, values }) => (
                    <td key={channel}>
                      {number(values[row])} to {number(values[row + 1])}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </Scroll>
      </details>
    </figure>
  );
}
