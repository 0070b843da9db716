import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import type { Block, PlotSeries } from './blocks.js';
import { escapeHtml } from './escape-html.js';

type Plot = Extract<Block, { type: 'plot' }>;

const size = { width: 640, height: 340, left: 58, right: 16, top: 16, bottom: 48 };

/** Marks differ by shape as well as by colour: prints are grey and eyes differ. */
function mark(role: PlotSeries['role'], x: number, y: number): string {
  if (role === 'before') return `<rect class="mark before" x="${(x - 5).toFixed(1)}" y="${(y - 5).toFixed(1)}" width="10" height="10"/>`;
  return `<circle class="mark ${role}" cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="5.5"/>`;
}

/** Pressure drop against flow as a self-contained SVG with title and description. */
export function plotSvg(plot: Plot): string {
  const points = plot.series.flatMap((series) => series.points);
  const right = Math.max(1, ...points.map((point) => point.x)) * 1.12;
  const top = Math.max(1, ...points.map((point) => point.y)) * 1.1;
  const x = scaleLinear([0, right], [size.left, size.width - size.right]);
  const y = scaleLinear([0, top], [size.height - size.bottom, size.top]);
  const path = line<readonly [number, number]>();
  const grid = [
    ...x
      .ticks(6)
      .map(
        (tick) =>
          `<line class="grid" x1="${x(tick)}" x2="${x(tick)}" y1="${y(0)}" y2="${size.top}"/><text class="tick" x="${x(tick)}" y="${y(0) + 18}" text-anchor="middle">${tick}</text>`,
      ),
    ...y
      .ticks(5)
      .map(
        (tick) =>
          `<line class="grid" x1="${x(0)}" x2="${size.width - size.right}" y1="${y(tick)}" y2="${y(tick)}"/><text class="tick" x="${x(0) - 8}" y="${y(tick) + 4}" text-anchor="end">${tick}</text>`,
      ),
  ];
  const lines = plot.series.map((series) => {
    const end = Math.min(right, series.slope > 0 ? top / series.slope : right);
    const shape = path([
      [x(0), y(0)],
      [x(end), y(Math.max(0, series.slope * end))],
    ]);
    return `<path class="line ${series.role}" d="${shape ?? ''}"/>`;
  });
  const marks = plot.series.flatMap((series) => series.points.map((point) => mark(series.role, x(point.x), y(point.y))));
  const legend = plot.series.map((series, index) => {
    const at = size.top + 12 + index * 20;
    return `<path class="line ${series.role}" d="M${size.left + 12},${at} h26"/><text class="legend" x="${size.left + 46}" y="${at + 4}">${escapeHtml(series.label)}</text>`;
  });
  return (
    `<svg viewBox="0 0 ${size.width} ${size.height}" role="img" aria-labelledby="plot-title plot-text"><title id="plot-title">${escapeHtml(plot.title)}</title>` +
    `<desc id="plot-text">${escapeHtml(plot.description)}</desc>${grid.join('')}${lines.join('')}${marks.join('')}${legend.join('')}` +
    `<text class="axis" x="${(size.left + size.width) / 2}" y="${size.height - 8}" text-anchor="middle">${escapeHtml(plot.xLabel)}</text>` +
    `<text class="axis" transform="translate(14 ${size.height / 2}) rotate(-90)" text-anchor="middle">${escapeHtml(plot.yLabel)}</text></svg>`
  );
}
