import { readable } from '@wallflow/calculation';
import type { ReactNode } from 'react';
import { axisOf } from '../../calculator/axis.js';
import type { PlotView } from '../../data/types.js';
import styles from './plot.module.css';

const size = { width: 420, height: 280, left: 58, right: 24, top: 12, bottom: 46 };
const dashes = [undefined, '6 4', '2 3', '10 3 2 3'];

interface Series {
  readonly key: string;
  readonly label: string;
  readonly points: readonly (readonly [number, number])[];
  readonly marked: boolean;
}

/** What an axis, or a column, shows and in which unit. */
export function axisTitle(column: { readonly label: string; readonly unit?: string } | undefined): string {
  if (column === undefined) return '';
  return column.unit === undefined ? column.label : `${column.label} (${column.unit})`.trim();
}

function seriesOf(table: PlotView, plot: NonNullable<PlotView['plot']>): Series[] {
  return plot.y.map((key) => ({
    key,
    label: table.columns.find((column) => column.key === key)?.label ?? key,
    points: table.rows.flatMap((row) => {
      const [x, y] = [row[plot.x], row[key]];
      return typeof x === 'number' && typeof y === 'number' ? [[x, y] as const] : [];
    }),
    marked: plot.marks?.includes(key) === true,
  }));
}

function extent(values: readonly number[]): [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return low === high ? [low - 1, high + 1] : [low, high];
}

/** A table drawn as lines, readable without scripts and on paper. The table itself stands beside it. */
export function Plot({ table }: { readonly table: PlotView }): ReactNode {
  if (table.plot === undefined) return null;
  const { plot } = table;
  const series = seriesOf(table, plot).filter((one) => one.points.length > 1);
  if (series.length === 0) return null;
  const points = series.flatMap((one) => one.points);
  const [x, xTicks] = axisOf(extent(points.map((point) => point[0])), [size.left, size.width - size.right]);
  const [y, yTicks] = axisOf(extent(points.map((point) => point[1])), [size.height - size.bottom, size.top]);
  const path = (line: Series['points']) => `M${line.map(([across, up]) => `${x(across)},${y(up)}`).join('L')}`;
  const across = table.columns.find((column) => column.key === plot.x);
  const up = table.columns.find((column) => column.key === plot.y[0]);
  const upTitle = series.length === 1 ? axisTitle(up) : axisTitle({ ...up, label: plot.up ?? '' });
  const id = `plot-${table.key}`;
  return (
    <figure className={styles.figure}>
      <svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-labelledby={`${id}-title ${id}-desc`} className={styles.plot}>
        <title id={`${id}-title`}>{table.label}</title>
        <desc id={`${id}-desc`}>
          {`${series.map((one) => one.label).join(', ')} against ${across?.label ?? plot.x}; the numbers are in the table below.`}
        </desc>
        <g className={styles.grid}>
          {yTicks.map((tick) => (
            <line key={tick} x1={size.left} x2={size.width - size.right} y1={y(tick)} y2={y(tick)} />
          ))}
          {xTicks.map((tick) => (
            <line key={tick} x1={x(tick)} x2={x(tick)} y1={size.top} y2={size.height - size.bottom} />
          ))}
        </g>
        <g className={styles.ticks}>
          {yTicks.map((tick) => (
            <text key={tick} x={size.left - 6} y={y(tick)} dy="0.35em" textAnchor="end">
              {readable(String(tick))}
            </text>
          ))}
          {xTicks.map((tick) => (
            <text key={tick} x={x(tick)} y={size.height - size.bottom + 18} textAnchor="middle">
              {readable(String(tick))}
            </text>
          ))}
          <text x={(size.left + size.width - size.right) / 2} y={size.height - 6} textAnchor="middle">
            {axisTitle(across)}
          </text>
          <text transform={`translate(13 ${(size.top + size.height - size.bottom) / 2}) rotate(-90)`} textAnchor="middle">
            {upTitle}
          </text>
        </g>
        {series.map((one, index) =>
          one.marked ? (
            one.points.map(([across, up]) => (
              <circle key={`${one.key} ${across}`} cx={x(across)} cy={y(up)} r="4" className={styles.mark} />
            ))
          ) : (
            <path key={one.key} d={path(one.points)} className={styles[`line${index % 4}`]} strokeDasharray={dashes[index % 4]} />
          ),
        )}
      </svg>
      {series.length === 1 ? null : (
        <figcaption className={styles.legend}>
          {series.map((one, index) => (
            <span key={one.key}>
              <svg aria-hidden="true" viewBox="0 0 30 8" width="30" height="8">
                {one.marked ? (
                  <circle cx="15" cy="4" r="3" className={styles.mark} />
                ) : (
                  <path d="M0 4H30" className={styles[`line${index % 4}`]} strokeDasharray={dashes[index % 4]} />
                )}
              </svg>
              {one.label}
            </span>
          ))}
        </figcaption>
      )}
    </figure>
  );
}
