import type { ReactNode } from 'react';
import type { ReliabilityView } from '../../data/estimate-evidence.js';
import styles from './plot.module.css';

const size = { width: 360, height: 340, left: 58, right: 16, top: 12, bottom: 46 };
const ticks = [0, 0.2, 0.4, 0.6, 0.8, 1];
const x = (share: number) => size.left + share * (size.width - size.left - size.right);
const y = (share: number) => size.height - size.bottom - share * (size.height - size.top - size.bottom);

/** Stated chances against how often they came true; on the diagonal they are right. The table beside it has the numbers. */
export function Reliability({
  id,
  title,
  bins,
}: {
  readonly id: string;
  readonly title: string;
  readonly bins: readonly ReliabilityView[];
}): ReactNode {
  const off = [...bins].sort((a, b) => Math.abs(b.seen - b.stated) - Math.abs(a.seen - a.stated))[0];
  const words = off === undefined ? '' : ` Furthest off: stated ${off.statedText}, came true ${off.seenText}.`;
  return (
    <figure className={styles.figure}>
      <svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-labelledby={`${id}-title ${id}-desc`} className={styles.plot}>
        <title id={`${id}-title`}>{title}</title>
        <desc id={`${id}-desc`}>{`Points on the diagonal are chances that came true as often as stated.${words}`}</desc>
        <g className={styles.grid}>
          {ticks.map((tick) => (
            <g key={tick}>
              <line x1={x(0)} x2={x(1)} y1={y(tick)} y2={y(tick)} />
              <line x1={x(tick)} x2={x(tick)} y1={y(0)} y2={y(1)} />
            </g>
          ))}
          <line x1={x(0)} y1={y(0)} x2={x(1)} y2={y(1)} strokeDasharray="6 4" />
        </g>
        <g className={styles.ticks}>
          {ticks.map((tick) => (
            <g key={tick}>
              <text x={size.left - 6} y={y(tick)} dy="0.35em" textAnchor="end">
                {`${100 * tick} %`}
              </text>
              <text x={x(tick)} y={size.height - size.bottom + 18} textAnchor="middle">
                {`${100 * tick} %`}
              </text>
            </g>
          ))}
          <text x={x(0.5)} y={size.height - 6} textAnchor="middle">
            Chance that was stated
          </text>
          <text transform={`translate(13 ${y(0.5)}) rotate(-90)`} textAnchor="middle">
            How often it came true
          </text>
        </g>
        <polyline className={styles.line0} points={bins.map(({ stated, seen }) => `${x(stated)},${y(seen)}`).join(' ')} />
      </svg>
      <figcaption>{`${title}.${words}`}</figcaption>
    </figure>
  );
}
