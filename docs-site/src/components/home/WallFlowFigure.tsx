import type { ReactNode } from 'react';
import styles from './home.module.css';

const channels = [0, 1, 2, 3, 4, 5];
const pitch = 34;
const wall = 8;
const left = 20;
const right = 380;

function Channel({ index }: { readonly index: number }): ReactNode {
  const top = 10 + index * pitch;
  const height = pitch - wall;
  const inlet = index % 2 === 0;
  const middle = top + height / 2;
  return (
    <g>
      <rect x={inlet ? right - 22 : left} y={top} width={22} height={height} className={styles.plug} />
      {inlet ? (
        <>
          <path d={`M${left} ${top + 1}H${right - 22}M${left} ${top + height - 1}H${right - 22}`} className={styles.soot} />
          <path d={`M${left - 16} ${middle}H${left + 52}l-7-5m7 5l-7 5`} className={styles.gas} />
        </>
      ) : (
        <path d={`M${right - 62} ${middle}H${right + 12}l-7-5m7 5l-7 5`} className={styles.gas} />
      )}
      {inlet && index < channels.length - 1
        ? [120, 190, 260].map((x) => <path key={x} d={`M${x} ${middle}v${pitch - 4}l-4-6m4 6l4-6`} className={styles.through} />)
        : null}
    </g>
  );
}

/** A wall-flow filter cut along its channels: in at one end, through the walls, out at the other. */
export function WallFlowFigure(): ReactNode {
  const height = 10 + channels.length * pitch + wall;
  return (
    <svg viewBox={`0 0 400 ${height}`} role="img" aria-labelledby="figure-title" className={styles.figure}>
      <title id="figure-title">
        Section through a wall-flow filter: channels are plugged at alternate ends, so the gas passes the porous walls and the soot stays on
        them
      </title>
      {[...channels, channels.length].map((index) => (
        <rect key={index} x={left} y={10 + index * pitch - wall} width={right - left} height={wall} className={styles.wall} />
      ))}
      {channels.map((index) => (
        <Channel key={index} index={index} />
      ))}
    </svg>
  );
}
