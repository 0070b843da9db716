import { readable } from '@wallflow/calculation';
import type { Drawing, Drawn } from '@wallflow/calculation/display';
import type { ReactNode } from 'react';
import styles from './picture.module.css';

type GaugeDrawing = Extract<Drawing, { type: 'gauge' }>;
type BarsDrawing = Extract<Drawing, { type: 'bars' }>;

const width = 320;
const beyond = 1.15;

function reach({ value, spread = 0 }: Drawn): [number, number] {
  return [value - spread, value + spread];
}

/** From where to where the line goes: all ends of bands and the reading with its ±, and zero. */
function scaleOf(numbers: readonly Drawn[]): (value: number) => number {
  const ends = numbers.flatMap(reach);
  const [low, high] = [Math.min(0, ...ends) * beyond, Math.max(0, ...ends) * beyond];
  return (value) => ((value - low) / (high - low || 1)) * width;
}

/** Each kind of band has a pattern of its own, so that it is told without colour too. */
function Patterns(): ReactNode {
  return (
    <defs>
      <pattern id="band-mind" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" className={styles.mind} />
        <path d="M0 8 8 0" className={styles.stroke} />
      </pattern>
      <pattern id="band-bad" width="6" height="6" patternUnits="userSpaceOnUse">
        <rect width="6" height="6" className={styles.bad} />
        <path d="M0 6 6 0M0 0 6 6" className={styles.stroke} />
      </pattern>
    </defs>
  );
}

const fills = { good: undefined, mind: 'url(#band-mind)', bad: 'url(#band-bad)' };

function GaugePicture({ drawing }: { readonly drawing: GaugeDrawing }): ReactNode {
  const { bands, reading } = drawing;
  const x = scaleOf([reading, ...bands.flatMap(({ upTo }) => upTo ?? [])]);
  const ends = bands.map(({ upTo }) => (upTo === undefined ? width : x(upTo.value)));
  const here = bands.find((band) => band.here)?.label;
  const [from, to] = reach(reading).map(x);
  const at = x(reading.value);
  return (
    <>
      <svg
        viewBox={`0 0 ${width} 44`}
        role="img"
        aria-label={`${drawing.label}: ${readable(reading.text)}, ${here ?? ''}.`}
        className={styles.svg}
      >
        <Patterns />
        {bands.map((band, index) => {
          const start = index === 0 ? 0 : (ends[index - 1] ?? 0);
          return (
            <rect
              key={band.label}
              x={start}
              y="20"
              width={Math.max(0, (ends[index] ?? width) - start)}
              height="18"
              className={styles[band.tone]}
              fill={fills[band.tone]}
            />
          );
        })}
        {ends.slice(0, -1).map((end) => (
          <line key={end} x1={end} x2={end} y1="17" y2="41" className={styles.end} />
        ))}
        {reading.spread === undefined ? null : <path d={`M${from} 6V14M${from} 10H${to}M${to} 6V14`} className={styles.spread} />}
        <path d={`M${at - 7} 4H${at + 7}L${at} 18Z`} className={styles.needle} />
        <line x1={at} x2={at} y1="18" y2="42" className={styles.needleLine} />
      </svg>
      <ol className={styles.bands}>
        {bands.map(({ label, tone, upTo, here: now }) => (
          <li key={label} data-here={now || undefined}>
            <svg aria-hidden="true" viewBox="0 0 16 12" width="16" height="12">
              <rect width="16" height="12" className={styles[tone]} fill={fills[tone]} />
            </svg>
            <span>
              {label}
              {upTo === undefined ? ', above' : `, up to ${readable(upTo.text)}`}
              {now ? ' ◂ here' : ''}
            </span>
          </li>
        ))}
      </ol>
    </>
  );
}

function BarsPicture({ drawing }: { readonly drawing: BarsDrawing }): ReactNode {
  const x = scaleOf(drawing.bars);
  const zero = x(0);
  return (
    <ul className={styles.bars}>
      {drawing.bars.map((bar) => {
        const [from, to] = reach(bar).map(x);
        const end = x(bar.value);
        return (
          <li key={bar.label}>
            <span>
              {bar.label}: <strong>{readable(bar.text)}</strong>
            </span>
            <svg aria-hidden="true" viewBox={`0 0 ${width} 16`} className={styles.svg}>
              <rect x={Math.min(zero, end)} y="1" width={Math.max(1, Math.abs(end - zero))} height="14" className={styles.bar} />
              {bar.spread === undefined ? null : <path d={`M${from} 3V13M${from} 8H${to}M${to} 3V13`} className={styles.spread} />}
            </svg>
          </li>
        );
      })}
    </ul>
  );
}

/** The answer as a picture: a reading among its bands, or readings beside each other. Its words stand with it. */
export function Picture({ drawing }: { readonly drawing: Drawing }): ReactNode {
  return (
    <figure className={styles.picture} data-picture={drawing.type}>
      {drawing.type === 'gauge' ? <GaugePicture drawing={drawing} /> : <BarsPicture drawing={drawing} />}
    </figure>
  );
}
